/**
 * A brief caution that stands before several steps of one procedure on one face is said once. The later step has the
 * alert triangle and a letter beside its number instead: the same letter stands at the caution it stands for, above it on
 * the same face. Of two that stand before one step, one is said again. On the next face, and in the next procedure, it is said again.
 */
import type { CautionBlock } from '../../markup/block';
import type { StructureIndex } from '../frame';
import type { TextStyle } from '../look';
import type { Said } from '../pieces';
import type { Setting } from '../setting';
import { plainText, saidKey } from '../survey';
import { besidePt, placeLetter } from './letter';
import { alertTriangle, filledRect } from './marks';

/** Where the triangle stands on the first line of a step. */
export interface SaidPlace {
  readonly x: number;
  readonly baseline: number;
  /** Of the triangle alone; its letter stands right of it. */
  readonly widthPt: number;
  readonly letter: TextStyle;
}

/** What ties a brief caution to the steps of `list` that are marked with it; nothing if it is said wherever it stands. */
export function tieKey(block: CautionBlock, list: StructureIndex, { look }: Setting): string | undefined {
  const key = saidKey(block);
  return key === undefined || !look.cautions.panels[block.signal].symbol ? undefined : `${list} ${key}`;
}

/** What shows at a step that its caution, known by `key`, is said above. `parent` is the element of the caution itself. */
export function saidAbove(
  block: CautionBlock,
  key: string,
  { x, baseline, widthPt, letter: style }: SaidPlace,
  parent: StructureIndex,
  { look, structure }: Setting,
): Said {
  const { word } = look.cautions.panels[block.signal];
  const alt = look.words.saidAbove.replace('{caution}', `${word} ${plainText(block.hazard)}`);
  const tag = structure.add('Figure', structure.add('Div', parent), { alt });
  const height = widthPt * (Math.sqrt(3) / 2);
  const capPt = look.fonts[style.face].capHeight * style.sizePt;
  const foot = baseline - capPt / 2 + height / 2;
  const { ink, paper } = look.colours;
  const triangle = alertTriangle(x, foot, widthPt, ink, paper).map((item) => ({ ...item, tag }));
  const at = { besideX: x + widthPt, baseline, style, colour: ink, tag };
  const show = (letter: string | undefined) =>
    letter === undefined ? [] : [placeLetter(letter, at, look.fonts)];
  const right = at.besideX + besidePt(style, look.fonts);
  return {
    key,
    layer: {
      y: 0,
      items: [filledRect(x, foot - height, widthPt, height, paper), ...triangle],
      tied: { key, kind: 'mark', show },
    },
    figures: [
      { tag, bounds: [x, Math.min(foot - height, baseline - capPt), right, Math.max(foot, baseline)] },
    ],
  };
}
