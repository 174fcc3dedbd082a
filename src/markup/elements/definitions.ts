/** `dl`, `dt`, `dd`. */
import type { DefinitionsBlock } from '../block';
import { baseOf, type ElementReader, elementsOf } from '../reader';

/** Words and meanings: `dt` and `dd` take turns. */
export const readDefinitions: ElementReader = (node, reader) => {
  const items: DefinitionsBlock['items'][number][] = [];
  const children = elementsOf(node);
  for (const [index, child] of children.entries()) {
    const next = children[index + 1];
    const before = children[index - 1];
    if (child.form === 'dt' && next?.form === 'dd') {
      items.push({ term: reader.words(child), meaning: reader.words(next) });
    } else if (child.form === 'dt' || before?.form !== 'dt') {
      reader.report('markup-part', child, {
        message: child.form === 'dt' ? '`<dt>` has no meaning after it' : '`<dd>` has no word before it',
        expected: '`<dt>`, `<dd>`, `<dt>`, `<dd>` …',
        mend: 'give each `<dt>` one `<dd>`',
      });
    }
  }
  return { kind: 'definitions', ...baseOf(node), items };
};
