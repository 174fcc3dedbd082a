/** Paragraphs for the mark of a caution said above, and for none: one of them is printed, and the check knows which. */
import { expect, test } from 'vitest';
import { layoutCard } from '../../../src/layout/card/layout-card';
import { checkLaidOut } from '../../../src/layout/check';
import { makeSheet, readSheetSize } from '../../../src/layout/sheet';
import type { CardOptions } from '../../../src/layout/types';
import type { Block } from '../../../src/markup/block';
import { briefCaution, group, heading, paragraph, step, steps } from '../../helpers/blocks';
import { everyFace, plainTheme, plexFonts } from '../../helpers/fonts';
import { linesOf } from '../../helpers/squarePage';

function options(): CardOptions {
  const size = readSheetSize('A5');
  const sheet = size.ok ? makeSheet(size.value, 4, true) : size;
  if (!sheet.ok) throw new Error('A5');
  return {
    fonts: plexFonts,
    theme: plainTheme,
    sheet: sheet.value,
    title: 'Card',
    foot: ['Invented tourer'],
    leastPt: everyFace(8.5),
    signPt: 30,
    mostPt: 9,
    mostFaces: 9,
  };
}

const hot = briefCaution('warning', 'Hot.');
const legend = (words: string, marks: 'some' | 'none'): Block =>
  ({ ...paragraph(words), kind: 'paragraph', marks }) as Block;
const card = (careful: number): readonly Block[] => [
  heading(1, 'Card'),
  group([legend('Triangle: as above.', 'some'), legend('No triangle here.', 'none')]),
  steps(Array.from({ length: careful }, () => step('Open it', { cautions: [hot] }))),
];

function linesWith(blocks: readonly Block[]): readonly string[] {
  const result = layoutCard(blocks, options());
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  expect(checkLaidOut(blocks, result.value, options())).toEqual([]);
  return result.value.pages.flatMap(linesOf);
}

test('where a step has a mark, what it means is told', () => {
  const lines = linesWith(card(2));
  expect(lines).toContain('Triangle: as above.');
  expect(lines).not.toContain('No triangle here.');
});

test('where none has, the other paragraph stands there', () => {
  const lines = linesWith(card(1));
  expect(lines).toContain('No triangle here.');
  expect(lines).not.toContain('Triangle: as above.');
});

test('the check misses the legend that a mark asks for', () => {
  const [title, , careful] = card(2);
  if (title === undefined || careful === undefined) throw new Error('no card');
  const untold = layoutCard([title, group([paragraph('No triangle here.')]), careful], options());
  if (!untold.ok) throw new Error(JSON.stringify(untold.problems));
  expect(checkLaidOut(card(2), untold.value, options()).map(({ code }) => code)).not.toEqual([]);
});
