/** What happens between procedures: nights, where the car stands parked, where a low level leads, the way out. */
import * as z from 'zod';
import { bad, type Diagnostic, good, type Outcome, type Spot } from '../diagnostic/diagnostic';
import { nearest } from '../diagnostic/nearest';
import { type Beginning, beginnings } from '../procedure/circumstances';
import { inForm } from '../spec/inForm';
import { problemsOf } from '../spec/problems';
import { choice, key } from '../spec/schema/field';
import { readSource, type SpecPath, type SpecSource } from '../spec/source';
import { type Hazard, hazards } from './hazards';

const cautionNames = z.array(key).min(1).meta({
  description: 'Cautions of the library, of which one must stand there.',
  sample: '[main-light-up]',
});

const wayBackForm = z.strictObject({
  while: z
    .array(choice(beginnings, 'What was so.', 'main-burning'))
    .min(1)
    .meta({ description: 'Only if this was so when the emergency began; left out, whatever was.' })
    .optional(),
  'broken-off-in': z
    .array(key)
    .min(1)
    .meta({
      description: 'Only if one of these was broken off; left out, whatever was.',
      sample: '[raising-steam]',
    })
    .optional(),
  by: z
    .array(key)
    .min(1)
    .meta({ description: 'The procedures that light it, in their order.', sample: '[main-burner]' }),
  'rest-of': key
    .meta({
      description:
        'What is then gone on with, from the step at which it was broken off; from its first if it had not begun.',
      sample: 'raising-steam',
    })
    .optional(),
  'at-latest-from': key
    .meta({
      description: 'The step of it from which it is gone on with if it had come further.',
      sample: 'leaks-low',
    })
    .optional(),
});

const dayForm = z.strictObject({
  'night-after': z
    .array(key)
    .min(1)
    .meta({ description: 'Procedures after which a night passes.', sample: '[overnight]' }),
  'parked-after': z
    .array(key)
    .min(1)
    .meta({ description: 'Procedures after which every valve stands as parked.', sample: '[overnight]' }),
  'level-too-low': key
    .meta({ description: 'The procedure that a reading of too low a level leads to.', sample: 'fill-cold' })
    .optional(),
  'left-out-with-steam-up': z
    .array(key)
    .meta({
      description: 'Procedures that are left out when the boiler is at its working pressure already.',
      sample: '[raising-steam]',
    })
    .optional(),
  'way-out': key.meta({
    description: 'The emergency that is tried from every step.',
    sample: 'shut-everything',
  }),
  'lit-again': z
    .record(key, z.array(wayBackForm).min(1))
    .meta({
      description:
        'Emergencies after which the fire is lit again, each with the ways in which that is done; the first that fits is taken.',
    })
    .optional(),
  cautions: z
    .partialRecord(z.enum(hazards), cautionNames)
    .meta({
      description: 'Cautions that must stand by steps that do something dangerous, by the kind of danger.',
    })
    .optional(),
});

/** How the fire is lit again after an emergency. */
export interface WayBack {
  /** Only if this was so when the emergency began. */
  readonly while: readonly Beginning[];
  /** Only if one of these was broken off; nothing if it is the way back from all. */
  readonly brokenOffIn: readonly string[] | undefined;
  readonly by: readonly string[];
  readonly restOf: string | undefined;
  /** The step from which that is gone on with if it had come further. */
  readonly atLatestFrom: string | undefined;
}

/** The day as the proof needs it. Names of procedures that a car has not got are passed over. */
export interface Day {
  readonly nightAfter: ReadonlySet<string>;
  readonly parkedAfter: ReadonlySet<string>;
  readonly levelTooLow: string | undefined;
  readonly leftOutWithSteamUp: ReadonlySet<string>;
  readonly wayOut: string;
  /** Emergencies after which the fire is lit again, with the ways back, of which the first that fits is taken. */
  readonly litAgain: ReadonlyMap<string, readonly WayBack[]>;
  /** Cautions of which one must stand by a step that does something dangerous. */
  readonly cautions: ReadonlyMap<Hazard, readonly string[]>;
  /** Where the file speaks of a thing, for findings about it. */
  readonly spot: (path: SpecPath) => Spot;
}

