/** `<hr class="page-break">`. */
import type { PageBreakBlock } from '../block';
import { baseOf, type ElementReader } from '../reader';

/** A forced new page or face, or one that depends on the room left. */
export const readPageBreak: ElementReader = (node) => ({
  kind: 'page-break',
  ...baseOf(node),
  ...unless(node.attributes.get('data-unless')),
});

function unless(share: string | undefined): Pick<PageBreakBlock, 'unlessLeft'> {
  return share === 'half' || share === 'third' || share === 'whole' ? { unlessLeft: share } : {};
}
