/** Places and axles that cannot be on the car. */
import type { Diagnostic } from '../../diagnostic/diagnostic';
import type { Quantity } from '../../quantity/quantity';
import { finding, type SenseCheck } from './finding';

/** How far a place may lie outside the stated length, width and height: a lamp or a step may stick out. */
const overhangM = 0.3;

/** Places lie on the car, and so do both axles. */
export const checkPlaces: SenseCheck = (spec, source) => [
  ...Object.entries(spec.places).flatMap(([id, place]) => {
    const { back, right, up } = place.at;
    const { length, width, height } = spec.car;
    const problem = (field: string, at: Quantity, limit: string) =>
      finding(source, {
        code: 'spec-outside-car',
        path: ['places', id, 'at', field],
        message: `${place.name} lies outside the car`,
        found: `\`${at.written}\``,
        expected: limit,
        mend: 'measure `back` from the foremost point, `right` from the centre line and `up` from the ground',
      });
    const problems: Diagnostic[] = [];
    if (back.si > length.si + overhangM)
      problems.push(problem('back', back, `at most the length, \`${length.written}\``));
    if (Math.abs(right.si) > width.si / 2 + overhangM)
      problems.push(problem('right', right, `at most half the width, \`${width.written}\``));
    if (up !== undefined && height !== undefined && up.si > height.si + overhangM)
      problems.push(problem('up', up, `at most the height, \`${height.written}\``));
    return problems;
  }),
  ...checkAxles(spec, source),
];

const checkAxles: SenseCheck = (spec, source) => {
  const { length, wheelbase, 'front-axle-back': front } = spec.car;
  if (front.si + wheelbase.si <= length.si) return [];
  return [
    finding(source, {
      code: 'spec-outside-car',
      path: ['car', 'wheelbase'],
      message: 'the rear axle lies behind the car',
      found: `\`${wheelbase.written}\` behind a front axle at \`${front.written}\``,
      expected: `together at most the length, \`${length.written}\``,
      mend: 'measure `length`, `wheelbase` and `front-axle-back` again',
    }),
  ];
};
