/** Lists: with bullets, with numbers, of safety signs, of words and their meanings. */
import { classOf, id, parts, words } from './contents';
import type { Forms } from './form';
import { blocks, open } from './places';

/** Their forms. */
export const listForms = {
  ul: { element: 'ul', within: blocks, ...parts, attributes: id, meaning: 'a list with bullets' },
  ol: { element: 'ol', within: blocks, ...parts, attributes: id, meaning: 'a numbered list' },
  li: {
    element: 'li',
    within: ['ul', 'ol'],
    ...words,
    attributes: {},
    meaning: 'an entry of a list: either words, or blocks',
  },
  'ul.signs': {
    element: 'ul',
    marker: 'signs',
    within: open,
    ...parts,
    attributes: { ...id, ...classOf('signs') },
    meaning: 'safety signs of ISO 7010, each with what it means here',
  },
  'li in ul.signs': {
    element: 'li',
    within: ['ul.signs'],
    ...words,
    attributes: { 'data-sign': { kind: 'signs', most: 1 } },
    required: ['data-sign'],
    meaning: 'one sign, by its number, and its words',
  },
  dl: { element: 'dl', within: open, ...parts, attributes: id, meaning: 'words and their meanings' },
  dt: { element: 'dt', within: ['dl'], ...words, attributes: {}, meaning: 'a word; its `dd` follows' },
  dd: {
    element: 'dd',
    within: ['dl'],
    ...words,
    attributes: {},
    meaning: 'the meaning of the `dt` before it',
  },
} as const satisfies Forms;
