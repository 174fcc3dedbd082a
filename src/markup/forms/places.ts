/** Where forms may stand, by the kind of what is around them. */
import type { FormName } from './form';

/** Where blocks stand on their own. */
export const open: readonly FormName[] = ['paper', 'section'];
/** The same, and in entries of lists. */
export const blocks: readonly FormName[] = [...open, 'li'];
/** What holds words. */
export const lines: readonly FormName[] = [
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
/** What may hold words set otherwise. */
export const styled: readonly FormName[] = [...lines, 'strong', 'em', 'a'];
