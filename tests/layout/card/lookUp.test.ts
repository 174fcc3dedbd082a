/** What is looked up with a card in the hand: how large, how close, and that it takes no room from the steps. */
import { describe, expect, it } from 'vitest';
import { layoutCard } from '../../../src/layout/card/layout-card';
import { checkLaidOut } from '../../../src/layout/check';
import type { LaidOut, Page } from '../../../src/layout/frame';
import { makeSheet, readSheetSize } from '../../../src/layout/sheet';
import type { CardOptions } from '../../../src/layout/types';
import type { Block } from '../../../src/markup/block';
import { group, heading, step, steps, table } from '../../helpers/blocks';
import { everyFace, plainTheme, plexFonts } from '../../helpers/fonts';
import { textsOf } from '../../helpers/squarePage';

const dashPt = 16;
const handPt = 10;

function laidOut(blocks: readonly Block[], own: Partial<CardOptions> = {}): LaidOut {
  const size = readSheetSize('A5');
  const sheet = size.ok ? makeSheet(size.value, 4, true) : size;
  if (!sheet.ok) throw new Error('no sheet');
  const options: CardOptions = {
    fonts: plexFonts,
    theme: plainTheme,
    sheet: sheet.value,
    title: 'Cold start',
    foot: ['Invented tourer'],
    leastPt: everyFace(dashPt),
    lookUpPt: everyFace(handPt),
    signPt: 30,
    mostPt: dashPt,
    mostFaces: 30,
    ...own,
  };
  const set = layoutCard(blocks, options);
  if (!set.ok) throw new Error(JSON.stringify(set.problems));
  expect(checkLaidOut(blocks, set.value, options)).toEqual([]);
  return set.value;
}

/** Tags with their places, each a line of its own. */
const list = (count: number) =>
  group(
    [
      heading(2, 'Where it is'),
      table({ rows: Array.from({ length: count }, (_, at) => [`V${at}`, `place${at}`]), style: 'plain' }),
    ],
    'look-up',
  );
const someSteps = (count: number) =>
  steps(Array.from({ length: count }, (_, at) => step(`Turn ${at}`, { result: `seen${at}` })));
const card = (rows: number, count: number) => [
  heading(1, 'Cold start'),
  list(rows),
  heading(2, 'Light the pilot'),
  someSteps(count),
];

const inCells = (set: LaidOut) =>
  set.pages.flatMap((page, face) =>
    textsOf(page)
      .filter(({ text, tag }) => tag !== undefined && /^(V|place)\d+$/.test(text.trim()))
      .map((text) => ({ ...text, face })),
  );

describe('what is looked up', () => {
  it('is set for the hand while the steps are set for the dash', () => {
    const set = laidOut(card(10, 40));
    for (const { sizePt } of inCells(set)) {
      expect(sizePt).toBeGreaterThanOrEqual(handPt);
      expect(sizePt).toBeLessThanOrEqual(dashPt);
    }
    const turns = set.pages.flatMap(textsOf).filter(({ text }) => text.startsWith('Turn'));
    expect(new Set(turns.map(({ sizePt }) => sizePt))).toEqual(new Set([dashPt]));
  });

  it('grows into room that is left over, and keeps no step off the first face', () => {
    const turnsOn = (page: Page | undefined) => textsOf(page).filter(({ text }) => text.startsWith('Turn'));
    const cards = Array.from({ length: 24 }, (_, at) => ({ rows: at + 4, set: laidOut(card(at + 4, 30)) }));
    // the lowest line that a step stands on, on any face of any of them
    const lowest = Math.max(...cards.flatMap(({ set }) => set.pages.flatMap(turnsOn)).map(({ y }) => y));
    const sizes = cards.map(({ rows, set }) => {
      const size = inCells(set)[0]?.sizePt ?? 0;
      const turns = turnsOn(set.pages[0]);
      const [last, before] = [turns.at(-1)?.y ?? 0, turns.at(-2)?.y ?? 0];
      if (before === 0) return size;
      // were the list as small as it may be, the next step would still not fit
      const gained = 1.27 * (size - handPt) * rows;
      expect(gained + lowest - last, `${rows} rows`).toBeLessThan(last - before);
      return size;
    });
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(handPt);
    expect(Math.max(...sizes)).toBeGreaterThan(handPt);
    expect(sizes.filter((size) => size === handPt).length).toBeGreaterThan(0);
  });

  it('does not grow where the whole card is read in the hand', () => {
    const set = laidOut(card(10, 40), { leastPt: everyFace(handPt), mostPt: handPt });
    expect(new Set(inCells(set).map(({ sizePt }) => sizePt))).toEqual(new Set([handPt]));
  });

  it('is never broken within a line: a tag and its place stand on one face, on one line', () => {
    const cells = inCells(laidOut(card(120, 5)));
    expect(new Set(cells.map(({ face }) => face)).size).toBeGreaterThan(1);
    for (let at = 0; at < 120; at += 1) {
      const [tag] = cells.filter(({ text }) => text.trim() === `V${at}`);
      const [place] = cells.filter(({ text }) => text.trim() === `place${at}`);
      expect([tag?.face, tag?.y], `V${at}`).toEqual([place?.face, place?.y]);
    }
  });

  it('stands as close as the lines of a paragraph', () => {
    const ys = inCells(laidOut(card(6, 3)))
      .filter(({ text }) => text.startsWith('V'))
      .map(({ y, sizePt }) => ({ y, sizePt }));
    const gaps = ys.slice(1).map(({ y, sizePt }, at) => (y - (ys[at]?.y ?? 0)) / sizePt);
    for (const gap of gaps) {
      expect(gap).toBeGreaterThanOrEqual(1.25 - 1e-6);
      expect(gap).toBeLessThanOrEqual(1.3);
    }
  });
});
