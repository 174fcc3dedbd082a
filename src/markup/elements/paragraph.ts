/** `p`. */
import { baseOf, type ElementReader } from '../reader';

/** A paragraph; its class is its style. */
export const readParagraph: ElementReader = (node, reader) => {
  const style = node.attributes.get('class');
  const marks = node.attributes.get('data-marks');
  return {
    kind: 'paragraph',
    ...baseOf(node),
    style: style === 'lead' || style === 'note' ? style : 'body',
    content: reader.words(node),
    ...(node.attributes.has('data-keep') ? { keep: true } : {}),
    ...(marks === 'some' || marks === 'none' ? { marks } : {}),
  };
};
