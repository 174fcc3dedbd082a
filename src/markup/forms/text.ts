/** Headings and paragraphs. */
import { classOf, id, words } from './contents';
import type { Forms } from './form';
import { blocks, open } from './places';

/** Their forms. */
export const textForms = {
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
    attributes: {
      ...id,
      ...classOf('lead', 'note'),
      'data-keep': { kind: 'flag' },
      'data-marks': { kind: 'one-of', values: ['some', 'none'] },
    },
    meaning:
      'a paragraph; `lead` is a larger opening paragraph, `note` small print; one with `data-keep` stays with what follows it; one with `data-marks` is printed on a card or a sheet only where some step, or none, has the triangle of a caution said above it, and on a screen only if it is for `none`',
  },
} as const satisfies Forms;
