/** Fields on the page for a screen: named, with room, and nothing about them on a page without any. */
import { expect, test } from 'vitest';
import { writeScreenPage } from '../../src/html/page';
import type { Block } from '../../src/markup/block';
import { parseMarkup } from '../../src/markup/parse';
import { paragraph } from '../helpers/blocks';
import { screenOptions } from './look';
import { attribute, elementsOf, textOf } from './readPage';

const options = { ...screenOptions, title: 'Log sheet' };

function page(blocks: readonly Block[]) {
  return elementsOf(writeScreenPage(blocks, options));
}

function blocks(html: string): readonly Block[] {
  const outcome = parseMarkup(html, 'page', { drawings: new Map() });
  if (!outcome.ok) throw new Error('the markup is not sound');
  return outcome.value;
}

const filledIn = blocks(
  '<table><tbody><tr><th scope="row">Day</th><td><input name="day" title="Day"></td>' +
    '<td><input name="note" title="Note" size="20"></td><td><input type="checkbox" name="good" title="Good"></td></tr></tbody></table>' +
    '<textarea name="evening" title="In the evening" rows="3"></textarea>',
);

test('every field has its name, what belongs in it, and its kind', () => {
  const fields = page(filledIn).filter((each) => attribute(each, 'data-field') !== undefined);
  expect(
    fields.map((each) => [
      each.tagName,
      attribute(each, 'type'),
      attribute(each, 'name'),
      attribute(each, 'aria-label'),
    ]),
  ).toEqual([
    ['input', 'text', 'day', 'Day'],
    ['input', 'text', 'note', 'Note'],
    ['input', 'checkbox', 'good', 'Good'],
    ['textarea', undefined, 'evening', 'In the evening'],
  ]);
  expect(fields.map((each) => attribute(each, 'class'))).toEqual([
    'fill',
    'fill roomy',
    'fill',
    'fill roomy',
  ]);
});

test('the page tells that what is written stays on the device; one without fields says nothing of it', () => {
  const panel = (list: readonly Block[]) => page(list).filter((each) => attribute(each, 'id') === '_fields');
  const [own] = panel(filledIn);
  if (own === undefined) throw new Error('there is no panel');
  expect(textOf(own)).toContain('kept on this device');
  expect(panel([paragraph('x')])).toEqual([]);
});
