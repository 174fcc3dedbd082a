/** Rules: a line across, or lines to write on. */
import type { RuleBlock } from '../../markup/block';
import { box, gap, type Piece } from '../pieces';
import type { Place, Setting } from '../setting';
import { rule } from './marks';

/** Makes a rule ready for pages. Lines to write on may part between two of them. */
export function collectRule(block: RuleBlock, place: Place, { look }: Setting): Piece[] {
  const { x, widthPt } = place;
  const around = gap(look.space.block);
  if (block.lines < 1) {
    const line = rule(x, look.line.thin / 2, widthPt, look.colours.rule, look.line.thin);
    return [around, box(look.line.thin, [line], block.origin), around];
  }
  const lineY = look.space.writing - look.line.thin;
  const line = rule(x, lineY, widthPt, look.colours.rule, look.line.thin);
  const lines = Array.from({ length: block.lines }, () => box(look.space.writing, [line], block.origin));
  return [gap(look.space.paragraph), ...lines, around];
}
