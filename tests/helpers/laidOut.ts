/**
 * A small paper laid out by hand, with one of everything the PDF writer knows.
 */
import type { LaidOut, Page, PlacedItem, PlacedText, StructureElement } from '../../src/layout/frame';
import type { PdfOptions } from '../../src/pdf/write';
import { fontFiles, plexFonts } from './fonts';

/** A fixed day, so that the same paper gives the same bytes. */
export const options: PdfOptions = {
  title: 'Dash card: A & B <left>',
  language: 'en-US',
  author: 'A. Keeper & Sons',
  subject: 'Invented car "Kettle"',
  keywords: 'issue B, 3f2a',
  creationDate: new Date('2026-01-02T03:04:05Z'),
  fontFiles,
  duplex: 'long-edge',
};

/** A run of text, measured as layout would. */
export function textItem(text: string, x: number, y: number, more: Partial<PlacedText> = {}): PlacedText {
  const face = more.face ?? 'text';
  const sizePt = more.sizePt ?? 10;
  return {
    kind: 'text',
    x,
    y,
    text,
    face,
    sizePt,
    widthPt: plexFonts[face].widthOf(text, sizePt),
    colour: '#000000',
    ...more,
  };
}

/** A page of letter paper. */
export function page(label: string, items: readonly PlacedItem[], more: Partial<Page> = {}): Page {
  return { widthPt: 612, heightPt: 792, label, items, printable: [36, 36, 576, 756], ...more };
}

const structure: readonly StructureElement[] = [
  /*  0 */ { type: 'Document' },
  /*  1 */ { type: 'Sect', parent: 0 },
  /*  2 */ { type: 'H1', parent: 1 },
  /*  3 */ { type: 'P', parent: 1 },
  /*  4 */ { type: 'Span', parent: 3 },
  /*  5 */ { type: 'Link', parent: 3 },
  /*  6 */ { type: 'L', parent: 1, numbering: 'Decimal' },
  /*  7 */ { type: 'LI', parent: 6 },
  /*  8 */ { type: 'Lbl', parent: 7 },
  /*  9 */ { type: 'LBody', parent: 7 },
  /* 10 */ { type: 'Table', parent: 1 },
  /* 11 */ { type: 'THead', parent: 10 },
  /* 12 */ { type: 'TR', parent: 11 },
  /* 13 */ { type: 'TH', parent: 12, scope: 'Column' },
  /* 14 */ { type: 'TH', parent: 12, scope: 'Column' },
  /* 15 */ { type: 'TBody', parent: 10 },
  /* 16 */ { type: 'TR', parent: 15 },
  /* 17 */ { type: 'TH', parent: 16, scope: 'Row' },
  /* 18 */ { type: 'TD', parent: 16 },
  /* 19 */ { type: 'TR', parent: 15 },
  /* 20 */ { type: 'TD', parent: 19, columnSpan: 2 },
  /* 21 */ { type: 'Figure', parent: 1, alt: 'A valve, open (½ turn)', box: [100, 400, 200, 460] },
  /* 22 */ { type: 'Sect', parent: 0 },
  /* 23 */ { type: 'H1', parent: 22 },
  /* 24 */ { type: 'Note', parent: 22 },
  /* 25 */ { type: 'P', parent: 22, language: 'de' },
];

