/**
 * Ways about the paper: named places, bookmarks, page labels (ISO 32000-1, 12.3 and 12.4.2).
 */
import type { Destination, OutlineEntry } from '../layout/frame';
import type { ObjectStore } from './objects';
import type { PageHandle } from './structure';
import { num, ref, textString } from './syntax';

/** The name tree of destinations: each the top left of a view that keeps the reader's scale. */
export function destinationTree(destinations: readonly Destination[], pages: readonly PageHandle[]): string {
  const entries = destinations.map(({ name, page, y }) => {
    const handle = pages[page];
    if (!handle) throw new RangeError(`the destination "${name}" is on page ${page}, which does not exist`);
    return [textString(name), `[${ref(handle.id)} /XYZ null ${num(handle.heightPt - y)} null]`] as const;
  });
  // readers search the tree by halves, so it must be in the order of its bytes
  const sorted = entries.sort(([a], [b]) => (keyOf(a) < keyOf(b) ? -1 : 1));
  return `<</Names [${sorted.map((pair) => pair.join(' ')).join('\n')}]>>`;
}

/**
 * Writes bookmarks, closed below the first level; gives the number of their root.
 * `check` is told every destination, so that none leads nowhere.
 */
export function writeOutline(
  outline: readonly OutlineEntry[],
  store: ObjectStore,
  check: (destination: string) => void,
): number {
  const root = store.reserve();
  const { first, last } = writeEntries(outline, root, store, check);
  store.put(root, `<</Type /Outlines /First ${ref(first)} /Last ${ref(last)} /Count ${outline.length}>>`);
  return root;
}

function writeEntries(
  entries: readonly OutlineEntry[],
  parent: number,
  store: ObjectStore,
  check: (destination: string) => void,
): { readonly first: number; readonly last: number } {
  const ids = entries.map(() => store.reserve());
  for (const [index, { title, destination, children }] of entries.entries()) {
    check(destination);
    const id = ids[index] ?? 0;
    const [before, after] = [ids[index - 1], ids[index + 1]];
    const below = children.length === 0 ? undefined : writeEntries(children, id, store, check);
    store.put(
      id,
      [
        `<</Title ${textString(title)} /Parent ${ref(parent)} /Dest ${textString(destination)}`,
        before === undefined ? '' : ` /Prev ${ref(before)}`,
        after === undefined ? '' : ` /Next ${ref(after)}`,
        below ? ` /First ${ref(below.first)} /Last ${ref(below.last)} /Count -${children.length}` : '',
        '>>',
      ].join(''),
    );
  }
  return { first: ids[0] ?? 0, last: ids.at(-1) ?? 0 };
}

/** Page labels as printed. Runs of plain numbers are one entry. */
export function pageLabels(pages: readonly { readonly label: string }[]): string {
  const entries: string[] = [];
  let expected: number | undefined;
  for (const [index, { label }] of pages.entries()) {
    const number = /^[1-9]\d{0,5}$/.test(label) ? Number(label) : undefined;
    if (number === undefined) entries.push(`${index} <</P ${textString(label)}>>`);
    else if (number !== expected) entries.push(`${index} <</S /D /St ${number}>>`);
    expected = number === undefined ? undefined : number + 1;
  }
  return `<</Nums [${entries.join(' ')}]>>`;
}

/** A text string's order in a name tree. */
function keyOf(written: string): string {
  if (written.startsWith('(')) return written.slice(1, -1).replace(/\\(.)/g, '$1');
  return (written.slice(1, -1).match(/../g) ?? [])
    .map((pair) => String.fromCharCode(Number.parseInt(pair, 16)))
    .join('');
}
