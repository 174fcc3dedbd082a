/**
 * A sheet of valve tags with the ruler that shows whether the printer scaled.
 */
import type { FontSet } from '../font/metrics';
import type { Drawing } from './drawing';
import { placeShape } from './place';
import { ptPerMm } from './printedSize';
import { rulerAcross, rulerEndPt, rulerLengthPt, rulerWidthPt } from './ruler';
import { drawValveTag, type TagSize, type TagType, type ValveTagInput } from './valveTag';

/** What a sheet of tags is drawn from; all are of one form and size. */
export interface TagSheetInput {
  readonly name: string;
  readonly tags: readonly ValveTagInput[];
  readonly size: TagSize;
  readonly type: TagType;
  readonly columns: number;
}

/** Between one tag and the next, for the scissors. */
const gapPt = 3 * ptPerMm;

/** How many tags of a size stand beside and above each other over the ruler. */
export function tagGrid(
  { widthMm, heightMm }: TagSize,
  room: { readonly widthPt: number; readonly heightPt: number },
): { readonly columns: number; readonly rows: number } {
  const most = (length: number, side: number) => Math.max(0, Math.floor((length + gapPt) / (side + gapPt)));
  return {
    columns: most(room.widthPt, 2 * widthMm * ptPerMm),
    rows: most(room.heightPt - rulerWidthPt - gapPt, heightMm * ptPerMm),
  };
}

/** Draws the sheet. Throws if the words of a tag do not fit on it. */
export function drawTagSheet({ name, tags, size, type, columns }: TagSheetInput, fonts: FontSet): Drawing {
  const drawn = tags.map((input) => {
    const tag = drawValveTag(input, size, type, fonts);
    if (tag === undefined) throw new RangeError(`the words of the tag ${input.tag} do not fit on it`);
    return tag;
  });
  const [widthPt, heightPt] = [2 * size.widthMm * ptPerMm, size.heightMm * ptPerMm];
  const rows = Math.ceil(tags.length / columns);
  const top = rulerWidthPt + gapPt;
  const across = Math.min(columns, tags.length);
  return {
    name,
    widthPt: Math.max(rulerLengthPt + 2 * rulerEndPt, across * (widthPt + gapPt) - gapPt),
    heightPt: top + rows * (heightPt + gapPt) - gapPt,
    alt: [
      ...tags.slice(0, 1).map(({ say }) => say('tag-sheet-picture', {})),
      ...drawn.map(({ alt }) => alt),
    ].join(' '),
    shapes: [
      ...rulerAcross({ x: 0, y: 0 }),
      ...drawn.flatMap(({ shapes }, index) => {
        const x = (index % columns) * (widthPt + gapPt);
        const y = top + Math.floor(index / columns) * (heightPt + gapPt);
        return shapes.map((shape) => placeShape(shape, 1, x, y));
      }),
    ],
  };
}
