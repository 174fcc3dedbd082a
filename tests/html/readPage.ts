/** Reading a page back: parsed by parse5, as a browser would, and asked what stands in it. */
import { type DefaultTreeAdapterMap, defaultTreeAdapter, parse } from 'parse5';

export type Element = DefaultTreeAdapterMap['element'];
type Node = DefaultTreeAdapterMap['node'];

/** Every element of a page, in order. */
export function elementsOf(html: string): Element[] {
  return within(parse(html));
}

/** The elements in a node, in order, with the node itself if it is one. */
export function within(node: Node): Element[] {
  const own = defaultTreeAdapter.isElementNode(node) ? [node] : [];
  const children = 'childNodes' in node ? node.childNodes : [];
  return [...own, ...children.flatMap(within)];
}

/** The value of an attribute. */
export function attribute(element: Element, name: string): string | undefined {
  return element.attrs.find((each) => each.name === name)?.value;
}

/** Whether an element has a class. */
export function hasClass(element: Element, name: string): boolean {
  return (attribute(element, 'class') ?? '').split(' ').includes(name);
}

/** The text in a node, leaving out the elements for which `left` holds. */
export function textOf(node: Node, left: (element: Element) => boolean = () => false): string {
  if (defaultTreeAdapter.isTextNode(node)) return node.value;
  if (defaultTreeAdapter.isElementNode(node) && left(node)) return '';
  const text = 'childNodes' in node ? node.childNodes.map((child) => textOf(child, left)).join('') : '';
  return 'tagName' in node && node.tagName === 'br' ? '\n' : text;
}

/** The only element with this name; throws if there is none or more than one. */
export function only(elements: readonly Element[], tag: string): Element {
  const [found, second] = elements.filter(({ tagName }) => tagName === tag);
  if (found === undefined || second !== undefined) throw new Error(`not one \`${tag}\``);
  return found;
}
