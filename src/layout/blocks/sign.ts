/** Safety signs on paper: no smaller than can be told apart where they are read, in a book each above its number. */
import type { Drawing, Shape } from '../../drawing/drawing';
import { placeShape } from '../../drawing/place';
import type { PlacedItem, StructureIndex } from '../frame';
import { baselineIn } from '../look';
import type { FigurePlace } from '../pieces';
import type { Setting } from '../setting';

/** Signs side by side, ready to be placed. */
export interface SetSigns {
  readonly widthPt: number;
  readonly heightPt: number;
  /** Their items with the upper left corner at (`x`, `y`). */
  place(
    x: number,
    y: number,
  ): { readonly items: readonly PlacedItem[]; readonly figures: readonly FigurePlace[] };
}

/** Sets signs in a row under `parent` of the structure tree; no signs take no room. */
export function setSigns(signs: readonly Drawing[], parent: StructureIndex, setting: Setting): SetSigns {
  const { look, structure } = setting;
  const { heightPt, label } = look.signs;
  const gapPt = 0.25 * heightPt;
  let offset = 0;
  const row = signs.map((sign) => {
    const scale = heightPt / sign.heightPt;
    const numberPt = label === undefined ? 0 : look.fonts[label.face].widthOf(sign.name, label.sizePt);
    const cellPt = Math.max(sign.widthPt * scale, numberPt);
    const tag = structure.add('Figure', parent, { alt: sign.alt });
    const placed = { sign, scale, cellPt, offset, tag };
    offset += cellPt + gapPt;
    return placed;
  });
  const labelled = heightPt + (label?.leadingPt ?? 0);
  return {
    widthPt: Math.max(0, offset - gapPt),
    heightPt: signs.length === 0 ? 0 : labelled,
    place(x, y) {
      const items = row.flatMap(({ sign, scale, cellPt, offset: dx, tag }): PlacedItem[] => {
        const middle = x + dx + cellPt / 2;
        const left = middle - (sign.widthPt * scale) / 2;
        const number: readonly Shape[] =
          label === undefined
            ? []
            : [
                {
                  kind: 'text',
                  x: middle,
                  y: y + heightPt + baselineIn(label, look.fonts),
                  text: sign.name,
                  face: label.face,
                  sizePt: label.sizePt,
                  colour: label.colour,
                  anchor: 'middle',
                },
              ];
        const shapes = [...sign.shapes.map((shape) => placeShape(shape, scale, left, y)), ...number];
        return shapes.map((shape) => ({ kind: 'shape', shape, tag }));
      });
      const figures = row.map(({ cellPt, offset: dx, tag }) => ({
        tag,
        bounds: [x + dx, y, x + dx + cellPt, y + labelled] as const,
      }));
      return { items, figures };
    },
  };
}
