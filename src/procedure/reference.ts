/** Words of the trade and signs of faults: what the manual gives for reference, filtered for one car. */
import * as z from 'zod';
import type { Car } from '../car/car';
import { bad, good, type Outcome } from '../diagnostic/diagnostic';
import { key, sentences, words } from '../spec/schema/field';
import { readForm } from './library';
import { conditionForm } from './libraryForm';
import { NameCheck } from './nameCheck';
import { holds } from './select';

const when = conditionForm.meta({ description: 'Cars it is of use to; left out, every car.' }).optional();

const glossaryForm = z.strictObject({
  words: z
    .array(
      z.strictObject({
        term: words('The word or phrase.', 'automatic'),
        meaning: words('What it means here, in a sentence or two.', 'A device that acts by itself.'),
        when,
      }),
    )
    .min(1)
    .meta({ description: 'Words of the trade, in alphabetical order.' }),
});

const faultsForm = z.strictObject({
  faults: z
    .array(
      z.strictObject({
        id: key.meta({ description: 'Its key.', sample: 'pilot-yellow' }),
        where: words('The part of the car it concerns, as a heading.', 'Pilot'),
        seen: words('What is seen, heard or smelt.', 'The pilot burns yellow'),
        causes: sentences('What may be behind it, the likeliest first.', '[dirty nozzle]'),
        do: sentences('What to do, in order.', '[Shut the pilot valve.]'),
        never: sentences('What not to touch or do.', '[Do not clear the nozzle while it burns.]'),
        when,
      }),
    )
    .min(1)
    .meta({ description: 'Signs of faults, grouped by `where`.' }),
});

/** One word of the trade. */
export type GlossaryEntry = z.output<typeof glossaryForm>['words'][number];

/** One sign of a fault, with its causes, what to do and what not to do. */
export type SignsAndCauses = z.output<typeof faultsForm>['faults'][number];

/** Read `glossary.yaml`. */
export function readGlossary(text: string, file: string): Outcome<readonly GlossaryEntry[]> {
  const read = readForm(text, file, glossaryForm, 'glossary');
  if (!read.ok) return read;
  const { form, spot } = read.value;
  const check = new NameCheck();
  for (const [at, entry] of form.words.entries()) {
    const earlier = form.words.findIndex((other) => other.term.toLowerCase() === entry.term.toLowerCase());
    if (earlier !== at) check.twice({ form, spot }, ['words', at, 'term'], entry.term);
    check.condition({ form, spot }, ['words', at, 'when'], entry.when);
  }
  return check.problems.length > 0 ? bad(check.problems) : good(form.words);
}

/** Read `faults.yaml`. */
export function readFaults(text: string, file: string): Outcome<readonly SignsAndCauses[]> {
  const read = readForm(text, file, faultsForm, 'faults');
  if (!read.ok) return read;
  const { form, spot } = read.value;
  const check = new NameCheck();
  for (const [at, fault] of form.faults.entries()) {
    if (form.faults.findIndex((other) => other.id === fault.id) !== at)
      check.twice({ form, spot }, ['faults', at, 'id'], fault.id);
    check.condition({ form, spot }, ['faults', at, 'when'], fault.when);
  }
  return check.problems.length > 0 ? bad(check.problems) : good(form.faults);
}

/** The entries that are of use to this car, in their order. */
export function entriesFor<T extends GlossaryEntry | SignsAndCauses>(
  car: Car,
  entries: readonly T[],
): readonly T[] {
  return entries.filter((entry) => holds(car, entry.when));
}
