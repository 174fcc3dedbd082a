/** Things that the procedures call for and the car does not list: told to the keeper, who may carry them unlisted. */
import * as z from 'zod';
import type { Car } from '../car/car';
import type { Diagnostic } from '../diagnostic/diagnostic';
import { asPattern } from '../language/dialect';
import { choice, words } from '../spec/schema/field';
import { controlKinds } from '../spec/schema/fittings';
import { equipmentKinds } from '../spec/schema/stores';
import type { Placed } from './library';
import type { EntryForm, ProcedureForm } from './libraryForm';
import type { Procedures } from './procedure';
import { holds, select } from './select';

/** One thing, as `shared/upkeep.yaml` lists it. */
export const calledForForm = z.strictObject({
  kind: choice(equipmentKinds, 'The kind it has under `equipment`.', 'chocks').optional(),
  control: choice(controlKinds, 'The kind it has under `controls`.', 'parking-brake').optional(),
  thing: words('What it is called.', 'wheel chocks'),
  words: z
    .array(words('A word by which steps speak of it.', 'chocks'))
    .meta({ description: 'The words by which steps of the library speak of it.', sample: '[chock, chocks]' }),
  why: words('What for.', 'they hold the car while nobody sits in it'),
});

/** One thing. */
export type CalledFor = z.output<typeof calledForForm>;

/** A step of the library that calls for a thing. */
interface Call {
  readonly procedure: string;
  readonly step: string;
}

/**
 * A remark for each thing that the car has not got listed and that its procedures call for: by its words in a step that
 * this car has, or by a step that falls away because there is nothing to do it with.
 */
export function calledForRemarks(
  car: Car,
  library: readonly Placed<ProcedureForm>[],
  procedures: Procedures,
  things: readonly CalledFor[],
): readonly Diagnostic[] {
  return things.flatMap((thing): readonly Diagnostic[] => {
    if (isListed(car, thing)) return [];
    const calls = library.flatMap(({ form }) => {
      const own = procedures.find(({ id }) => id === form.id);
      if (own === undefined) return [];
      const ids = new Set(
        own.steps.flatMap(({ id, origin }) => (origin.kind === 'library' ? [stepIdOf(id)] : [])),
      );
      return callsIn(car, form.steps, thing, ids).map((step): Call => ({ procedure: own.title, step }));
    });
    const [first] = calls;
    if (first === undefined) return [];
    const section = thing.control === undefined ? 'equipment' : 'controls';
    return [
      {
        code: 'procedure-not-carried',
        severity: 'remark',
        at: car.spotOf(section),
        message: `the procedures call for ${thing.thing}, and \`${section}\` lists none`,
        found: [...new Set(calls.map(({ procedure }) => procedure))].join(', '),
        expected: `an entry with \`kind: ${thing.kind ?? thing.control ?? ''}\``,
        mend: `carry it and list it: ${thing.why}; if the car does without, change those steps under \`changes\``,
        notes: [`The first to call for it is “${first.procedure}”, step \`${first.step}\`.`],
      },
    ];
  });
}

function isListed({ spec }: Car, { kind, control: wanted }: CalledFor): boolean {
  return wanted === undefined
    ? Object.values(spec.equipment).some((each) => each.kind === kind)
    : Object.values(spec.controls).some((each) => each.kind === wanted);
}

/** Steps of one part of the library said of several parts are `step-id/part-id`. */
function stepIdOf(id: string): string {
  return id.split('/')[0] ?? id;
}

function callsIn(
  car: Car,
  entries: readonly EntryForm[],
  thing: CalledFor,
  ids: ReadonlySet<string>,
): readonly string[] {
  return entries.flatMap((entry): readonly string[] => {
    if (entry.steps !== undefined) {
      const idle = entry.for !== undefined && select(car, entry.for).length === 0;
      return idle || !holds(car, entry.when) ? [] : callsIn(car, entry.steps, thing, ids);
    }
    const id = entry.id ?? '';
    if (ids.has(id)) return speaksOf(entry, thing) ? [id] : [];
    return fallsAway(car, entry, thing) ? [id] : [];
  });
}

/** A step of the car speaks of the thing in its words. */
function speaksOf({ say, result, remark }: EntryForm, { words: names }: CalledFor): boolean {
  const text = [say, result, remark]
    .filter((each) => each !== undefined)
    .join(' ')
    .toLowerCase();
  return names.some((name) => new RegExp(`(?<![a-z{.:])${asPattern(name)}(?![a-z:])`).test(text));
}

/** A step is left out only because there is nothing of the kind to do it with. */
function fallsAway(car: Car, { on, each, when }: EntryForm, { kind, control: wanted }: CalledFor): boolean {
  const selector = on ?? each;
  return (
    selector?.duty !== undefined &&
    selector.duty === (wanted ?? kind) &&
    holds(car, when) &&
    select(car, selector).length === 0
  );
}
