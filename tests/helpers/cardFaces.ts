/** What is wrong with the faces of a finished card, found from what stands on them alone. */
import type { FontSet } from '../../src/font/metrics';
import type { LaidOut, PlacedItem, StructureIndex } from '../../src/layout/frame';
import { textBounds } from '../../src/layout/shape';

/** Parts, from one second-level heading to the next, that begin below something else on a face and go on overleaf. */
export function partsBegunLate(laidOut: LaidOut): string[] {
  const { structure, pages } = laidOut;
  const headingOver: (StructureIndex | undefined)[] = [];
  let current: StructureIndex | undefined;
  structure.forEach(({ type }, index) => {
    if (type === 'H2') current = index;
    headingOver.push(current);
  });
  const facesOf = new Map<StructureIndex | undefined, Set<number>>();
  pages.forEach(({ items }, page) => {
    for (const { tag } of items) {
      if (tag === undefined) continue;
      const part = headingOver[tag];
      facesOf.set(part, (facesOf.get(part) ?? new Set()).add(page));
    }
  });
  const words = (part: StructureIndex) =>
    pages
      .flatMap(({ items }) => items)
      .map((item) => (item.kind === 'text' && item.tag === part ? item.text : ''))
      .join('');
  return [...facesOf].flatMap(([part, faces]) => {
    if (part === undefined || faces.size < 2) return [];
    const first = Math.min(...faces);
    const isLate = [...facesOf].some(
      ([other, theirs]) => other !== part && theirs.has(first) && (other ?? -1) < part,
    );
    return isLate ? [`face ${first + 1}: ${words(part)}`] : [];
  });
}

/** Faces whose text comes nearer to the line over the foot than `clearPt`. */
export function nearFoot({ pages }: LaidOut, clearPt: number, fonts: FontSet): string[] {
  return pages.flatMap(({ items, label, printable: [left, , right] }) => {
    const rules = items.flatMap((item) => acrossAt(item, right - left));
    const footY = Math.max(0, ...rules);
    const bottoms = items.flatMap((item) =>
      item.kind === 'text' && item.tag !== undefined
        ? textBounds(item.x, item.y, item.widthPt, item.face, item.sizePt, fonts)[3]
        : [],
    );
    const leftPt = footY - Math.max(0, ...bottoms);
    return leftPt < clearPt - 0.01 ? [`face ${label}: ${leftPt.toFixed(2)} pt`] : [];
  });
}

/** Where a line that belongs to no text and goes across most of the face stands. */
function acrossAt(item: PlacedItem, widthPt: number): number[] {
  if (item.kind !== 'shape' || item.tag !== undefined || item.shape.kind !== 'path') return [];
  const points = item.shape.pieces.flatMap((piece) => ('x' in piece ? [piece] : []));
  const xs = points.map(({ x }) => x);
  const ys = points.map(({ y }) => y);
  const isAcross =
    Math.max(...ys) - Math.min(...ys) < 0.01 && Math.max(...xs) - Math.min(...xs) > 0.8 * widthPt;
  return isAcross ? [Math.max(...ys)] : [];
}