/**
 * Read `day.yaml`. `known` are the keys of every procedure of the library with those of its steps, `cautions` those of its
 * cautions.
 */
export function readDay(
  text: string,
  file: string,
  known: ReadonlyMap<string, readonly string[]>,
  cautions?: readonly string[],
): Outcome<Day> {
  const source = readSource(text, file);
  if (!source.ok) return source;
  const parsed = inForm(source.value, dayForm, 'day');
  if (!parsed.success) return bad(problemsOf(parsed.error.issues, source.value, dayForm));
  const form = parsed.data;
  const named: readonly (readonly [SpecPath, string])[] = [
    ...form['night-after'].map((id, index) => [['night-after', index], id] as const),
    ...form['parked-after'].map((id, index) => [['parked-after', index], id] as const),
    ...(form['level-too-low'] === undefined ? [] : [[['level-too-low'], form['level-too-low']] as const]),
    ...(form['left-out-with-steam-up'] ?? []).map(
      (id, index) => [['left-out-with-steam-up', index], id] as const,
    ),
    [['way-out'], form['way-out']],
    ...Object.entries(form['lit-again'] ?? {}).flatMap(([emergency, ways]) => [
      [['lit-again', emergency], emergency] as const,
      ...ways.flatMap((way, index) =>
        namesOf(way).map((id) => [['lit-again', emergency, index], id] as const),
      ),
    ]),
  ];
  const problems = named.flatMap(([path, id]) =>
    known.has(id) ? [] : [unknown('procedure', id, path, source.value, [...known.keys()])],
  );
  for (const [emergency, ways] of Object.entries(form['lit-again'] ?? {})) {
    ways.forEach((way, index) => {
      const step = way['at-latest-from'];
      const steps = known.get(way['rest-of'] ?? '') ?? [];
      if (step !== undefined && !steps.includes(step))
        problems.push(unknown('step', step, ['lit-again', emergency, index], source.value, steps));
    });
  }
  const asked = Object.entries(form.cautions ?? {});
  for (const [hazard, ids] of asked) {
    ids.forEach((id, index) => {
      if (cautions?.includes(id) === false)
        problems.push(unknown('caution', id, ['cautions', hazard, index], source.value, cautions));
    });
  }
  if (problems.length > 0) return bad(problems);
  return good({
    nightAfter: new Set(form['night-after']),
    parkedAfter: new Set(form['parked-after']),
    levelTooLow: form['level-too-low'],
    leftOutWithSteamUp: new Set(form['left-out-with-steam-up'] ?? []),
    wayOut: form['way-out'],
    litAgain: new Map(
      Object.entries(form['lit-again'] ?? {}).map(([emergency, ways]) => [
        emergency,
        ways.map((way) => ({
          while: way.while ?? [],
          brokenOffIn: way['broken-off-in'],
          by: way.by,
          restOf: way['rest-of'],
          atLatestFrom: way['at-latest-from'],
        })),
      ]),
    ),
    cautions: new Map(hazards.map((hazard) => [hazard, form.cautions?.[hazard] ?? []])),
    spot: source.value.spotOfValue,
  });
}

function namesOf(way: z.output<typeof wayBackForm>): readonly string[] {
  return [
    ...(way['broken-off-in'] ?? []),
    ...way.by,
    ...(way['rest-of'] === undefined ? [] : [way['rest-of']]),
  ];
}

function unknown(
  what: 'procedure' | 'caution' | 'step',
  id: string,
  path: SpecPath,
  source: SpecSource,
  known: readonly string[],
): Diagnostic {
  const near = nearest(id, known);
  return {
    code: 'proof-order',
    severity: 'error',
    at: source.spotOfValue(path),
    message: `there is no ${what} \`${id}\``,
    found: `\`${id}\``,
    expected: near === undefined ? `the key of a ${what} of the library` : `\`${near}\``,
    mend: near === undefined ? `name a ${what} that is there` : `write \`${near}\``,
  };
}
