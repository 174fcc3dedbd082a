/** `section`: blocks that belong together. */
import { baseOf, type ElementReader } from '../reader';

/** A group; `boxed` has a box around it. */
export const readGroup: ElementReader = (node, reader) => ({
  kind: 'group',
  ...baseOf(node),
  style: node.attributes.get('class') === 'boxed' ? 'boxed' : 'plain',
  blocks: reader.blocks(node),
});
