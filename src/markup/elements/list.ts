/** `ul`, `ol` and their `li`. */
import type { Block } from '../block';
import { type Checked, hasWords } from '../check';
import { baseOf, type ElementReader, elementsOf, type Reader } from '../reader';

/** A plain list. An entry holds either words, which become a paragraph, or blocks. */
export const readList: ElementReader = (node, reader) => ({
  kind: 'list',
  ...baseOf(node),
  ordered: node.form === 'ol',
  items: elementsOf(node).map((item) => readEntry(item, reader)),
});

const inlineForms: readonly string[] = ['strong', 'em', 'br', 'a', 'a.page'];

function readEntry(item: Checked, reader: Reader): readonly Block[] {
  const isBlock = (child: Checked): boolean => !inlineForms.includes(child.form);
  const blocks = elementsOf(item).filter(isBlock);
  if (blocks.length === 0) {
    return [{ kind: 'paragraph', origin: item.origin, style: 'body', content: reader.words(item) }];
  }
  const mixed = item.children.some((child) =>
    child.kind === 'text' ? hasWords(child.text) : !isBlock(child),
  );
  if (mixed) {
    reader.report('markup-place', item, {
      message: 'words stand beside blocks in `<li>`',
      mend: 'put the words in a `<p>` of their own',
    });
  }
  return reader.blocks(item);
}
