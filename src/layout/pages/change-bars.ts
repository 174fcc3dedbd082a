/**
 * Bars in the outer margin beside what reads otherwise than in the issue before; a short one with a stroke towards the
 * text where something is gone. They are artifacts: a paper that has them lists what changed in words.
 */
import type { Colour } from '../../drawing/drawing';
import type { BlockOrigin } from '../../markup/block';
import { fits } from '../fits';
import type { FilledBox } from '../flow/fill';
import type { PlacedItem } from '../frame';
import type { Problems } from '../problems';
import type { Bounds } from '../shape';
import { pointsPerMm } from '../sheet';
import type { FlowOptions } from '../types';

/** What is to be marked on one page, in points from the top of its body. */
export interface PageChanges {
  readonly bars: readonly { readonly top: number; readonly bottom: number }[];
  /** Heights at which something is gone. */
  readonly gone: readonly number[];
}

/** Where the marks of a page stand: the strip between the text and the marks of the chapters. */
export interface ChangeStrip {
  readonly bounds: Bounds;
  /** Which edge of the strip the text is at. */
  readonly text: 'left' | 'right';
}

/** Bars closer than this are one bar: no line of text stands between them. */
const joinedPt = 9;
/** Length of the mark of something gone, and of its stroke. */
const goneTallPt = 10;
const goneStrokePt = 4;
/** A bar stands no farther from the text than this. */
const mostClearPt = 6;
/** Least width of a strip that marks can stand in. */
const leastStripPt = 4;

/** Left and right of the strip between the text, which is at its `text` edge, and the marks of the chapters or the clear edge. */
export function changeStrip(
  { sheet, theme, chapterTabs }: FlowOptions,
  text: ChangeStrip['text'],
): readonly [left: number, right: number] {
  const { show, clearMm, widthMm } = theme.tabs;
  const takenPt = (clearMm + (chapterTabs && show ? widthMm : 0)) * pointsPerMm;
  // the outer margin is the right one of the sheet, in a mirror on the backs
  const outerPt = sheet.margins.right;
  return text === 'right' ? [takenPt, outerPt] : [sheet.widthPt - outerPt, sheet.widthPt - takenPt];
}

/** Says so if the theme leaves no room for marks. */
export function refuseNarrowMargin(options: FlowOptions, origin: BlockOrigin, problems: Problems): void {
  const [left, right] = changeStrip(options, 'left');
  if (fits(leastStripPt, right - left)) return;
  problems.add(
    {
      code: 'layout-no-outer-margin',
      severity: 'error',
      message: 'there is no room in the outer margin for the bars that mark what changed',
      found: `${Math.max(0, right - left).toFixed(1)} pt`,
      expected: `at least ${leastStripPt} pt between the text and the marks of the chapters`,
      mend: 'give the theme a wider right margin',
    },
    origin,
  );
}

/** Whether anything is to be marked. */
export function anyChange({ bars, gone }: PageChanges): boolean {
  return bars.length + gone.length > 0;
}

/** What the boxes of a page say of changes. */
export function changesOn(boxes: readonly FilledBox[]): PageChanges {
  const bars: { top: number; bottom: number }[] = [];
  const gone: number[] = [];
  for (const { box, y } of boxes)
    for (const layer of box.layers) {
      if (layer.beside === undefined) continue;
      const { heightPt, change } = layer.beside;
      const top = y + layer.y;
      if (change.goneAfter) gone.push(top + heightPt);
      if (change.changed) bars.push({ top, bottom: top + heightPt });
    }
  return { bars: joined(bars), gone };
}

function joined(bars: { top: number; bottom: number }[]): PageChanges['bars'] {
  const whole: { top: number; bottom: number }[] = [];
  for (const bar of bars.sort((a, b) => a.top - b.top)) {
    const last = whole.at(-1);
    if (last !== undefined && bar.top - last.bottom < joinedPt)
      last.bottom = Math.max(last.bottom, bar.bottom);
    else whole.push({ ...bar });
  }
  return whole;
}

/** The marks, as shapes on the sheet. `top` is the top of the body; `widthPt` that of a bar. */
export function drawChanges(
  { bars, gone }: PageChanges,
  { bounds: [left, , right], text }: ChangeStrip,
  top: number,
  widthPt: number,
  fill: Colour,
): PlacedItem[] {
  const clear = Math.min(mostClearPt, (right - left - widthPt) / 2);
  const x = text === 'left' ? left + clear : right - clear - widthPt;
  const rect = (y: number, height: number, from = x, width = widthPt): PlacedItem => ({
    kind: 'shape',
    shape: { kind: 'rect', x: from, y: top + y, width, height, paint: { fill } },
  });
  const stroke = Math.min(goneStrokePt, clear);
  const strokeX = text === 'left' ? x - stroke : x + widthPt;
  return [
    ...bars.map((bar) => rect(bar.top, bar.bottom - bar.top)),
    ...gone.flatMap((y) => [
      rect(y - goneTallPt / 2, goneTallPt),
      rect(y - widthPt / 2, widthPt, strokeX, stroke),
    ]),
  ];
}

/** How far above and below the body a mark may reach. */
export const overhangPt = goneTallPt / 2;
