/**
 * Whole papers as text. After a change that is meant, run the tests once with UPDATE_GOLDEN=1 and review what changed.
 */
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { dumpLaidOut } from '../../src/dump/dump';
import { layoutCard } from '../../src/layout/card/layout-card';
import type { LaidOut } from '../../src/layout/frame';
import { makeSheet, readSheetSize } from '../../src/layout/sheet';
import {
  caution,
  contents,
  definitions,
  figure,
  group,
  heading,
  inlines,
  list,
  pageOf,
  paragraph,
  rule,
  step,
  steps,
  table,
} from '../helpers/blocks';
import { plainTheme, plexFonts } from '../helpers/fonts';
import { laidOutCleanly, squareOptions } from '../helpers/squarePage';

const folder = new URL('./golden/', import.meta.url);

const manual = [
  heading(1, 'One'),
  contents(2),
  paragraph([...inlines('Shut *all* valves, see page '), pageOf('two'), ...inlines('.')]),
  list(['first', 'second'], true),
  steps([
    step('act', { result: 'see', critical: true, cautions: [caution('danger', 'Hot.', 'Burns.', 'Wait.')] }),
  ]),
  heading(2, 'Two', 'two'),
  table({
    caption: 'cap',
    head: ['a', 'b'],
    rows: [
      ['1', '2'],
      ['3', '4'],
    ],
    striped: true,
  }),
  group([paragraph('in a box')], 'boxed'),
  definitions([['word', 'meaning']]),
  figure(60, 24, 'drawn'),
  rule(2),
];

/** An entry that breaks between two columns, and one that does not. */
const columns = [
  heading(1, 'Words'),
  group(
    [
      definitions([
        [
          'bypass',
          'a valve that sends the water of a feed pump back to its tank so that the boiler has none of it',
        ],
        ['crack', 'to open a little'],
      ]),
    ],
    'columns',
  ),
];

function card(): LaidOut {
  const size = readSheetSize('A7');
  const sheet = size.ok ? makeSheet(size.value, 4, true) : size;
  if (!sheet.ok) throw new Error('no sheet');
  const size8 = { text: 8.5, 'text-italic': 8.5, 'text-bold': 8.5, narrow: 8.5, 'narrow-bold': 8.5 };
  const warning = caution('warning', 'Light spirit.', 'It burns.', 'Shut both valves.');
  const items = [
    step('Glass', { result: 'half' }),
    step('Open the filler', { cautions: [warning], critical: true }),
  ];
  const result = layoutCard([heading(1, 'Firing up'), steps(items)], {
    fonts: plexFonts,
    theme: plainTheme,
    sheet: sheet.value,
    title: 'Firing up',
    foot: ['Invented tourer', 'issue C'],
    leastPt: size8,
    signPt: 30,
    mostPt: 12,
    mostFaces: 2,
  });
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
}

const papers: Readonly<Record<string, () => LaidOut>> = {
  'manual.txt': () => laidOutCleanly(manual, squareOptions(30, 30)),
  'columns.txt': () => laidOutCleanly(columns, squareOptions(42, 12)),
  'card.txt': card,
};

describe('dumpLaidOut', () => {
  it.each(Object.keys(papers))('of %s is what it was', (name) => {
    const text = dumpLaidOut(papers[name]?.() ?? card());
    const file = new URL(name, folder);
    if (process.env.UPDATE_GOLDEN === '1') writeFileSync(file, text);
    expect(existsSync(file), `${name} is missing`).toBe(true);
    expect(text).toBe(readFileSync(file, 'utf8'));
  });

  it('has no text kept for a paper that is no longer made', () => {
    expect(readdirSync(folder).sort()).toEqual(Object.keys(papers).sort());
  });

  it('is the same for the same paper, laid out twice', () => {
    expect(dumpLaidOut(card())).toBe(dumpLaidOut(card()));
  });
});
