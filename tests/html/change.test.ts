/** Marks of what changed on a page for a screen: a bar for the eye, words for the ear. */
import { describe, expect, test } from 'vitest';
import { unitsOf, withChanges } from '../../src/compare/units';
import { writeScreenPage } from '../../src/html/page';
import {
  caution,
  definitions,
  figure,
  heading,
  list,
  paragraph,
  step,
  steps,
  table,
} from '../helpers/blocks';
import { squareFonts } from '../helpers/squareMetrics';
import { plainLook } from './look';
import { elementsOf, hasClass, textOf, within } from './readPage';

const look = plainLook();
const options = {
  title: 'Paper',
  language: 'en',
  car: 'Car',
  issue: 'A',
  date: '2026-01-01',
  fingerprint: 'AAAA-CCCC',
  invented: false,
  look,
  fonts: squareFonts,
};
const blocks = [
  heading(1, 'chapter'),
  paragraph('text'),
  steps([step('first', { cautions: [caution('warning', 'hot')] }), step('second')]),
  table({ head: ['one', 'two'], rows: [['a', 'b']] }),
  figure(60, 30, 'a drawing'),
  caution('danger', 'steam'),
  definitions([['word', 'meaning']]),
  list(['one', 'two']),
];
const units = unitsOf(blocks);

describe('what reads otherwise', () => {
  test('has a bar and is said, each thing by itself', () => {
    for (const [index, { kind, says }] of units.entries()) {
      const marks = units.map((_, at) => (at === index ? { changed: true, goneAfter: false } : undefined));
      const all = elementsOf(writeScreenPage(withChanges(blocks, marks), options));
      const bars = all.filter((each) => hasClass(each, 'changed'));
      expect(bars, `${kind} ${says}`).toHaveLength(1);
      const heard = bars.flatMap((bar) => within(bar)).filter((each) => hasClass(each, 'heard'));
      expect(heard.map((each) => textOf(each).trim())).toContain(look.words.changed);
    }
  });

  test('and so has what something was taken out after', () => {
    for (const [index, { kind, says }] of units.entries()) {
      const marks = units.map((_, at) => (at === index ? { changed: false, goneAfter: true } : undefined));
      const all = elementsOf(writeScreenPage(withChanges(blocks, marks), options));
      const bars = all.filter((each) => hasClass(each, 'gone-after'));
      expect(bars, `${kind} ${says}`).toHaveLength(1);
      const heard = bars.flatMap((bar) => within(bar)).filter((each) => hasClass(each, 'heard'));
      expect(heard.map((each) => textOf(each).trim())).toContain(look.words.goneAfter);
    }
  });

  test('no mark, no bar', () => {
    const all = elementsOf(writeScreenPage(blocks, options));
    expect(all.filter((each) => hasClass(each, 'changed') || hasClass(each, 'gone-after'))).toEqual([]);
  });
});
