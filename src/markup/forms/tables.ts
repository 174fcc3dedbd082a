/** Tables and what stands in them. */
import { empty, id, parts, words } from './contents';
import type { Forms } from './form';
import { open } from './places';

/** Their forms. */
export const tableForms = {
  table: {
    element: 'table',
    within: open,
    ...parts,
    attributes: {
      ...id,
      class: { kind: 'words', groups: [['ruled', 'plain', 'large'], ['striped'], ['boxes', 'dashed']] },
    },
    meaning:
      'a table: `ruled` (as it is without a class), `plain` without lines, `large` for reading at a distance; `striped` shades every second row, `boxes` puts lines around every empty cell, to write in; `dashed` puts a dash into every empty cell',
  },
  caption: {
    element: 'caption',
    within: ['table'],
    ...words,
    attributes: {},
    meaning: 'the title of a table; stands first',
  },
  colgroup: {
    element: 'colgroup',
    within: ['table'],
    ...parts,
    attributes: {},
    meaning: 'how the columns are set',
  },
  col: {
    element: 'col',
    within: ['colgroup'],
    ...empty,
    attributes: {
      'data-align': { kind: 'one-of', values: ['left', 'right', 'centre'] },
      'data-weight': { kind: 'count', least: 0, most: 20 },
    },
    meaning: 'one column: where its text stands, and its share of spare width (0: none)',
  },
  thead: {
    element: 'thead',
    within: ['table'],
    ...parts,
    attributes: {},
    meaning: 'the head, repeated on every page',
  },
  tbody: { element: 'tbody', within: ['table'], ...empty, attributes: {}, meaning: 'the rows' },
  'tr in thead': {
    element: 'tr',
    within: ['thead'],
    ...parts,
    attributes: {},
    meaning: 'a row of the head; holds `th` only',
  },
  'tr in tbody': {
    element: 'tr',
    within: ['tbody'],
    ...parts,
    attributes: { ...id },
    meaning:
      'a row; one that is a single `th` over all columns heads the rows below it, and is said again where they go on overleaf',
  },
  th: {
    element: 'th',
    within: ['tr in thead', 'tr in tbody'],
    text: 'words',
    filled: false,
    attributes: {
      colspan: { kind: 'count', least: 1, most: 40 },
      scope: { kind: 'one-of', values: ['col', 'row'] },
    },
    meaning: 'a cell that heads its column or, in `tbody`, its row',
  },
  td: {
    element: 'td',
    within: ['tr in tbody'],
    text: 'words',
    filled: false,
    attributes: { colspan: { kind: 'count', least: 1, most: 40 }, 'data-counts': { kind: 'flag' } },
    meaning:
      'a cell; empty for room to write; `data-counts`: it counts the rows, so that another number in it is no change',
  },
} as const satisfies Forms;
