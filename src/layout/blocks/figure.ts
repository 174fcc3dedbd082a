/**
 * Figures: a drawing, scaled down only if it must be and never if it is measured with, with its caption on the same page.
 * In a book one gives way by a little rather than leave the foot of a page empty, as far as its letters can still be read.
 */
import type { Drawing } from '../../drawing/drawing';
import { placeShape } from '../../drawing/place';
import type { BlockOrigin, FigureBlock } from '../../markup/block';
import { fits } from '../fits';
import { placeText, setText, textHeight } from '../inline/text';
import { leastInHandPt } from '../legibility';
import { type Box, box, gap, type Piece, type Splittable } from '../pieces';
import type { Place, Setting } from '../setting';

/** Makes a figure ready for pages. */
export function collectFigure(block: FigureBlock, place: Place, setting: Setting): Piece[] {
  const { look, structure } = setting;
  const { drawing } = block;
  const group = structure.add('Div', place.tag);
  const tag = structure.add('Figure', group, { alt: drawing.alt });
  const captionTag = block.caption.length > 0 ? structure.add('Caption', group) : undefined;
  const caption = setText(block.caption, look.caption, place.widthPt, setting, block.origin, captionTag);
  const captionPt = caption.lines.length === 0 ? 0 : look.space.caption + textHeight(caption);
  const roomPt = Math.max(setting.roomPt - place.keptAbovePt - captionPt, 0);
  const whole = fits(drawing.widthPt, place.widthPt) && fits(drawing.heightPt, roomPt);
  const scale = whole ? 1 : Math.min(place.widthPt / drawing.widthPt, roomPt / drawing.heightPt);
  if (block.trueSize === true && !whole)
    setting.problems.add(notWhole(drawing, place.widthPt, roomPt), block.origin);
  else if (scale < smallestScale) setting.problems.add(tooSmall(drawing.name, scale), block.origin);
  reportLetters(block, setting);
  const at = (shown: number): Box => {
    const heightPt = drawing.heightPt * shown;
    const shapes = drawing.shapes.map(
      (shape) => ({ kind: 'shape', shape: placeShape(shape, shown, place.x, 0), tag }) as const,
    );
    const text = placeText(caption, place.x, heightPt + look.space.caption, 'left', setting, captionTag);
    const bounds = [place.x, 0, place.x + drawing.widthPt * shown, heightPt] as const;
    return {
      ...box(heightPt + captionPt, [...shapes, ...text], block.origin),
      figures: [{ tag, bounds }],
    };
  };
  const around = gap(look.space.block);
  const least =
    block.trueSize === true || !setting.chaptersOnNewPage ? scale : leastScale(drawing, scale, setting);
  const figure =
    least < scale ? givingWay(drawing, { captionPt, scale, least }, at, block.origin) : at(scale);
  return [around, figure, around];
}

/** A figure gives way to no less than this share of its size. */
const leastGiven = 0.85;

/** The least scale that a drawing may be given to fit where it is: `scale` itself where its letters allow no less. */
function leastScale({ shapes }: Drawing, scale: number, { look }: Setting): number {
  const needed = shapes.flatMap((shape) =>
    shape.kind === 'text' ? [leastInHandPt(look.fonts[shape.face]) / shape.sizePt] : [],
  );
  return Math.min(scale, Math.max(leastGiven * scale, ...needed));
}

/** A figure that is as large as there is room for, between the least and the whole of its size. */
function givingWay(
  { heightPt: ownPt }: Drawing,
  { captionPt, scale, least }: { readonly captionPt: number; readonly scale: number; readonly least: number },
  at: (scale: number) => Box,
  origin: BlockOrigin,
): Splittable {
  const heightPt = ownPt * scale + captionPt;
  const leastPt = ownPt * least + captionPt;
  return {
    kind: 'splittable',
    heightPt,
    leastPt,
    wantPt: leastPt,
    keep: 'free',
    anchors: [],
    origin,
    take: (roomPt) => {
      if (!fits(leastPt, roomPt)) return { kind: 'nothing' };
      const shown = fits(heightPt, roomPt) ? scale : Math.max(least, (roomPt - captionPt) / ownPt);
      return { kind: 'all', box: at(shown) };
    },
  };
}

/** A drawing shown smaller than this share of its size cannot be read. */
const smallestScale = 0.35;

function tooSmall(name: string, scale: number) {
  return {
    code: 'layout-figure-small',
    severity: 'error',
    message: `the figure \`${name}\` has room for only ${(100 * scale).toFixed(0)} % of its size`,
    found: `${(100 * scale).toFixed(0)} %`,
    expected: `at least ${100 * smallestScale} %`,
    mend: 'use a larger sheet, or a smaller drawing',
  } as const;
}

function notWhole({ name, widthPt, heightPt }: Drawing, roomWidthPt: number, roomPt: number) {
  const measures = (width: number, height: number) => `${width.toFixed(0)} × ${height.toFixed(0)} pt`;
  return {
    code: 'layout-figure-true-size',
    severity: 'error',
    message: `there is no room for the figure \`${name}\` at its true size`,
    found: `${measures(widthPt, heightPt)} on ${measures(roomWidthPt, roomPt)}`,
    expected: 'room for all of it: what is measured with is never made smaller',
    mend: 'use a larger sheet, or narrower margins in the theme',
  } as const;
}

function reportLetters(block: FigureBlock, setting: Setting): void {
  for (const shape of block.drawing.shapes) {
    if (shape.kind !== 'text') continue;
    const missing = setting.look.fonts[shape.face].missing(shape.text);
    if (missing.length > 0) setting.problems.missingLetters(missing, block.origin);
  }
}
