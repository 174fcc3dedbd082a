import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { LaidOut, Page } from '../../src/layout/frame';
import { bookwise, gridFor, type ImposeOptions, impose } from '../../src/layout/impose';
import { pointsPerMm } from '../../src/layout/sheet';
import { writePdf } from '../../src/pdf/write';
import { options as pdfOptions, textItem } from '../helpers/laidOut';
import { pdfBreaches } from '../helpers/pdfChecks';
import { PdfFile, Ref } from '../helpers/pdfFile';
import { openPdf } from '../helpers/pdfText';

const letter = { widthPt: 612, heightPt: 792 };
const halfLetter = { widthPt: 396, heightPt: 612 };
const index3x5 = { widthPt: 216, heightPt: 360 };

const options = (more: Partial<ImposeOptions> = {}): ImposeOptions => ({
  sheet: letter,
  ink: '#000000',
  words: { label: '{sheet} {side}', front: 'front', back: 'back' },
  ...more,
});

/** Faces with their number as their only words; one paragraph runs over all of them. */
function cards(count: number, size: { widthPt: number; heightPt: number }): LaidOut {
  const pages = Array.from({ length: count }, (_, face): Page => {
    const { widthPt, heightPt } = size;
    const own = textItem(`face ${face}`, 20, 30, { tag: 2 + face });
    const running = textItem(`part ${face}`, 20, 60, { tag: 1 });
    return {
      ...size,
      label: String(face),
      items: [own, running],
      printable: [9, 9, widthPt - 9, heightPt - 9],
    };
  });
  const structure: LaidOut['structure'] = [
    { type: 'Document' },
    { type: 'P', parent: 0 },
    ...pages.map(() => ({ type: 'P' as const, parent: 0 })),
  ];
  const destinations = pages.map((_, page) => ({ name: `d${page}`, page, y: 30 }));
  return { pages, structure, destinations, outline: [] };
}

/** Where each word of a face has come to stand. */
function placesOf(laidOut: LaidOut, words: RegExp) {
  return laidOut.pages.flatMap((page, index) =>
    page.items.flatMap((item) =>
      item.kind === 'text' && words.test(item.text)
        ? [{ text: item.text, page: index, x: item.x, y: item.y }]
        : [],
    ),
  );
}

describe('gridFor', () => {
  it.each([
    ['half letter on letter: two beside each other on a sheet on its side', halfLetter, letter, 2, 1, 792],
    ['3 × 5 in on letter: four', index3x5, letter, 2, 2, 612],
    [
      'A6 on A4: four',
      { widthPt: 105 * pointsPerMm, heightPt: 148 * pointsPerMm },
      a4(),
      2,
      2,
      210 * pointsPerMm,
    ],
  ])('%s', (_, card, sheet, columns, rows, widthPt) => {
    expect(gridFor(card, sheet)).toMatchObject({ columns, rows, widthPt });
  });

  it('is none where a sheet holds only one card', () => {
    expect(gridFor(letter, letter)).toBeUndefined();
    expect(gridFor({ widthPt: 500, heightPt: 700 }, letter)).toBeUndefined();
  });

  it('never lets cards overlap or stick out, for any size', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 40, max: 800 }),
        fc.integer({ min: 40, max: 800 }),
        (widthPt, heightPt) => {
          const grid = gridFor({ widthPt, heightPt }, letter);
          if (grid === undefined) return;
          expect(grid.left).toBeGreaterThanOrEqual(-0.5);
          expect(grid.top).toBeGreaterThanOrEqual(-0.5);
          expect(grid.left + grid.columns * widthPt).toBeLessThanOrEqual(grid.widthPt + 0.5);
          expect(grid.top + grid.rows * heightPt).toBeLessThanOrEqual(grid.heightPt + 0.5);
        },
      ),
    );
  });
});

function a4() {
  return { widthPt: 210 * pointsPerMm, heightPt: 297 * pointsPerMm };
}

