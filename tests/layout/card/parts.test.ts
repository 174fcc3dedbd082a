import { describe, expect, it } from 'vitest';
import { layoutCard } from '../../../src/layout/card/layout-card';
import { checkLaidOut } from '../../../src/layout/check';
import type { LaidOut } from '../../../src/layout/frame';
import { makeSheet, pointsPerMm, readSheetSize } from '../../../src/layout/sheet';
import type { CardOptions } from '../../../src/layout/types';
import type { Block } from '../../../src/markup/block';
import { heading, pageBreak, pageOf, paragraph, step, steps } from '../../helpers/blocks';
import { nearFoot, partsBegunLate } from '../../helpers/cardFaces';
import { everyFace, plainTheme, plexFonts } from '../../helpers/fonts';
import { linesOf, textsOf } from '../../helpers/squarePage';

function options(more: Partial<CardOptions> = {}): CardOptions {
  const size = readSheetSize('A6');
  const sheet = size.ok ? makeSheet(size.value, 4, true) : size;
  if (!sheet.ok) throw new Error('A6');
  return {
    fonts: plexFonts,
    theme: plainTheme,
    sheet: sheet.value,
    title: 'Something is wrong',
    foot: ['Invented tourer', 'Something is wrong', 'issue C, 2026-04-12', 'K7M2-4QXD'],
    leastPt: everyFace(10),
    signPt: 30,
    mostPt: 10,
    mostFaces: 30,
    ...more,
  };
}

function laidOut(blocks: readonly Block[], own: CardOptions): LaidOut {
  const result = layoutCard(blocks, own);
  if (!result.ok) throw new Error(JSON.stringify(result.problems, null, 2));
  expect(checkLaidOut(blocks, result.value, own)).toEqual([]);
  return result.value;
}

/** So many steps of one line each. */
const lines = (count: number) =>
  steps(Array.from({ length: count }, (_, index) => step(`Shut ${index + 1}`)));
/** Troubles of so many steps each, with that break before each. */
const troubles = (unless: 'third' | 'whole', ...counts: readonly number[]): Block[] => [
  heading(1, 'Something is wrong'),
  paragraph('Fire and ambulance: 911'),
  ...counts.flatMap((count, index) => [
    pageBreak(unless),
    heading(2, `Trouble ${'ABCDEFGH'[index]}`, `trouble-${index}`),
    lines(count),
  ]),
];
const headsOf = ({ pages }: LaidOut) => pages.map((page) => linesOf(page)[0]);

describe('parts of a card that ask for the whole', () => {
  it('begin a face unless they stand whole on the rest of one', () => {
    const card = laidOut(troubles('whole', 25, 4, 25, 12), options());
    expect(partsBegunLate(card)).toEqual([]);
    const begun = (trouble: string) =>
      card.pages.findIndex((page) => linesOf(page).some((line) => line === `Trouble ${trouble}`));
    // the short one stands below the end of the one before
    expect(headsOf(card)).toEqual([
      'Something is wrong',
      'Trouble A',
      'Something is wrong: Trouble A (continued)',
      'Trouble C',
      'Something is wrong: Trouble C (continued)',
    ]);
    expect(begun('B')).toBe(2);
    expect(begun('D')).toBe(4);
  });

  it('are found where they begin below something else and go on overleaf', () => {
    const card = laidOut(troubles('third', 25, 25, 25), options());
    expect(partsBegunLate(card)).toEqual(['face 1: Trouble A', 'face 2: Trouble B', 'face 3: Trouble C']);
  });

  it('have their heading for the head of the face, to the right of the hole on a front', () => {
    const card = laidOut(troubles('whole', 25, 25), options());
    const { sheet, theme } = options();
    const holePt = (theme.card.hole.centreMm + theme.card.hole.diameterMm / 2) * pointsPerMm;
    const heads = [1, 3].map((face) => textsOf(card.pages[face])[0]);
    expect(heads.map((head) => head?.text)).toEqual(['Trouble A', 'Trouble B']);
    const fronts = card.pages.flatMap((page, index) => {
      const [head] = textsOf(page);
      return index % 2 === 0 && head !== undefined ? [head.x] : [];
    });
    expect(fronts.length).toBeGreaterThan(1);
    for (const x of fronts) expect(x).toBeGreaterThan(holePt);
    expect(heads[0]?.x).toBeCloseTo(sheet.margins.left, 6);
    // no line tells of the card above it, and none of it stands a second time
    expect(linesOf(card.pages[1])[1]).toBe('1 Shut 1');
    expect(card.structure.filter(({ type }) => type === 'H2')).toHaveLength(2);
  });

  it('are found on their faces by number and by link', () => {
    const [title, ...rest] = troubles('whole', 25, 25);
    const list = paragraph([pageOf('trouble-1')]);
    if (title === undefined) throw new Error('no title');
    const card = laidOut([title, list, ...rest], options());
    expect(linesOf(card.pages[0])[1]).toBe('4');
    const { margins } = options().sheet;
    expect(card.destinations.find(({ name }) => name === 'trouble-1')).toEqual({
      name: 'trouble-1',
      page: 3,
      y: margins.top,
    });
  });
});

describe('the foot of a face', () => {
  const full = [heading(1, 'Something is wrong'), lines(60)];
  const clearPt = plainTheme.card.footClearMm * pointsPerMm;

  it('has the clear space of the theme above its line', () => {
    expect(clearPt).toBeGreaterThan(2);
    expect(nearFoot(laidOut(full, options()), clearPt, plexFonts)).toEqual([]);
  });

  it('is found where it has not', () => {
    const theme = { ...plainTheme, card: { ...plainTheme.card, footClearMm: 0 } };
    const found = [8, 8.5, 9, 9.5, 10].flatMap((sizePt) =>
      nearFoot(
        laidOut(full, options({ theme, leastPt: everyFace(sizePt), mostPt: sizePt })),
        clearPt,
        plexFonts,
      ),
    );
    expect(found.length).toBeGreaterThan(0);
  });
});
