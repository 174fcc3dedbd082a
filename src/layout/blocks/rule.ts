/** Rules: a line across, or lines to write on. */
import type { BlockOrigin, PageBreakBlock, RuleBlock } from '../../markup/block';
import { tolerancePt } from '../fits';
import type { PlacedItem } from '../frame';
import type { Look } from '../look';
import { type Box, box, gap, layeredBox, type Piece, type Splittable } from '../pieces';
import type { Place, Setting } from '../setting';
import { placeField } from './field';
import { rule } from './marks';

const shares = { half: 1 / 2, third: 1 / 3, whole: 'whole' } as const;

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
  if (block.fill === true) {
    const ruled = ruledToFoot(block.lines, look.space.writing, line, block.origin);
    return [gap(look.space.paragraph), ruled, around];
  }
  const lines = Array.from({ length: block.lines }, () => box(look.space.writing, [line], block.origin));
  return [gap(look.space.paragraph), ...lines, around];
}

/** At least so many lines, and as many as there is room for, `pitchPt` apart. */
function ruledToFoot(least: number, pitchPt: number, line: PlacedItem, origin: BlockOrigin): Splittable {
  const heightPt = least * pitchPt;
  return {
    kind: 'splittable',
    heightPt,
    leastPt: heightPt,
    wantPt: heightPt,
    keep: 'free',
    anchors: [],
    origin,
    take: (roomPt) => {
      const count = Math.floor((roomPt + tolerancePt) / pitchPt);
      if (count < least) return { kind: 'nothing' };
      const layers = Array.from({ length: count }, (_, index) => ({ y: index * pitchPt, items: [line] }));
      const ruled = layeredBox(count * pitchPt, layers, origin);
      return { kind: 'all', box: { ...ruled, stretchPt: (count - least) * pitchPt } };
    },
  };
}