describe('impose', () => {
  it.each([
    [index3x5, 'long-edge', 11],
    [index3x5, 'short-edge', 8],
    [halfLetter, 'long-edge', 5],
    [halfLetter, 'short-edge', 4],
  ] as const)('puts every face once, each back behind its front (%o, %s)', (size, turning, count) => {
    const sheets = impose(cards(count, size), options({ turning }));
    if (sheets === undefined) throw new Error('no sheets');
    const places = placesOf(sheets, /^face/);
    expect(places.map(({ text }) => Number(text.slice(5))).sort((a, b) => a - b)).toEqual([
      ...Array(count).keys(),
    ]);
    for (let front = 0; front + 1 < count; front += 2) {
      const [one, other] = [front, front + 1].map((face) =>
        places.find(({ text }) => text === `face ${face}`),
      );
      const side = sheets.pages[one?.page ?? 0];
      if (one === undefined || other === undefined || side === undefined) throw new Error('a face is gone');
      expect(one.page % 2).toBe(0);
      expect(other.page).toBe(one.page + 1);
      // corner of the card on either side, by the place of its word
      const [left, top, backLeft, backTop] = [one.x - 20, one.y - 30, other.x - 20, other.y - 30];
      const sideways = (turning === 'long-edge') === side.widthPt < side.heightPt;
      expect(backLeft).toBeCloseTo(sideways ? side.widthPt - left - size.widthPt : left, 6);
      expect(backTop).toBeCloseTo(sideways ? top : side.heightPt - top - size.heightPt, 6);
    }
  });

  it('turns cards like pages unless told otherwise', () => {
    expect(bookwise(letter)).toBe('long-edge');
    expect(bookwise({ widthPt: 792, heightPt: 612 })).toBe('short-edge');
    const [first, back] = impose(cards(4, halfLetter), options())?.pages ?? [];
    expect([first?.label, back?.label]).toEqual(['1 front', '1 back']);
    expect(
      placesOf(impose(cards(4, halfLetter), options()) as LaidOut, /^face/).map(({ text, x }) => [text, x]),
    ).toEqual([
      ['face 0', 20],
      ['face 2', 416],
      ['face 1', 416],
      ['face 3', 20],
    ]);
  });

  it('is nothing for a paper of the printer’s own size', () => {
    expect(impose(cards(3, letter), options())).toBeUndefined();
  });

  it('has a rule of 100 mm and of 4 in on the front of every sheet', () => {
    const sheets = impose(cards(9, index3x5), options());
    for (const [index, { items }] of (sheets?.pages ?? []).entries()) {
      const lengths = items.flatMap((item) => {
        if (item.kind !== 'shape' || item.shape.kind !== 'path') return [];
        const [from, to] = item.shape.pieces;
        return from && to && 'x' in from && 'x' in to ? [Math.hypot(to.x - from.x, to.y - from.y)] : [];
      });
      const has = (long: number) => lengths.some((each) => Math.abs(each - long) < 0.001);
      expect([has(100 * pointsPerMm), has(288)]).toEqual(index % 2 === 0 ? [true, true] : [false, false]);
    }
  });

  it('has the guides of every card at its front, and none on backs', () => {
    const plain = cards(6, index3x5);
    const guided = {
      ...plain,
      pages: plain.pages.map((page, face) => ({ ...page, guides: [textItem(`guide ${face}`, 5, 6)] })),
    };
    const sheets = impose(guided, options());
    const fronts = placesOf(sheets as LaidOut, /^face [024]$/);
    expect(placesOf(sheets as LaidOut, /^guide/)).toEqual(
      fronts.map(({ text, page, x, y }) => ({
        text: text.replace('face', 'guide'),
        page,
        x: x - 15,
        y: y - 24,
      })),
    );
  });

  it('moves destinations with their faces', () => {
    const sheets = impose(cards(8, index3x5), options());
    const word = placesOf(sheets as LaidOut, /^face 6$/)[0];
    expect(sheets?.destinations[6]).toEqual({ name: 'd6', page: word?.page, y: word?.y });
  });

  it('is read in the order of the faces, not of the sides, and its file keeps the clauses that are checked', async () => {
    const sheets = impose(cards(6, index3x5), options());
    if (sheets === undefined) throw new Error('no sheets');
    const bytes = await writePdf(sheets, pdfOptions);
    expect(pdfBreaches(new PdfFile(Buffer.from(bytes)))).toEqual([]);
    const file = new PdfFile(Buffer.from(bytes));
    const [root] = file.list(file.dict(file.catalog.StructTreeRoot).K);
    const [running] = file.list(file.dict(root).K).map((kid) => file.dict(kid));
    const sideOf = (page: unknown) => file.pages.findIndex(({ id }) => page instanceof Ref && page.id === id);
    // the paragraph that runs over all faces: front, back, front, back…
    const sides = file
      .list(running?.K)
      .map((kid) => sideOf(typeof kid === 'number' ? running?.Pg : (file.dict(kid).Pg ?? running?.Pg)));
    expect(sides).toEqual([0, 1, 0, 1, 0, 1]);
    const pdf = await openPdf(bytes);
    expect(pdf.numPages).toBe(2);
    await pdf.destroy();
  });
});
