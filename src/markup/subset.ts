/**
 * The HTML subset, as data: which elements there are, where they may stand, what they may carry.
 *
 * An element may come in several forms (`ol` and `ol.steps`, `p` and the parts of a caution); a form is chosen
 * by the element's name, the form it stands in, and its class. Anything that fits no form is an error.
 * `docs/markup.md` says the same in words, and a test holds the two together.
 */

/** What an attribute may hold. */
export type AttributeRule =
  | { readonly kind: 'one-of'; readonly values: readonly string[] }
  /** Any of these words, each at most once, with spaces between; words in one `group` exclude each other. */
  | { readonly kind: 'words'; readonly groups: readonly (readonly string[])[] }
  | { readonly kind: 'count'; readonly least: number; readonly most: number }
  | { readonly kind: 'flag' }
  | { readonly kind: 'id' }
  | { readonly kind: 'link' }
  | { readonly kind: 'drawing' }
  /** The name of a field, unique in a paper. */
  | { readonly kind: 'field-name' }
  /** Any words at all. */
  | { readonly kind: 'text' }
  /** Numbers of safety signs, at most so many, with spaces between. */
  | { readonly kind: 'signs'; readonly most: number };

/** One form of an element. */
export interface Form {
  readonly element: string;
  /** The class words that choose this form, if the element has others at the same place. */
  readonly marker?: string;
  /** The forms this one may stand in. */
  readonly within: readonly FormName[];
  /** What may stand in it besides the forms that name it in `within`. */
  readonly text: 'words' | 'none';
  /** Must hold words or other content. */
  readonly filled: boolean;
  readonly attributes: Readonly<Record<string, AttributeRule>>;
  readonly required?: readonly string[];
  readonly meaning: string;
}

/** The root of a paper's markup; not an element. */
export const root = 'paper';

/** The name of a form. */
export type FormName =
  | 'paper'
  | 'h1'
  | 'h2'
  | 'h3'
  | 'h4'
  | 'p'
  | 'ul'
  | 'ol'
  | 'li'
  | 'ul.signs'
  | 'li in ul.signs'
  | 'dl'
  | 'dt'
  | 'dd'
  | 'table'
  | 'caption'
  | 'colgroup'
  | 'col'
  | 'thead'
  | 'tbody'
  | 'tr in thead'
  | 'tr in tbody'
  | 'th'
  | 'td'
  | 'figure'
  | 'figcaption'
  | 'aside'
  | 'p.hazard'
  | 'p.consequence'
  | 'p.avoidance'
  | 'ol.steps'
  | 'li in ol.steps'
  | 'p.action'
  | 'p.result'
  | 'p.remark'
  | 'nav'
  | 'section'
  | 'hr'
  | 'hr.page-break'
  | 'input'
  | 'textarea'
  | 'strong'
  | 'em'
  | 'br'
  | 'a'
  | 'a.page';

const open: readonly FormName[] = ['paper', 'section'];
const blocks: readonly FormName[] = [...open, 'li'];
const lines: readonly FormName[] = [
  'h1',
  'h2',
  'h3',
  'h4',
  'p',
  'li',
  'li in ul.signs',
  'dt',
  'dd',
  'caption',
  'th',
  'td',
  'figcaption',
  'p.hazard',
  'p.consequence',
  'p.avoidance',
  'p.action',
  'p.result',
  'p.remark',
];
const styled: readonly FormName[] = [...lines, 'strong', 'em', 'a'];

const id = { id: { kind: 'id' } } as const;
const words = { text: 'words', filled: true } as const;
const parts = { text: 'none', filled: true } as const;
const empty = { text: 'none', filled: false } as const;
const classOf = (...values: string[]): Readonly<Record<string, AttributeRule>> => ({
  class: { kind: 'one-of', values },
});

