/** Checks of where things stand: inside the printable part of the sheet, and clear of each other. */
import type { Diagnostic } from '../../diagnostic/diagnostic';
import type { FontSet } from '../../font/metrics';
import type { LaidOut, Page, PlacedItem } from '../frame';
import { type Bounds, shapeBounds, textBounds } from '../shape';

/** How far a thing may stand out or over, in points: a hair, for lines drawn on an edge. */
const slackPt = 0.6;

/** Everything that stands outside the printable part of its sheet, told once a page. */
export function outside(laidOut: LaidOut, fonts: FontSet): Diagnostic[] {
  return laidOut.pages.flatMap((page): Diagnostic[] => {
    const out = page.items.find((item) => {
      const bounds = boundsOf(item, fonts);
      return !within(bounds, page.printable) && !inMargin(item, bounds, page);
    });
    if (out === undefined) return [];
    const box = boundsOf(out, fonts).map((value) => value.toFixed(1));
    return [
      {
        code: 'check-outside',
        severity: 'error',
        message: `${named(out)} on page ${page.label} stands outside the printable part of the sheet`,
        found: `left ${box[0]}, top ${box[1]}, right ${box[2]}, bottom ${box[3]} pt`,
        expected: `within ${page.printable.map((value) => value.toFixed(1)).join(', ')} pt`,
        mend: 'this is a fault of the program; please report it with the spec',
      },
    ];
  });
}

function within([x1, y1, x2, y2]: Bounds, [left, top, right, bottom]: Bounds): boolean {
  return x1 >= left - slackPt && y1 >= top - slackPt && x2 <= right + slackPt && y2 <= bottom + slackPt;
}

/** Only the mark of the chapter and those of what changed, which are artifacts, may stand in their strips. */
function inMargin(item: PlacedItem, bounds: Bounds, { tabStrip, changeStrip }: Page): boolean {
  if (item.kind !== 'shape' || item.tag !== undefined) return false;
  return [tabStrip, changeStrip].some((strip) => strip !== undefined && within(bounds, strip));
}

/** Runs of text, and fields to fill in, that cover each other, told once a page. */
export function overlaps(laidOut: LaidOut, fonts: FontSet): Diagnostic[] {
  return laidOut.pages.flatMap((page): Diagnostic[] => {
    const pair = overlappingPair(page, fonts);
    if (pair === undefined) return [];
    return [
      {
        code: 'check-overlap',
        severity: 'error',
        message: `two things cover each other on page ${page.label}`,
        found: pair.map(named).join(' and '),
        mend: 'this is a fault of the program; please report it with the spec',
      },
    ];
  });
}

function overlappingPair(page: Page, fonts: FontSet): readonly [PlacedItem, PlacedItem] | undefined {
  const written = page.items.filter(
    (item) => item.kind === 'field' || (item.kind === 'text' && item.text.trim() !== ''),
  );
  const boxes = written.map((item) => ({ item, bounds: boundsOf(item, fonts) }));
  boxes.sort((one, other) => one.bounds[1] - other.bounds[1]);
  let open: typeof boxes = [];
  for (const current of boxes) {
    open = open.filter(({ bounds }) => bounds[3] > current.bounds[1] + slackPt);
    const hit = open.find(({ bounds }) => overlapAcross(bounds, current.bounds));
    if (hit !== undefined) return [hit.item, current.item];
    open.push(current);
  }
  return undefined;
}

function overlapAcross(one: Bounds, other: Bounds): boolean {
  return one[0] < other[2] - slackPt && other[0] < one[2] - slackPt;
}

function boundsOf(item: PlacedItem, fonts: FontSet): Bounds {
  if (item.kind === 'shape') return shapeBounds(item.shape, fonts);
  if (item.kind === 'link' || item.kind === 'field')
    return [item.x, item.y, item.x + item.widthPt, item.y + item.heightPt];
  return textBounds(item.x, item.y, item.widthPt, item.face, item.sizePt, fonts);
}

function named(item: PlacedItem): string {
  if (item.kind === 'text') return `\`${item.text.trim()}\``;
  if (item.kind === 'field') return `the field \`${item.field.name}\``;
  return item.kind === 'link' ? `the link to \`${item.target}\`` : `a shape (${item.shape.kind})`;
}
