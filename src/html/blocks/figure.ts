/** Figures: the drawing itself, in the page, with its words for those who cannot see it. */

import type { Drawing } from '../../drawing/drawing';
import { toSvg } from '../../drawing/svg';
import { plainText } from '../../layout/survey';
import type { FigureBlock } from '../../markup/block';
import { classOf, shownChange } from '../change';
import { element, Html } from '../element';
import { words } from '../inline';
import type { Writing } from '../writing';

/** Letters of a drawing never come out smaller than this, in CSS pixels; a narrow screen scrolls instead. */
const leastLetterPx = 11;

const pxPerPt = 96 / 72;

/** A drawing with its caption. The caption is the drawing's title, so that a pointer resting on it says the same. */
export function writeFigure(block: FigureBlock, writing: Writing): Html {
  const { drawing } = block;
  const caption = plainText(block.caption);
  const title = caption === '' ? writing.look.words.drawing : caption;
  const svg = Html.sound(toSvg({ ...drawing, name: title }, writing.fonts));
  const frame = element(
    'div',
    {
      class: 'drawing',
      role: 'group',
      tabindex: 0,
      'aria-label': title,
      style: `--least:${leastWidthPx(drawing)}px`,
    },
    svg,
  );
  const below = block.caption.length > 0 ? [element('figcaption', {}, words(block.caption, writing))] : [];
  const scale =
    block.trueSize === true ? [element('p', { class: 'note' }, writing.look.words.notToScale)] : [];
  const { names, before, after } = shownChange(block.change, writing);
  const attributes = { id: block.id, class: classOf(...names) };
  return element('figure', attributes, ...before, frame, ...scale, ...below, ...after);
}

/** Width at which the smallest letters can still be read; never more than the drawing's own. */
function leastWidthPx({ widthPt, shapes }: Drawing): number {
  const sizes = shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.sizePt * pxPerPt] : []));
  const scale = sizes.length === 0 ? 0 : Math.min(1, leastLetterPx / Math.min(...sizes));
  return Math.round(widthPt * pxPerPt * scale);
}
