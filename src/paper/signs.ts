/** The safety signs that papers may show: what each means, read from `shared/signs.yaml`, and its drawing. */
import * as z from 'zod';
import { bad, type Diagnostic, good, type Outcome } from '../diagnostic/diagnostic';
import { nearest } from '../diagnostic/nearest';
import type { Drawing } from '../drawing/drawing';
import { drawSign, type SignNumber, signNumbers } from '../drawing/signs/signs';
import type { Language } from '../language/language';
import type { Library } from '../procedure/library';
import { inForm } from '../spec/inForm';
import { problemsOf } from '../spec/problems';
import { words } from '../spec/schema/field';
import { readSource } from '../spec/source';

const signForm = z.strictObject({
  means: words('What it means, as the standard calls it.', 'hot surface'),
  shows: words('What it shows, for those who cannot see it.', 'a flame in a yellow triangle'),
  read: words('Where number and meaning were read.', 'ASR A1.3'),
});
const signsForm = z.strictObject({ signs: z.record(z.string(), signForm) });

/** What one sign says. */
export type SignWords = z.output<typeof signForm>;

/** Every sign by its number. */
export type Signs = ReadonlyMap<SignNumber, SignWords>;

/** Read the signs. A sign that cannot be drawn is an error, and so is one that could be but has no words. */
export function readSigns(text: string, file: string): Outcome<Signs> {
  const source = readSource(text, file);
  if (!source.ok) return source;
  const parsed = inForm(source.value, signsForm, 'signs');
  if (!parsed.success) return bad(problemsOf(parsed.error.issues, source.value, signsForm));
  const { signs } = parsed.data;
  const strange = Object.keys(signs).filter((number) => !isDrawn(number));
  const silent = signNumbers.filter((number) => !(number in signs));
  const problems: Diagnostic[] = [
    ...strange.map((number) => unknown(number, signNumbers, source.value.spotOfKey(['signs', number]))),
    ...silent.map(
      (number): Diagnostic => ({
        code: 'shared-sign',
        severity: 'error',
        at: source.value.spotOfKey(['signs']),
        message: `the safety sign \`${number}\` has no words`,
        expected: 'what it means and shows',
        mend: 'put it back as it came with the program',
      }),
    ),
  ];
  if (problems.length > 0) return bad(problems);
  return good(
    new Map(
      signNumbers.flatMap((number) => {
        const said = signs[number];
        return said === undefined ? [] : [[number, said]];
      }),
    ),
  );
}

/** Signs that cautions of the library name and that there are not. */
export function unknownSigns({ cautions }: Library, signs: Signs): readonly Diagnostic[] {
  return [...cautions.values()].flatMap(({ form, spot }) =>
    (form.signs ?? []).flatMap((number, at) =>
      isDrawn(number) && signs.has(number) ? [] : [unknown(number, [...signs.keys()], spot(['signs', at]))],
    ),
  );
}

/** Signs as they are drawn, with what they say in the language of the papers. */
export function drawnSigns(signs: Signs, { messages, texts }: Language): ReadonlyMap<string, Drawing> {
  return new Map(
    [...signs].map(([number, { means, shows }]) => [
      number,
      drawSign(number, messages.say('sign', { number, means: texts.say(means), shows: texts.say(shows) })),
    ]),
  );
}

function isDrawn(number: string): number is SignNumber {
  return signNumbers.some((known) => known === number);
}

function unknown(number: string, known: readonly string[], at: Diagnostic['at']): Diagnostic {
  const near = nearest(number, known);
  return {
    code: 'shared-sign',
    severity: 'error',
    ...(at === undefined ? {} : { at }),
    message: `there is no safety sign \`${number}\` to be drawn`,
    found: `\`${number}\``,
    expected: known.map((each) => `\`${each}\``).join(', '),
    mend: near === undefined ? 'take it out' : `did you mean \`${near}\`?`,
  };
}
