/**
 * Imposition: the faces of cards, several to a sheet of the paper in the printer, fronts on one side and their backs behind
 * them on the other, with lines to cut along and a rule to check the size by.
 *
 * Cards are put edge to edge, so that one cut parts two of them; nothing is scaled.
 */
import type { Colour, Shape } from '../drawing/drawing';
import { fits } from './fits';
import type { Destination, LaidOut, Page, PlacedItem, StructureElement } from './frame';
import { moveItem } from './shape';
import { pointsPerMm } from './sheet';

/** Which edge of the sheet it is turned on between its two sides. */
export type Turning = 'long-edge' | 'short-edge';

/** The edge on which a sheet so laid out is turned for the cards on it to turn like pages of a book. */
export function bookwise({ widthPt, heightPt }: Size): Turning {
  return widthPt <= heightPt ? 'long-edge' : 'short-edge';
}

/** How cards are put on sheets. */
export interface ImposeOptions {
  /** The sheet, upright. */
  readonly sheet: { readonly widthPt: number; readonly heightPt: number };
  /** The edge it is turned on; left out, that on which the cards turn like pages. */
  readonly turning?: Turning;
  readonly ink: Colour;
  /** Label of a side, with `{sheet}` and `{side}` to be filled in; and the names of the two sides. */
  readonly words: { readonly label: string; readonly front: string; readonly back: string };
}

/** Where cards stand on a sheet. */
export interface Grid {
  readonly columns: number;
  readonly rows: number;
  /** The sheet as it lies, upright or on its side. */
  readonly widthPt: number;
  readonly heightPt: number;
  /** Upper left corner of the first card. */
  readonly left: number;
  readonly top: number;
}

type Size = ImposeOptions['sheet'];

/** The most cards of one size that a sheet holds, upright or on its side; nothing if it does not hold two. */
export function gridFor(card: Size, sheet: Size): Grid | undefined {
  const upright = gridOn(card, sheet);
  const turned = gridOn(card, { widthPt: sheet.heightPt, heightPt: sheet.widthPt });
  const best = turned.columns * turned.rows > upright.columns * upright.rows ? turned : upright;
  return best.columns * best.rows < 2 ? undefined : best;
}

function gridOn(card: Size, sheet: Size): Grid {
  const most = (room: number, side: number) => {
    const whole = Math.floor(room / side);
    return fits((whole + 1) * side, room) ? whole + 1 : whole;
  };
  const columns = most(sheet.widthPt, card.widthPt);
  const rows = most(sheet.heightPt, card.heightPt);
  const left = (sheet.widthPt - columns * card.widthPt) / 2;
  const top = (sheet.heightPt - rows * card.heightPt) / 2;
  return { columns, rows, widthPt: sheet.widthPt, heightPt: sheet.heightPt, left, top };
}

/**
 * The faces of `cards` on sheets; nothing if a sheet does not hold two of them, or if they are not all of one size. A card's
 * second face is printed behind its first.
 */
export function impose(cards: LaidOut, options: ImposeOptions): LaidOut | undefined {
  const [first] = cards.pages;
  if (first === undefined || cards.pages.some((page) => !sameSize(page, first))) return undefined;
  const grid = gridFor(first, options.sheet);
  if (grid === undefined) return undefined;
  const turning = options.turning ?? bookwise(grid);
  const places = cards.pages.map((_, face) => placeOf(face, grid, first, turning));
  const count = Math.ceil(cards.pages.length / (2 * grid.columns * grid.rows)) * 2;
  const pages = Array.from({ length: count }, (_, page) => {
    const faces = [...places.entries()].filter(([, place]) => place.page === page);
    return sheetSide(page, faces, cards, grid, options);
  });
  const destinations = cards.destinations.map((destination) => moved(destination, places));
  const structure = movedBoxes(cards, places);
  return { pages, structure, destinations, outline: cards.outline };
}

const sameSize = (one: Size, other: Size): boolean =>
  fits(one.widthPt, other.widthPt) &&
  fits(other.widthPt, one.widthPt) &&
  fits(one.heightPt, other.heightPt) &&
  fits(other.heightPt, one.heightPt);

interface FacePlace {
  readonly page: number;
  readonly x: number;
  readonly y: number;
}

/** Fronts go row by row; a back goes where its front's place comes to lie when the sheet is turned. */
function placeOf(face: number, grid: Grid, card: Size, turning: Turning): FacePlace {
  const perSide = grid.columns * grid.rows;
  const leaf = Math.floor(face / 2);
  const sheet = Math.floor(leaf / perSide);
  const place = leaf % perSide;
  const front = { column: place % grid.columns, row: Math.floor(place / grid.columns) };
  const isBack = face % 2 === 1;
  // the long edges stand left and right on an upright sheet, above and below on one that lies on its side
  const turnsSideways = (turning === 'long-edge') === grid.widthPt <= grid.heightPt;
  const column = isBack && turnsSideways ? grid.columns - 1 - front.column : front.column;
  const row = isBack && !turnsSideways ? grid.rows - 1 - front.row : front.row;
  return {
    page: 2 * sheet + (isBack ? 1 : 0),
    x: grid.left + column * card.widthPt,
    y: grid.top + row * card.heightPt,
  };
}

