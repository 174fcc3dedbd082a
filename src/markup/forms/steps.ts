/** Procedures. */
import { classOf, id, parts, words } from './contents';
import type { Forms } from './form';
import { open } from './places';

/** Their forms. */
export const stepForms = {
  'ol.steps': {
    element: 'ol',
    marker: 'steps',
    within: open,
    ...parts,
    attributes: {
      ...id,
      ...classOf('steps'),
      'data-mark': { kind: 'one-of', values: ['number', 'tick'] },
      'data-led': { kind: 'flag' },
      start: { kind: 'count', least: 1, most: 9999 },
    },
    meaning:
      'a procedure; `data-mark="tick"` gives every step a box to tick, `start` the first number; with `data-led` a result stands at the end of its action’s line where it fits, as it does on cards and beside boxes to tick',
  },
  'li in ol.steps': {
    element: 'li',
    within: ['ol.steps'],
    ...parts,
    attributes: { ...id, 'data-critical': { kind: 'flag' } },
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
} as const satisfies Forms;
