/** What `kettlebook new` asks: read from `shared/new-car.yaml`, which anybody may reword. */
import * as z from 'zod';
import { bad, good, type Outcome } from '../diagnostic/diagnostic';
import type { Dimension } from '../quantity/dimension';
import { problemsOf } from '../spec/problems';
import { key } from '../spec/schema/field';
import { readSource } from '../spec/source';

const line = z.string().min(1);

/** Amounts that are asked for. */
const amounts = [
  'length',
  'volume',
  'mass',
  'time',
  'speed',
  'gaugePressure',
  'volumeFlow',
  'share',
] as const satisfies readonly Dimension[];

/** A dimension that is asked for. */
export type Amount = (typeof amounts)[number];

const form = z.strictObject({
  /** Kinds of plant: what is said of each, and more of it, told when the keeper types `?`. */
  kinds: z.array(z.strictObject({ key, say: line, more: line })).min(1),
  questions: z.array(
    z.strictObject({
      key,
      ask: line,
      measure: line,
      answer: z.enum(['words', 'date', 'number', 'one-of', ...amounts]),
      choices: z.array(line).min(2).optional(),
      /** For a choice: other words for it. */
      also: z.record(line, z.array(line).min(1)).optional(),
      /** For a number: the least it may be, and whether it counts whole things. */
      least: z.number().optional(),
      whole: z.boolean().optional(),
      about: z.strictObject({ share: z.number().positive().max(1), of: key }).optional(),
    }),
  ),
});

/** The kinds of plant and the questions. */
export type NewCar = z.output<typeof form>;

/** One question. */
export type Question = NewCar['questions'][number];

/** Read them. */
export function readNewCar(text: string, file: string): Outcome<NewCar> {
  const source = readSource(text, file);
  if (!source.ok) return source;
  const parsed = form.safeParse(source.value.data);
  return parsed.success ? good(parsed.data) : bad(problemsOf(parsed.error.issues, source.value, form));
}
