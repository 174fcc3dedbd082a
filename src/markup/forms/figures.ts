/** Drawings. */
import { empty, id, words } from './contents';
import type { Forms } from './form';
import { blocks } from './places';

/** Their forms. */
export const figureForms = {
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
} as const satisfies Forms;
