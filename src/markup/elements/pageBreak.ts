/** `<hr class="page-break">`. */
import { baseOf, type ElementReader } from '../reader';

/** A forced new page or face, or one that depends on the room left. */
export const readPageBreak: ElementReader = (node) => ({
  kind: 'page-break',
  ...baseOf(node),
  ...(node.attributes.has('data-unless') ? { unlessHalf: true } : {}),
});
