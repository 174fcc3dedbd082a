/** Puts the boxes of each page at their place on the sheet, and notes where named things came to stand. */
import type { FilledBox } from '../flow/fill';
import type { Destination, PlacedItem } from '../frame';
import { moveItem } from '../shape';
import type { StructureBuilder } from '../structure';
import { lettersOn } from './letters';

/** Items of each page, with the body's top left corner at (`leftOf(page)`, `top`). Tells the tree where figures stand. */
export function placeBody(
  pages: readonly (readonly FilledBox[])[],
  leftOf: (page: number) => number,
  top: number,
  structure: StructureBuilder,
): PlacedItem[][] {
  return pages.map((boxes, page) => {
    const left = leftOf(page);
    const items: PlacedItem[] = [];
    const letterOf = lettersOn(boxes);
    for (const { box, y } of boxes) {
      const dy = top + y;
      for (const layer of box.layers) {
        for (const item of layer.items) items.push(moveItem(item, left, dy + layer.y));
        if (layer.tied === undefined) continue;
        for (const item of layer.tied.show(letterOf(layer.tied.key)))
          items.push(moveItem(item, left, dy + layer.y));
      }
      for (const { tag, bounds } of box.figures) {
        const [x1, y1, x2, y2] = bounds;
        structure.setBox(tag, [x1 + left, y1 + dy, x2 + left, y2 + dy]);
      }
    }
    return items;
  });
}

/** Where everything that has a name stands, with the body's top at `top`. */
export function destinationsOf(pages: readonly (readonly FilledBox[])[], top: number): Destination[] {
  return pages.flatMap((boxes, page) =>
    boxes.flatMap(({ box, y }) =>
      box.anchors.map((anchor) => ({ name: anchor.name, page, y: top + y + anchor.y })),
    ),
  );
}

/** The label of the page each destination stands on. */
export function labelsOf(
  destinations: readonly Destination[],
  label: (page: number) => string,
): Map<string, string> {
  return new Map(destinations.map(({ name, page }) => [name, label(page)]));
}