/** Every form there is. */
export const subset: Readonly<Record<Exclude<FormName, 'paper'>, Form>> = {
  h1: {
    element: 'h1',
    within: open,
    ...words,
    attributes: id,
    meaning: 'the heading of a chapter, or the title of a card',
  },
  h2: { element: 'h2', within: open, ...words, attributes: id, meaning: 'a heading in a chapter' },
  h3: { element: 'h3', within: open, ...words, attributes: id, meaning: 'a heading below an h2' },
  h4: { element: 'h4', within: open, ...words, attributes: id, meaning: 'a heading below an h3' },
  p: {
    element: 'p',
    within: blocks,
    ...words,
    attributes: { ...id, ...classOf('lead', 'note') },
    meaning: 'a paragraph; `lead` is a larger opening paragraph, `note` small print',
  },
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
  table: {
    element: 'table',
    within: open,
    ...parts,
    attributes: { ...id, class: { kind: 'words', groups: [['ruled', 'plain', 'large'], ['striped']] } },
    meaning:
      'a table: `ruled` (as it is without a class), `plain` without lines, `large` for reading at a distance; `striped` shades every second row',
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
  'tr in tbody': { element: 'tr', within: ['tbody'], ...parts, attributes: {}, meaning: 'a row' },
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
  figure: {
    element: 'figure',
    within: blocks,
    ...empty,
    attributes: { ...id, 'data-drawing': { kind: 'drawing' }, 'data-true-size': { kind: 'flag' } },
    required: ['data-drawing'],
    meaning:
      'a drawing, by name; one with `data-true-size` is measured with or cut out, so that it is never made smaller to fit',
  },
  figcaption: {
    element: 'figcaption',
    within: ['figure'],
    ...words,
    attributes: {},
    meaning: 'what the drawing shows',
  },
  aside: {
    element: 'aside',
    within: [...blocks, 'li in ol.steps'],
    ...parts,
    attributes: {
      ...id,
      'data-signal': { kind: 'one-of', values: ['danger', 'warning', 'caution', 'notice'] },
      'data-brief': { kind: 'flag' },
      'data-signs': { kind: 'signs', most: 3 },
    },
    required: ['data-signal'],
    meaning:
      'a caution: hazard, what happens, how to avoid it; `data-brief` says it in the words of its `hazard` alone, for cards and where the whole has just been said; `data-signs` puts safety signs beside the words',
  },
  'p.hazard': {
    element: 'p',
    marker: 'hazard',
    within: ['aside'],
    ...words,
    attributes: classOf('hazard'),
    meaning: 'what is dangerous',
  },
  'p.consequence': {
    element: 'p',
    marker: 'consequence',
    within: ['aside'],
    ...words,
    attributes: classOf('consequence'),
    meaning: 'what can happen; may be left out of a `notice`',
  },
  'p.avoidance': {
    element: 'p',
    marker: 'avoidance',
    within: ['aside'],
    ...words,
    attributes: classOf('avoidance'),
    meaning: 'how it is avoided; may be left out of a `notice`',
  },
  'ol.steps': {
    element: 'ol',
    marker: 'steps',
    within: open,
    ...parts,
    attributes: {
      ...id,
      ...classOf('steps'),
      'data-mark': { kind: 'one-of', values: ['number', 'tick'] },
      start: { kind: 'count', least: 1, most: 9999 },
    },
    meaning: 'a procedure; `data-mark="tick"` gives every step a box to tick, `start` the first number',
  },
  'li in ol.steps': {
    element: 'li',
    within: ['ol.steps'],
    ...parts,
    attributes: { 'data-critical': { kind: 'flag' } },
    meaning:
      'a step: cautions, then the action, its result, a remark; `data-critical` marks one whose omission nothing later would show',
  },
  'p.action': {
    element: 'p',
    marker: 'action',
    within: ['li in ol.steps'],
    ...words,
    attributes: classOf('action'),
    meaning: 'what to do',
  },
  'p.result': {
    element: 'p',
    marker: 'result',
    within: ['li in ol.steps'],
    ...words,
    attributes: classOf('result'),
    meaning: 'what to see when it is done',
  },
  'p.remark': {
    element: 'p',
    marker: 'remark',
    within: ['li in ol.steps'],
    ...words,
    attributes: classOf('remark'),
    meaning: 'who, where, why',
  },
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
    attributes: { ...id, ...classOf('keep', 'boxed', 'columns') },
    required: ['class'],
    meaning:
      'blocks that belong together; `boxed` draws a box around them, `columns` sets them smaller in two even columns where the sheet is wide enough',
  },
  hr: {
    element: 'hr',
    within: open,
    ...empty,
    attributes: { ...id, 'data-lines': { kind: 'count', least: 1, most: 60 } },
    meaning: 'a line across; with `data-lines`, that many lines to write on',
  },
  'hr.page-break': {
    element: 'hr',
    marker: 'page-break',
    within: ['paper'],
    ...empty,
    attributes: { ...classOf('page-break'), 'data-unless': { kind: 'one-of', values: ['half'] } },
    meaning:
      'what follows starts on a new page or face; with `data-unless`, only if less than half of one is left, and below a line if more is',
  },
  input: {
    element: 'input',
    within: ['td'],
    ...empty,
    attributes: {
      name: { kind: 'field-name' },
      title: { kind: 'text' },
      type: { kind: 'one-of', values: ['text', 'checkbox'] },
      size: { kind: 'count', least: 1, most: 60 },
    },
    required: ['name', 'title'],
    meaning:
      'a field to fill in, on a screen or by pencil, alone in its cell: a line, or with `checkbox` a box to tick; `title` says what belongs in it; `size`, how many letters it has room for at least (else 5)',
  },
  textarea: {
    element: 'textarea',
    within: [...open, 'td'],
    ...empty,
    attributes: {
      name: { kind: 'field-name' },
      title: { kind: 'text' },
      rows: { kind: 'count', least: 1, most: 30 },
      size: { kind: 'count', least: 1, most: 60 },
    },
    required: ['name', 'title', 'rows'],
    meaning:
      'a field of several lines, to fill in on a screen or by pencil, ruled unless it stands, alone, in a cell; `title` and `size` as for `input`',
  },
  strong: { element: 'strong', within: styled, ...words, attributes: {}, meaning: 'bold' },
  em: { element: 'em', within: styled, ...words, attributes: {}, meaning: 'italic' },
  br: { element: 'br', within: styled, ...empty, attributes: {}, meaning: 'a line end' },
  a: {
    element: 'a',
    within: [...lines, 'strong', 'em'],
    ...words,
    attributes: { href: { kind: 'link' } },
    required: ['href'],
    meaning: 'a link to the block with that id',
  },
  'a.page': {
    element: 'a',
    marker: 'page',
    within: [...lines, 'strong', 'em'],
    ...empty,
    attributes: { href: { kind: 'link' }, ...classOf('page') },
    required: ['href'],
    meaning: 'the page number of the block with that id',
  },
};

/** Elements that have no end tag. */
export const voidElements: readonly string[] = ['br', 'hr', 'col', 'input'];

/** Every form, with its name. */
export const forms = Object.entries(subset) as readonly (readonly [Exclude<FormName, 'paper'>, Form])[];
