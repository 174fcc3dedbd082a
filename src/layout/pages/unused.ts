/** Takes elements that came to nothing out of the structure tree: those of what was not shown because it is said above. */
import type { LaidOut, Page, PlacedItem, StructureElement, StructureIndex } from '../frame';

/** The paper without divisions that nothing on any page belongs to, nor to anything in them. */
export function withoutUnused(laidOut: LaidOut): LaidOut {
  const { pages, structure } = laidOut;
  const used = usedElements(pages, structure);
  const gone = goneElements(structure, used);
  if (!gone.includes(true)) return laidOut;
  const numbers: StructureIndex[] = [];
  let next = 0;
  for (const isGone of gone) numbers.push(isGone ? -1 : next++);
  const numberOf = (tag: StructureIndex) => numbers[tag] ?? tag;
  const kept = structure.filter((_, index) => gone[index] !== true);
  return {
    ...laidOut,
    structure: kept.map((element) =>
      element.parent === undefined ? element : { ...element, parent: numberOf(element.parent) },
    ),
    pages: pages.map((page) => ({ ...page, items: page.items.map((item) => retagged(item, numberOf)) })),
  };
}

function retagged(item: PlacedItem, numberOf: (tag: StructureIndex) => StructureIndex): PlacedItem {
  return item.tag === undefined ? item : { ...item, tag: numberOf(item.tag) };
}

/** Whether something on a page belongs to each element, or to one in it. */
function usedElements(pages: readonly Page[], structure: readonly StructureElement[]): boolean[] {
  const used = structure.map(() => false);
  for (const { items } of pages) {
    for (const { tag } of items) {
      for (let at = tag; at !== undefined && used[at] === false; at = structure[at]?.parent) used[at] = true;
    }
  }
  return used;
}

/** Unused divisions, and all within them. Parents come before their children. */
function goneElements(structure: readonly StructureElement[], used: readonly boolean[]): boolean[] {
  const gone: boolean[] = [];
  structure.forEach(({ type, parent }, index) => {
    const within = parent !== undefined && gone[parent] === true;
    gone.push(within || (type === 'Div' && used[index] === false));
  });
  return gone;
}
