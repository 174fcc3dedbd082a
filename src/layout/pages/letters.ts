/**
 * Letters that tie a mark beside a step to the caution it stands for. Each page counts its own, in the order of its
 * cautions; one that no step of the page is marked with has none.
 */
import { letterAt } from '../blocks/letter';
import type { FilledBox } from '../flow/fill';
import type { Tie } from '../pieces';

/** The letter of each caution that steps of a page are marked with, by the key of both. */
export function lettersOn(boxes: readonly FilledBox[]): (key: string) => string | undefined {
  const ties = boxes.flatMap(({ box }) => box.layers.flatMap(({ tied }) => tied ?? []));
  const keysOf = (kind: Tie['kind']) =>
    new Set(ties.filter((tie) => tie.kind === kind).map(({ key }) => key));
  const marked = keysOf('mark');
  const letters = new Map(
    [...keysOf('caution')].filter((key) => marked.has(key)).map((key, index) => [key, letterAt(index)]),
  );
  return (key) => letters.get(key);
}
