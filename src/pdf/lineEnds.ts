/**
 * Where a line ends inside a paragraph, whoever reads the text aloud must be given a space, which is not printed.
 */
import type { LaidOut, PlacedItem, PlacedText, StructureIndex } from '../layout/frame';

/** Knows for each run of text whether its line goes on below, or on the next page. */
export class LineEnds {
  private readonly ending = new Set<PlacedText>();

  constructor(private readonly laidOut: Pick<LaidOut, 'pages' | 'structure'>) {
    let before: { readonly item: PlacedText; readonly page: number } | undefined;
    for (const { page, items } of inReadingOrder(laidOut)) {
      for (const item of items) {
        if (item.kind !== 'text' || item.tag === undefined) continue;
        if (before && this.goesOn(before.item, item, page === before.page)) this.ending.add(before.item);
        before = { item, page };
      }
    }
  }

  /** True if `item` is the last on its line and neither a space nor a hyphen already parts it from the next. */
  needsSpace(item: PlacedText): boolean {
    return this.ending.has(item);
  }

  private goesOn(item: PlacedText, next: PlacedText, samePage: boolean): boolean {
    if (samePage && item.y === next.y) return false;
    if (partsWords.test(item.text.slice(-1)) || space.test(next.text.charAt(0))) return false;
    return this.blockOf(item.tag) === this.blockOf(next.tag);
  }

  /** The element a tag's line belongs to: spans and links are parts of a line. */
  private blockOf(tag: StructureIndex | undefined): StructureIndex | undefined {
    const element = tag === undefined ? undefined : this.laidOut.structure[tag];
    const isPart = element?.type === 'Span' || element?.type === 'Link';
    return isPart && element.parent !== undefined ? this.blockOf(element.parent) : tag;
  }
}

/** What parts the words before and after it. */
const partsWords = /[\s-]/;
const space = /\s/;

/** The items of pages, or of the faces on them, in the order in which they are read. */
function inReadingOrder({
  pages,
}: Pick<LaidOut, 'pages'>): { readonly page: number; readonly items: readonly PlacedItem[] }[] {
  if (pages.every(({ readingRanks }) => readingRanks === undefined))
    return pages.map(({ items }, page) => ({ page, items }));
  const parts = new Map<string, { page: number; rank: number; items: PlacedItem[] }>();
  for (const [page, { items, readingRanks }] of pages.entries()) {
    for (const [at, item] of items.entries()) {
      const rank = readingRanks?.[at] ?? 0;
      const key = `${rank} ${page}`;
      const part = parts.get(key) ?? { page, rank, items: [] };
      part.items.push(item);
      parts.set(key, part);
    }
  }
  return [...parts.values()].sort((one, other) => one.rank - other.rank || one.page - other.page);
}
