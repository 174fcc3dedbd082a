/** Ends of round tanks: each kind with the measures it needs, and none that cannot be. */
import type { Diagnostic } from '../../diagnostic/diagnostic';
import type { CarSpec } from '../schema/carSpec';
import { finding, type SenseCheck } from './finding';

type Shape = NonNullable<CarSpec['tanks'][string]['shape']>;
type RoundShape = Extract<Shape, { kind: 'lying-cylinder' | 'standing-cylinder' }>;

const measures = ['end-depth', 'crown-radius', 'corner-radius'] as const;

const needed: Readonly<Record<NonNullable<RoundShape['ends']>, readonly (typeof measures)[number][]>> = {
  flat: [],
  'elliptical-2-to-1': [],
  hemispherical: [],
  dished: ['end-depth'],
  conical: ['end-depth'],
  torispherical: ['crown-radius', 'corner-radius'],
};

/** Every round tank of the car. */
export const checkTankEnds: SenseCheck = (spec, source) =>
  Object.entries(spec.tanks).flatMap(([id, { name, shape }]) => {
    if (shape?.kind !== 'lying-cylinder' && shape?.kind !== 'standing-cylinder') return [];
    const path = (field: string) => ['tanks', id, 'shape', field];
    const ends = shape.ends ?? 'flat';
    const wants = needed[ends];
    const missing = wants.filter((measure) => shape[measure] === undefined);
    const idle = measures.filter((measure) => shape[measure] !== undefined && !wants.includes(measure));
    const told: Diagnostic[] = [];
    if (missing.length > 0)
      told.push(
        finding(source, {
          code: 'spec-tank',
          path: path('ends'),
          message: `the ${ends} ends of ${name} are not measured`,
          expected: missing.map((measure) => `\`${measure}\``).join(' and '),
          mend: 'measure them inside and add them to `shape`; or fill the tank by a measure and write `stick`',
        }),
      );
    for (const measure of idle)
      told.push(
        finding(source, {
          code: 'spec-tank',
          path: path(measure),
          message: `${ends} ends have no \`${measure}\``,
          mend: `take it out, or correct \`ends\` of ${name}`,
        }),
      );
    return told.length > 0
      ? told
      : impossible(shape, name, (field) => path(field)).map((each) => finding(source, each));
  });

/** A cap deeper than half a sphere, a dish narrower than its tank, a corner wider than it. */
function impossible(
  shape: RoundShape,
  name: string,
  path: (field: string) => readonly string[],
): readonly Parameters<typeof finding>[1][] {
  const radius = shape.diameter.si / 2;
  const { 'end-depth': depth, 'crown-radius': crown, 'corner-radius': corner } = shape;
  const half = `half the diameter of \`${shape.diameter.written}\``;
  const wrong = (field: string, message: string, found: string, expected: string) => ({
    code: 'spec-tank' as const,
    path: path(field),
    message,
    found: `\`${found}\``,
    expected,
    mend: 'measure again',
  });
  return [
    ...(shape.ends === 'dished' && depth !== undefined && depth.si > radius * (1 + 1e-9)
      ? [
          wrong(
            'end-depth',
            `the dished ends of ${name} are deeper than half a sphere`,
            depth.written,
            `at most ${half}`,
          ),
        ]
      : []),
    ...(crown !== undefined && crown.si < radius * (1 - 1e-9)
      ? [
          wrong(
            'crown-radius',
            `the dish of ${name} is rounder than its tank`,
            crown.written,
            `at least ${half}`,
          ),
        ]
      : []),
    ...(corner !== undefined && corner.si > radius * (1 + 1e-9)
      ? [
          wrong(
            'corner-radius',
            `the corner of the ends of ${name} is wider than the tank`,
            corner.written,
            `at most ${half}`,
          ),
        ]
      : []),
  ];
}
