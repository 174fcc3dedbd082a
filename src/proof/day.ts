/** What happens between procedures: nights, where the car stands parked, where a low level leads, the way out. */
import { z } from 'zod';
import { bad, type Diagnostic, good, type Outcome, type Spot } from '../diagnostic/diagnostic';
import { nearest } from '../diagnostic/nearest';
import { problemsOf } from '../spec/problems';
import { key } from '../spec/schema/field';
import { readSource, type SpecPath, type SpecSource } from '../spec/source';

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
});

/** The day as the proof needs it. Names of procedures that a car has not got are passed over. */
export interface Day {
  readonly nightAfter: ReadonlySet<string>;
  readonly parkedAfter: ReadonlySet<string>;
  readonly levelTooLow: string | undefined;
  readonly leftOutWithSteamUp: ReadonlySet<string>;
  readonly wayOut: string;
  /** Where the file speaks of a thing, for findings about it. */
  readonly spot: (path: SpecPath) => Spot;
}

/** Read `day.yaml`. `known` are the keys of every procedure of the library. */
export function readDay(text: string, file: string, known: readonly string[]): Outcome<Day> {
  const source = readSource(text, file);
  if (!source.ok) return source;
  const parsed = dayForm.safeParse(source.value.data);
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
  ];
  const problems = named.flatMap(([path, id]) =>
    known.includes(id) ? [] : [unknown(id, path, source.value, known)],
  );
  if (problems.length > 0) return bad(problems);
  return good({
    nightAfter: new Set(form['night-after']),
    parkedAfter: new Set(form['parked-after']),
    levelTooLow: form['level-too-low'],
    leftOutWithSteamUp: new Set(form['left-out-with-steam-up'] ?? []),
    wayOut: form['way-out'],
    spot: source.value.spotOfValue,
  });
}

function unknown(id: string, path: SpecPath, source: SpecSource, known: readonly string[]): Diagnostic {
  const near = nearest(id, known);
  return {
    code: 'proof-order',
    severity: 'error',
    at: source.spotOfValue(path),
    message: `there is no procedure \`${id}\``,
    found: `\`${id}\``,
    expected: near === undefined ? 'the key of a procedure of the library' : `\`${near}\``,
    mend: near === undefined ? 'name a procedure that is there' : `write \`${near}\``,
  };
}
