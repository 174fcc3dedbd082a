/** Cautions. */
import { classOf, id, parts, words } from './contents';
import type { Forms } from './form';
import { blocks } from './places';

/** Their forms. */
export const cautionForms = {
  aside: {
    element: 'aside',
    within: [...blocks, 'li in ol.steps'],
    ...parts,
    attributes: {
      ...id,
      'data-signal': { kind: 'one-of', values: ['danger', 'warning', 'caution', 'notice'] },
      'data-brief': { kind: 'flag' },
      'data-says': { kind: 'text' },
      'data-signs': { kind: 'signs', most: 3 },
    },
    required: ['data-signal'],
    meaning:
      'a caution: hazard, what happens, how to avoid it; `data-brief` says it in the words of its `hazard` alone, for cards and where the whole has just been said; `data-says` names what it says, so that a brief one below another of that name on one page is not said again: its step is marked with a triangle and a letter that stands at the caution too; `data-signs` puts safety signs beside the words',
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
} as const satisfies Forms;
