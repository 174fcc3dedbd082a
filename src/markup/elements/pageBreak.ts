/** `<hr class="page-break">`. */
import { baseOf, type ElementReader } from '../reader';

/** A forced new page or face. */
export const readPageBreak: ElementReader = (node) => ({ kind: 'page-break', ...baseOf(node) });
