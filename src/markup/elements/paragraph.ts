/** `p`. */
import { baseOf, type ElementReader } from '../reader';

/** A paragraph; its class is its style. */
export const readParagraph: ElementReader = (node, reader) => {
  const style = node.attributes.get('class');
  return {
    kind: 'paragraph',
    ...baseOf(node),
    style: style === 'lead' || style === 'note' ? style : 'body',
    content: reader.words(node),
    ...(node.attributes.has('data-keep') ? { keep: true } : {}),
  };
};
