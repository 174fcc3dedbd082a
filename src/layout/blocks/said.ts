/**
 * A brief caution that stands before several steps of one procedure on one face is said once. The later step has the
 * alert triangle beside its number instead: what it stands for is said above it on the same face. On the next face, and
 * in the next procedure, it is said again.
 */
import type { CautionBlock } from '../../markup/block';
import type { StructureIndex } from '../frame';
import type { Said } from '../pieces';
import type { Setting } from '../setting';
import { plainText, saidKey } from '../survey';
import { alertTriangle, filledRect } from './marks';

/** Where the triangle stands on the first line of a step. */
export interface SaidPlace {
  readonly x: number;
  /** Middle of the line. */
  readonly middle: number;
  readonly widthPt: number;
}

/** What shows at a step of `list` that its caution is said above. `parent` is the element of the caution itself. */
export function saidAbove(
  block: CautionBlock,
  list: StructureIndex,
  { x, middle, widthPt }: SaidPlace,
  parent: StructureIndex,
  { look, structure }: Setting,
): Said | undefined {
  const key = saidKey(block);
  const { word, symbol } = look.cautions.panels[block.signal];
  if (key === undefined || !symbol) return undefined;
  const alt = look.words.saidAbove.replace('{caution}', `${word} ${plainText(block.hazard)}`);
  const tag = structure.add('Figure', structure.add('Div', parent), { alt });
  const height = widthPt * (Math.sqrt(3) / 2);
  const foot = middle + height / 2;
  const { ink, paper } = look.colours;
  const drawn = alertTriangle(x, foot, widthPt, ink, paper);
  const cover = filledRect(x, foot - height, widthPt, height, paper);
  return {
    key: `${list} ${key}`,
    items: [cover, ...drawn.map((item) => ({ ...item, tag }))],
    figures: [{ tag, bounds: [x, foot - height, x + widthPt, foot] }],
  };
}