function sheetSide(
  page: number,
  faces: readonly (readonly [number, FacePlace])[],
  cards: LaidOut,
  grid: Grid,
  options: ImposeOptions,
): Page {
  const marks = page % 2 === 0 ? marksOn(grid, cards, options.ink) : [];
  const items: PlacedItem[] = [...marks];
  const readingRanks: number[] = marks.map(() => 0);
  for (const [face, { x, y }] of faces) {
    const { items: printed, guides } = cards.pages[face] ?? {};
    for (const item of [...(printed ?? []), ...(page % 2 === 0 ? (guides ?? []) : [])]) {
      items.push(moveItem(item, x, y));
      readingRanks.push(face);
    }
  }
  const { label, front, back } = options.words;
  const side = page % 2 === 0 ? front : back;
  return {
    widthPt: grid.widthPt,
    heightPt: grid.heightPt,
    label: label.replace('{sheet}', String(Math.floor(page / 2) + 1)).replace('{side}', side),
    items,
    readingRanks,
    printable: [0, 0, grid.widthPt, grid.heightPt],
  };
}

const cutStroke = { widthPt: 0.35, dashPt: [2, 3] };
/** Length of the check rule in millimetres, and in inches. */
const rule = { mm: 100, inches: 4 };

/** Lines to cut along, and the check rule on the longest of them. Printed on fronts only; backs are cut with them. */
function marksOn(grid: Grid, cards: LaidOut, ink: Colour): PlacedItem[] {
  const [card] = cards.pages;
  if (card === undefined) return [];
  const { left, top, columns, rows, widthPt, heightPt } = grid;
  const across = Array.from({ length: rows + 1 }, (_, row) => top + row * card.heightPt);
  const down = Array.from({ length: columns + 1 }, (_, column) => left + column * card.widthPt);
  // where a card ends at the sheet's own edge there is nothing to cut
  const inside = (at: number, size: number) => at > 1 && at < size - 1;
  const cutsAcross = across.filter((y) => inside(y, heightPt));
  const cutsDown = down.filter((x) => inside(x, widthPt));
  const lines = [
    ...cutsAcross.map((y) => cut(0, y, widthPt, y, ink)),
    ...cutsDown.map((x) => cut(x, 0, x, heightPt, ink)),
  ];
  const [x] = cutsDown;
  const [y] = cutsAcross;
  if (x !== undefined && (heightPt >= widthPt || y === undefined))
    return [
      ...lines,
      ...checkRule(ink, (along, off) => ({ x: x + off, y: (heightPt - mmLong) / 2 + along }), 90),
    ];
  if (y === undefined) return lines;
  return [
    ...lines,
    ...checkRule(ink, (along, off) => ({ x: (widthPt - mmLong) / 2 + along, y: y - off }), 0),
  ];
}

const mmLong = rule.mm * pointsPerMm;

function cut(x1: number, y1: number, x2: number, y2: number, ink: Colour): PlacedItem {
  return line({ x: x1, y: y1 }, { x: x2, y: y2 }, { colour: ink, ...cutStroke });
}

type Point = { readonly x: number; readonly y: number };

function line(from: Point, to: Point, stroke: { colour: Colour; widthPt: number }): PlacedItem {
  const pieces = [
    { op: 'move', ...from },
    { op: 'line', ...to },
  ] as const;
  return { kind: 'shape', shape: { kind: 'path', pieces, paint: { stroke } } };
}

/** Ticks at the ends of 100 mm on one side of a line and of 4 in on the other, in the clear edges of the cards beside it. */
function checkRule(ink: Colour, at: (along: number, off: number) => Point, turn: number): PlacedItem[] {
  const stroke = { colour: ink, widthPt: 0.5 };
  const tickPt = 2 * pointsPerMm;
  const ends: readonly (readonly [number, number, string])[] = [
    [mmLong, 1, `${rule.mm} mm`],
    [rule.inches * 72, -1, `${rule.inches} in`],
  ];
  return ends.flatMap(([long, side, words]): PlacedItem[] => {
    const label: Shape = {
      kind: 'text',
      ...at(long - 4, side > 0 ? 1.2 : -6),
      text: words,
      face: 'text',
      sizePt: 6,
      colour: ink,
      anchor: 'end',
      ...(turn === 0 ? {} : { turn }),
    };
    return [
      line(at(0, 0), at(0, side * tickPt), stroke),
      line(at(long, 0), at(long, side * tickPt), stroke),
      line(at(0, 0), at(long, 0), stroke),
      { kind: 'shape', shape: label },
    ];
  });
}

function moved(destination: Destination, places: readonly FacePlace[]): Destination {
  const place = places[destination.page];
  return place === undefined ? destination : { ...destination, page: place.page, y: destination.y + place.y };
}

/** Boxes of figures move with the face their first item stands on. */
function movedBoxes(
  { pages, structure }: LaidOut,
  places: readonly FacePlace[],
): readonly StructureElement[] {
  const faceOf = new Map<number, number>();
  for (const [face, { items }] of pages.entries())
    for (const { tag } of items) if (tag !== undefined && !faceOf.has(tag)) faceOf.set(tag, face);
  return structure.map((element, index) => {
    const place = places[faceOf.get(index) ?? -1];
    if (element.box === undefined || place === undefined) return element;
    const [left, top, right, bottom] = element.box;
    return { ...element, box: [left + place.x, top + place.y, right + place.x, bottom + place.y] };
  });
}