/** The paper: two pages, every kind of item and of structure. Element 18 is an empty cell. */
export const paper: LaidOut = {
  structure,
  pages: [
    page('i', [
      textItem('Lighting the pilot', 72, 100, { face: 'text-bold', sizePt: 20, tag: 2 }),
      {
        kind: 'shape',
        shape: { kind: 'rect', x: 72, y: 106, width: 468, height: 1, paint: { fill: '#cc0000' } },
      },
      textItem('Open the AV valve, see', 72, 130, { tag: 3 }),
      textItem('blue flame', 72, 144, { tag: 4, face: 'text-italic' }),
      textItem(' on ', 121, 144, { tag: 3 }),
      textItem('the next page', 140, 144, { tag: 5 }),
      {
        kind: 'link',
        x: 140,
        y: 134,
        widthPt: 70,
        heightPt: 13,
        target: 'two',
        words: 'Putting out (next page)',
        tag: 5,
      },
      textItem('1', 72, 170, { tag: 8 }),
      textItem('Shut the 45 psi “automatic” – 2½ turns, low-', 90, 170, { tag: 9, face: 'narrow' }),
      textItem('water first', 90, 184, { tag: 9, face: 'narrow' }),
      textItem('Valve', 72, 220, { tag: 13, face: 'narrow-bold' }),
      textItem('Turns', 172, 220, { tag: 14, face: 'narrow-bold' }),
      textItem('V1', 72, 240, { tag: 17 }),
      textItem('all shut', 72, 260, { tag: 20 }),
      {
        kind: 'shape',
        tag: 21,
        shape: {
          kind: 'circle',
          cx: 130,
          cy: 430,
          r: 20,
          paint: { stroke: { colour: '#000000', widthPt: 1, dashPt: [3, 2], cap: 'round' } },
        },
      },
      {
        kind: 'shape',
        tag: 21,
        shape: {
          kind: 'path',
          pieces: [
            { op: 'move', x: 150, y: 430 },
            { op: 'line', x: 180, y: 430 },
            { op: 'curve', x1: 190, y1: 430, x2: 195, y2: 440, x: 195, y: 450 },
            { op: 'close' },
          ],
          paint: { fill: '#eeeeee', stroke: { colour: '#336699', widthPt: 0.5 } },
        },
      },
      {
        kind: 'shape',
        tag: 21,
        shape: {
          kind: 'text',
          x: 130,
          y: 434,
          text: 'V1',
          face: 'narrow',
          sizePt: 8,
          colour: '#000000',
          anchor: 'middle',
        },
      },
      {
        kind: 'shape',
        tag: 21,
        shape: {
          kind: 'text',
          x: 190,
          y: 455,
          text: 'up',
          face: 'narrow',
          sizePt: 8,
          colour: '#000000',
          anchor: 'start',
          turn: -90,
        },
      },
      { kind: 'shape', shape: { kind: 'rect', x: 72, y: 500, width: 40, height: 20, radius: 4, paint: {} } },
      textItem('Kettlebook · i', 72, 740, { sizePt: 8, colour: '#555555' }),
    ]),
    page(
      '1',
      [
        textItem('Putting out', 72, 100, { face: 'text-bold', sizePt: 20, tag: 23 }),
        textItem('Let it cool.', 72, 130, { tag: 24 }),
        textItem('Ende', 72, 150, { tag: 25 }),
      ],
      { widthPt: 595, heightPt: 842 },
    ),
    page('2', [textItem('Kettlebook · 2', 72, 740, { sizePt: 8 })]),
  ],
  destinations: [
    { name: 'two', page: 1, y: 80 },
    { name: 'one', page: 0, y: 80 },
    { name: 'Ofen (groß)', page: 1, y: 200 },
  ],
  outline: [
    {
      title: 'Lighting the pilot',
      destination: 'one',
      children: [{ title: 'Später', destination: 'Ofen (groß)', children: [] }],
    },
    { title: 'Putting out', destination: 'two', children: [] },
  ],
};

/** The same with a line, a box to tick and several lines to fill in on its last page. Their `Form` elements stand in a table and beside it. */
export const paperWithFields: LaidOut = {
  ...paper,
  structure: [
    ...structure,
    /* 26 */ { type: 'Form', parent: 18 },
    /* 27 */ { type: 'Sect', parent: 0 },
    /* 28 */ { type: 'Form', parent: 27 },
    /* 29 */ { type: 'Form', parent: 27 },
  ],
  pages: paper.pages.map((each, index) =>
    index === 2 ? { ...each, items: [...each.items, ...fields()] } : each,
  ),
};

function fields(): readonly PlacedItem[] {
  const at = (y: number, widthPt: number, heightPt: number) => ({ x: 72, y, widthPt, heightPt, sizePt: 10 });
  return [
    {
      kind: 'field',
      ...at(100, 200, 18),
      field: { kind: 'line', name: 'trip-1-date', title: 'Trip 1: date' },
      tag: 26,
    },
    {
      kind: 'field',
      ...at(130, 12, 12),
      field: { kind: 'tick', name: 'good', title: 'Häkchen: “good”' },
      tag: 28,
    },
    {
      kind: 'field',
      ...at(160, 300, 48),
      field: { kind: 'lines', name: 'evening-1', title: 'What was not right' },
      tag: 29,
    },
  ];
}
