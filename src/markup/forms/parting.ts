/** What parts a paper and holds parts of it together: contents, groups, lines, page breaks. */
import { classOf, empty, id, parts } from './contents';
import type { Forms } from './form';
import { open } from './places';

/** Their forms. */
export const partingForms = {
  nav: {
    element: 'nav',
    within: open,
    ...empty,
    attributes: { ...id, 'data-depth': { kind: 'one-of', values: ['1', '2', '3'] } },
    meaning: 'the contents, with page numbers, down to that level of heading',
  },
  section: {
    element: 'section',
    within: open,
    ...parts,
    attributes: { ...id, ...classOf('keep', 'boxed', 'columns', 'look-up', 'close') },
    required: ['class'],
    meaning:
      'blocks that belong together; `boxed` draws a box around them, `columns` sets them smaller in two even columns where the sheet is wide enough; `look-up` is what is looked up with a card in the hand, set closer and no larger than it is read there; `close` sets a long list on a card closer, as large as the rest',
  },
  hr: {
    element: 'hr',
    within: open,
    ...empty,
    attributes: { ...id, 'data-lines': { kind: 'count', least: 1, most: 60 }, 'data-fill': { kind: 'flag' } },
    meaning:
      'a line across; with `data-lines`, that many lines to write on, and with `data-fill` as many more as the page has room for',
  },
  'hr.page-break': {
    element: 'hr',
    marker: 'page-break',
    within: ['paper'],
    ...empty,
    attributes: {
      ...classOf('page-break'),
      'data-unless': { kind: 'one-of', values: ['half', 'third', 'whole'] },
    },
    meaning:
      'what follows starts on a new page or face; with `data-unless`, only if less than that share of one is left, or with `whole` if not all of it fits up to the next break, and below a line if it does not start there',
  },
} as const satisfies Forms;
