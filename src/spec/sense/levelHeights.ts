/** Heights of the boiler's levels and of what they are read on stand in their order. */
import type { Diagnostic } from '../../diagnostic/diagnostic';
import type { Quantity } from '../../quantity/quantity';
import { inOrder, type SenseCheck } from './finding';

const code = 'spec-level-heights';

interface Height {
  readonly name: string;
  readonly path: readonly (string | number)[];
  readonly value: Quantity | undefined;
}

/**
 * The levels stand in order, and can be seen where they are read. That the lowest water to be seen in a glass stands above
 * the lowest safe level is a common rule of boiler codes (ASME BPVC Section I, PG-60, which asks for 2 in between the
 * two; from memory): here only the order is checked, the distance is the inspector's.
 */
export const checkLevelHeights: SenseCheck = (spec, source) => {
  const { heights } = spec.boiler;
  if (heights === undefined) return [];
  const at = (name: string, value: Quantity | undefined, ...path: readonly (string | number)[]): Height => ({
    name,
    path: ['boiler', 'heights', ...path],
    value,
  });
  const safe = at('the lowest safe level', heights['least-safe'], 'least-safe');
  const lowest = at('the lowest level with a fire', heights['lowest-level'], 'lowest-level');
  const working = at('the working level', heights['working-level'], 'working-level');
  const cold = at('the level to be filled to cold', heights['working-level-cold'], 'working-level-cold');
  const coldMost = at('the highest cold level', heights['highest-level-cold'], 'highest-level-cold');
  const highest = at('the highest level', heights['highest-level'], 'highest-level');
  const top = at('the top of the boiler', heights.top, 'top');
  const glassBottom = at('the bottom of the glass', heights.glass?.bottom, 'glass', 'bottom');
  const glassTop = at('the top of the glass', heights.glass?.top, 'glass', 'top');
  const cut = at('where the low-water cut-off acts', heights['low-water-cut'], 'low-water-cut');
  const feedFrom = at('where feeding begins', heights['feed-from'], 'feed-from');
  const feedTo = at('where feeding ends', heights['feed-to'], 'feed-to');
  const cocks = (heights.cocks ?? []).map(({ valve, at: height }, index) =>
    at(spec.valves[valve]?.name ?? valve, height, 'cocks', index, 'at'),
  );
  const below = (low: Height, high: Height, why: string, mayBeEqual = true): Diagnostic[] =>
    inOrder(source, {
      code,
      low: low.value,
      high: high.value,
      mayBeEqual,
      lowPath: low.path,
      highPath: high.path,
      lowName: low.name,
      highName: high.name,
      why,
    });
  const [first, last] = [cocks[0], cocks.at(-1)];
  return [
    ...below(
      safe,
      glassBottom,
      'Water that is out of sight in the glass must still cover what the fire heats.',
    ),
    ...below(safe, lowest, 'At the lowest level with a fire, nothing that the fire heats may stand dry.'),
    ...below(
      safe,
      cut,
      'The low-water cut-off must act while everything that the fire heats is still covered.',
    ),
    ...below(cut, working, 'A cut-off that acts above the working level puts out every fire.', false),
    ...below(lowest, working, 'The car is run above the lowest level.', false),
    ...below(working, highest, 'The working level is below the one at which water is carried over.', false),
    ...below(lowest, cold, 'What is filled cold must be enough for a fire.'),
    ...below(
      lowest,
      coldMost,
      'Between the least and the most that may stand cold there must be room.',
      false,
    ),
    ...below(cold, coldMost, 'Between the least and the most that may stand cold there must be room.', false),
    ...below(coldMost, glassTop, 'The highest cold level must be seen in the glass.', false),
    ...below(
      coldMost,
      highest,
      'Water swells as it heats: cold it stands below the level at which it is carried over.',
      false,
    ),
    ...below(coldMost, top, 'No level stands above the boiler.', false),
    ...below(highest, top, 'No level stands above the boiler.', false),
    ...below(working, top, 'No level stands above the boiler.', false),
    ...below(glassBottom, lowest, 'The lowest level with a fire must be seen in the glass.'),
    ...below(working, glassTop, 'The working level must be seen in the glass.', false),
    ...below(glassBottom, glassTop, 'The two may be changed about.', false),
    ...below(glassTop, top, 'The glass does not stand above the boiler.'),
    ...below(lowest, feedFrom, 'Feeding begins before the lowest level is reached.'),
    ...below(feedFrom, feedTo, 'The two may be changed about.', false),
    ...below(feedTo, highest, 'Feeding ends below the level at which water is carried over.'),
    ...(first === undefined
      ? []
      : below(safe, first, 'The lowest cock must give water at every safe level.')),
    ...(last === undefined ? [] : below(last, top, 'No cock stands above the boiler.')),
    ...cocks.flatMap((cock, index) => {
      const next = cocks[index + 1];
      return next === undefined
        ? []
        : below(
            cock,
            next,
            'Cocks are listed from the lowest up; a wrong order tells of a level that is not there.',
            false,
          );
    }),
  ];
};
