/** Puts the boxes of each page at their place on the sheet, and notes where named things came to stand. */
import type { FilledBox } from '../flow/fill';
import type { Destination, PlacedItem } from '../frame';
import { moveItem } from '../shape';
import type { StructureBuilder } from '../structure';

/** The items of each page, and all destinations. */
export interface PlacedBody {
  readonly pages: readonly (readonly PlacedItem[])[];
  readonly destinations: readonly Destination[];
}

/** Places boxes with the body's top left corner at (`left`, `top`). */
export function placeBody(
  pages: readonly (readonly FilledBox[])[],
  left: number,
  top: number,
  structure: StructureBuilder,
): PlacedBody {
  const destinations: Destination[] = [];
  const placed = pages.map((boxes, page) => {
    const items: PlacedItem[] = [];
    for (const { box, y } of boxes) {
      const dy = top + y;
      for (const item of box.items) items.push(moveItem(item, left, dy));
      for (const anchor of box.anchors) destinations.push({ name: anchor.name, page, y: dy + anchor.y });
      for (const { tag, bounds } of box.figures) {
        const [x1, y1, x2, y2] = bounds;
        structure.setBox(tag, [x1 + left, y1 + dy, x2 + left, y2 + dy]);
      }
    }
    return items;
  });
  return { pages: placed, destinations };
}

/** The label of the page each destination stands on. */
export function labelsOf(
  destinations: readonly Destination[],
  label: (page: number) => string,
): Map<string, string> {
  return new Map(destinations.map(({ name, page }) => [name, label(page)]));
}
