/** What is filled in: a frame to write in, or a box to tick, that prints well empty. */
import type { CellField, Field } from '../../markup/block';
import type { PlacedItem, StructureIndex } from '../frame';
import type { Setting } from '../setting';
import { outlinedRect } from './marks';

/** Where a field stands. */
export interface FieldBox {
  readonly x: number;
  readonly y: number;
  readonly widthPt: number;
  readonly heightPt: number;
}

/** Type in a field is no larger than this, and leaves this share of a line's height free. */
const mostTypePt = 11;
const typeShare = 0.62;

/** The least height of a row that holds a field of so many lines: room for a pencil. */
export function fieldHeightPt(lines: number, { look }: Setting): number {
  return lines * Math.max(leastRowPt, fieldShare * look.space.writing);
}

/** 6 mm, also where a whole paper is set smaller to fit its side: hands do not get smaller. */
const leastRowPt = 17;

/** The least width of a field in a table whose type has this size. */
export function fieldWidthPt({ kind, letters }: CellField, sizePt: number): number {
  return kind === 'tick' ? tickShare * sizePt : letters * letterEm * sizePt;
}

/** Width of a letter written small by hand, or of a figure in a narrow face, as a share of the type of the table. */
const letterEm = 0.5;

/** Side of a box to tick, as a share of the type. */
const tickShare = 1.15;

/** A row of a table has lines around it, and needs less room than a line on its own. */
const fieldShare = 0.85;

/** The field with what is drawn around it. Without a tag it cannot be filled in on a screen, and is only drawn. Lines that are ruled need no frame. */
export function placeField(
  field: Field,
  box: FieldBox,
  setting: Setting,
  tag: StructureIndex | undefined,
  isRuled = false,
): PlacedItem[] {
  const { look } = setting;
  const own = field.kind === 'tick' ? tickBox(box, setting) : box;
  const colour = field.kind === 'tick' ? look.colours.ink : look.colours.rule;
  const linePt = field.kind === 'tick' ? look.line.thin : look.line.hair;
  const frame = isRuled ? [] : [outlinedRect(own.x, own.y, own.widthPt, own.heightPt, colour, linePt)];
  if (tag === undefined) return frame;
  const rowPt = field.kind === 'lines' ? look.space.writing : own.heightPt;
  const form = setting.structure.add('Form', tag);
  const sizePt = Math.min(mostTypePt, typeShare * rowPt);
  return [...frame, { kind: 'field', ...own, field, sizePt, tag: form }];
}

/** A square as tall as a capital and a little more, at the left of its cell. */
function tickBox({ x, y, widthPt, heightPt }: FieldBox, { look }: Setting): FieldBox {
  const side = Math.min(tickShare * look.body.sizePt, widthPt, heightPt);
  return { x, y: y + (heightPt - side) / 2, widthPt: side, heightPt: side };
}
