/** A table of contents: headings with leaders and page numbers, all of them links. */
import type { BlockOrigin, ContentsBlock, Inline } from '../../markup/block';
import type { PlacedItem } from '../frame';
import { placeLine, setText } from '../inline/text';
import { baselineIn, strongStyle, type TextStyle } from '../look';
import { type Box, box, gap, heldTogether, type Piece } from '../pieces';
import type { Place, Setting } from '../setting';
import type { SurveyedHeading } from '../survey';
import { leader } from './marks';
import { measure } from './paragraph';

/** Makes the contents ready for pages. */
export function collectContents(block: ContentsBlock, place: Place, setting: Setting): Piece[] {
  const { look, structure, survey } = setting;
  const tag = structure.add('TOC', place.tag);
  const listed = survey.headings.filter(({ block: heading }) => heading.level <= block.depth);
  const pieces = listed.flatMap((heading, index): Piece[] => {
    const { level } = heading.block;
    const entry = contentsEntry(heading, { ...place, tag }, setting, block.origin);
    const above = level === 1 && index > 0 ? look.space.paragraph : 0;
    const opens = level === 1 && (listed[index + 1]?.block.level ?? 1) > 1;
    return [
      gap(above),
      ...heldTogether(entry, 'must').map((piece, at): Piece => {
        const isLast = at === entry.length - 1;
        return opens && isLast && piece.kind === 'box' ? { ...piece, keep: 'must' } : piece;
      }),
    ];
  });
  return [gap(look.space.block), ...pieces, gap(look.space.block)];
}

function contentsEntry(heading: SurveyedHeading, place: Place, setting: Setting, origin: BlockOrigin): Box[] {
  const { look, structure, labels } = setting;
  const level = heading.block.level;
  const style = level === 1 ? strongStyle(look.body) : look.body;
  const em = style.sizePt;
  const indentPt = (level - 1) * look.space.indent;
  const columnPt = measure(place.widthPt, look);
  const labelPt = look.fonts[style.face].widthOf('0000', em);
  const entry = structure.add('TOCI', place.tag);
  const link = structure.add('Link', entry);
  const text = setText(
    unlinked(heading.block.content),
    style,
    columnPt - indentPt - labelPt - em,
    setting,
    origin,
    link,
  );
  const label = labels.of(heading.name, origin);
  const y = baselineIn(style, look.fonts);
  const x = place.x + indentPt;
  const right = place.x + columnPt;
  return text.lines.map((line, index) => {
    const isLast = index === text.lines.length - 1;
    const items: PlacedItem[] = placeLine(line, x, y, style, link);
    items.push(entryLink(x, index, isLast ? right - x : line.widthPt, style, heading, link));
    if (!isLast) return box(style.leadingPt, items, origin, y);
    const number = pageNumber(label, right, y, style, setting, link);
    const dots = leader(x + line.widthPt + 0.4 * em, number.x - 0.4 * em, y, em, look.colours.soft);
    return box(style.leadingPt, [...withSpace(items), ...dots, number], origin, y);
  });
}

/** Title and number must read apart. */
function withSpace(items: readonly PlacedItem[]): PlacedItem[] {
  const last = items.findLastIndex((item) => item.kind === 'text');
  return items.map((item, index) =>
    index === last && item.kind === 'text' ? { ...item, text: `${item.text} ` } : item,
  );
}

function pageNumber(
  text: string,
  right: number,
  y: number,
  style: TextStyle,
  { look }: Setting,
  tag: number,
) {
  const { face, sizePt, colour } = style;
  const widthPt = look.fonts[face].widthOf(text, sizePt);
  return { kind: 'text', x: right - widthPt, y, widthPt, text, face, sizePt, colour, tag } as const;
}

function entryLink(
  x: number,
  index: number,
  widthPt: number,
  style: TextStyle,
  heading: SurveyedHeading,
  tag: number,
) {
  const words = index === 0 ? heading.title : `${heading.title} (continued)`;
  return {
    kind: 'link',
    x,
    y: 0,
    widthPt,
    heightPt: style.leadingPt,
    target: heading.name,
    words,
    tag,
  } as const;
}

function unlinked(content: readonly Inline[]): Inline[] {
  return content.flatMap((inline): Inline[] => {
    if (inline.kind === 'break') return [{ kind: 'text', text: ' ', strong: false, emphasis: false }];
    if (inline.kind === 'page-of') return [];
    const { text, strong, emphasis } = inline;
    return [{ kind: 'text', text, strong, emphasis }];
  });
}
