/** Rules: a line across, or lines to write on. */
import type { BlockOrigin, PageBreakBlock, RuleBlock } from '../../markup/block';
import type { Look } from '../look';
import { type Box, box, gap, type Piece } from '../pieces';
import type { Place, Setting } from '../setting';
import { placeField } from './field';
import { rule } from './marks';

const shares = { half: 1 / 2, third: 1 / 3 } as const;

/** A page break ready for pages; the space above and below its line counts only where it does not break. */
export function collectPageBreak(block: PageBreakBlock, place: Place, { look }: Setting): Piece[] {
  if (block.unlessLeft === undefined) return [{ kind: 'break' }];
  const around = gap(look.space.block);
  const share = shares[block.unlessLeft];
  return [
    around,
    { kind: 'break', unlessLeft: { share, line: lineAcross(block.origin, place, look) } },
    around,
  ];
}

function lineAcross(origin: BlockOrigin, { x, widthPt }: Place, { line, colours }: Look): Box {
  return box(line.thin, [rule(x, line.thin / 2, widthPt, colours.rule, line.thin)], origin);
}

/** Makes a rule ready for pages. Lines to write on may part between two of them, unless they are one field. */
export function collectRule(block: RuleBlock, place: Place, setting: Setting): Piece[] {
  const { look } = setting;
  const { x, widthPt } = place;
  const around = gap(look.space.block);
  if (block.lines < 1) return [around, lineAcross(block.origin, place, look), around];
  const lineY = look.space.writing - look.line.thin;
  const line = rule(x, lineY, widthPt, look.colours.rule, look.line.thin);
  if (block.field !== undefined) {
    const heightPt = block.lines * look.space.writing;
    const ruled = Array.from({ length: block.lines }, (_, index) =>
      rule(x, lineY + index * look.space.writing, widthPt, look.colours.rule, look.line.thin),
    );
    const field = placeField(block.field, { x, y: 0, widthPt, heightPt }, setting, place.tag, true);
    return [gap(look.space.paragraph), box(heightPt, [...ruled, ...field], block.origin), around];
  }
  const lines = Array.from({ length: block.lines }, () => box(look.space.writing, [line], block.origin));
  return [gap(look.space.paragraph), ...lines, around];
}
