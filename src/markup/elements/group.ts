/** `section`: blocks that belong together. */
import type { GroupBlock } from '../block';
import { baseOf, type ElementReader } from '../reader';

/** A group; `boxed` has a box around it, `columns` stands in two columns, `look-up` is read with the card in the hand, `close` set closer. */
export const readGroup: ElementReader = (node, reader) => ({
  kind: 'group',
  ...baseOf(node),
  style: styleOf(node.attributes.get('class')),
  blocks: reader.blocks(node),
});

const styles = ['boxed', 'columns', 'look-up', 'close'] as const;

function styleOf(name: string | undefined): GroupBlock['style'] {
  return styles.find((style) => style === name) ?? 'plain';
}
