/** What stands within words. */
import { classOf, empty, words } from './contents';
import type { Forms } from './form';
import { lines, styled } from './places';

/** Their forms. */
export const inlineForms = {
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
} as const satisfies Forms;
