/**
 * The HTML subset, as data: which elements there are, where they may stand, what they may carry.
 *
 * An element may come in several forms (`ol` and `ol.steps`, `p` and the parts of a caution); a form is chosen
 * by the element's name, the form it stands in, and its class. Anything that fits no form is an error.
 * `docs/markup.md` says the same in words, and a test holds the two together.
 */

import { cautionForms } from './forms/cautions';
import { fieldForms } from './forms/fields';
import { figureForms } from './forms/figures';
import type { Form, FormName } from './forms/form';
import { inlineForms } from './forms/inline';
import { listForms } from './forms/lists';
import { partingForms } from './forms/parting';
import { stepForms } from './forms/steps';
import { tableForms } from './forms/tables';
import { textForms } from './forms/text';

/** The root of a paper's markup; not an element. */
export const root = 'paper';

/** Every form there is. */
export const subset: Readonly<Record<Exclude<FormName, 'paper'>, Form>> = {
  ...textForms,
  ...listForms,
  ...tableForms,
  ...figureForms,
  ...cautionForms,
  ...stepForms,
  ...partingForms,
  ...fieldForms,
  ...inlineForms,
};

/** Elements that have no end tag. */
export const voidElements: readonly string[] = ['br', 'hr', 'col', 'input'];

/** Every form, with its name. */
export const forms = Object.entries(subset) as readonly (readonly [Exclude<FormName, 'paper'>, Form])[];
