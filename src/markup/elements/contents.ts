/** `nav`: the contents. */
import { baseOf, type ElementReader } from '../reader';

/** The list of headings; two levels unless said otherwise. */
export const readContents: ElementReader = (node) => {
  const depth = node.attributes.get('data-depth');
  return { kind: 'contents', ...baseOf(node), depth: depth === '1' ? 1 : depth === '3' ? 3 : 2 };
};
