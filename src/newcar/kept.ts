/** The answers given so far, as they are kept beside the spec while it is being made. */
import { stringify } from 'yaml';
import * as z from 'zod';
import { bad, good, type Outcome } from '../diagnostic/diagnostic';
import { problemsOf } from '../spec/problems';
import { key } from '../spec/schema/field';
import { readSource } from '../spec/source';
import type { Answers } from './skeleton';

const form = z.strictObject({
  kind: key,
  answers: z.record(key, z.string()),
});

/** How far the keeper has come. */
export interface Kept {
  readonly kind: string;
  readonly answers: Answers;
}

/** As text for the file. */
export function writeKept({ kind, answers }: Kept): string {
  const head =
    '# Answers given to `kettlebook new`, so that it can be left and gone on with. Delete it when the spec is done.\n';
  return `${head}${stringify({ kind, answers: Object.fromEntries(answers) }, { lineWidth: 0, version: '1.1' })}`;
}

/** Back from text. */
export function readKept(text: string, file: string): Outcome<Kept> {
  const source = readSource(text, file);
  if (!source.ok) return source;
  const parsed = form.safeParse(source.value.data);
  if (!parsed.success) return bad(problemsOf(parsed.error.issues, source.value, form));
  const { kind, answers } = parsed.data;
  return good({ kind, answers: new Map(Object.entries(answers)) });
}
