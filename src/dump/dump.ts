/**
 * A paper as text, for comparing: page, place, face, size and words of everything on it. Small, stable, easy to
 * review; it changes when the printed page does and at no other time.
 */
import type { PathPiece, Shape } from '../drawing/drawing';
import type { LaidOut, OutlineEntry, Page, PlacedItem, StructureIndex } from '../layout/frame';

/** The whole paper as lines of text, ending in a line end. */
export function dumpLaidOut(laidOut: LaidOut): string {
  const lines = [
    ...laidOut.pages.flatMap((page) => dumpPage(page, laidOut)),
    ...laidOut.destinations.map(({ name, page, y }) => `place ${name} page ${page + 1} y ${short(y)}`),
    ...laidOut.outline.flatMap((entry) => dumpOutline(entry, 1)),
  ];
  return `${lines.join('\n')}\n`;
}

function dumpPage(page: Page, laidOut: LaidOut): string[] {
  const size = `${short(page.widthPt)} x ${short(page.heightPt)}`;
  return [`page ${page.label} ${size}`, ...page.items.map((item) => `  ${dumpItem(item, laidOut)}`)];
}

function dumpItem(item: PlacedItem, laidOut: LaidOut): string {
  const tag = tagName(item.tag, laidOut);
  if (item.kind === 'text') {
    const place = `${short(item.x)},${short(item.y)} w ${short(item.widthPt)}`;
    return `${place} ${item.face} ${short(item.sizePt)} ${item.colour} ${tag} ${JSON.stringify(item.text)}`;
  }
  if (item.kind === 'link') {
    const box = [item.x, item.y, item.widthPt, item.heightPt].map(short).join(',');
    return `link ${box} ${tag} to ${item.target}`;
  }
  if (item.kind === 'field') {
    const box = [item.x, item.y, item.widthPt, item.heightPt].map(short).join(',');
    return `field ${box} ${tag} ${item.field.kind} ${item.field.name} ${JSON.stringify(item.field.title)}`;
  }
  return `${dumpShape(item.shape)} ${tag}`;
}

function tagName(tag: StructureIndex | undefined, laidOut: LaidOut): string {
  if (tag === undefined) return '-';
  return `${laidOut.structure[tag]?.type ?? '?'}#${tag}`;
}

function dumpShape(shape: Shape): string {
  switch (shape.kind) {
    case 'path':
      return `path ${shape.pieces.map(dumpPiece).join(' ')}${dumpPaint(shape)}`;
    case 'rect':
      return `rect ${[shape.x, shape.y, shape.width, shape.height].map(short).join(',')}${dumpPaint(shape)}`;
    case 'circle':
      return `circle ${[shape.cx, shape.cy, shape.r].map(short).join(',')}${dumpPaint(shape)}`;
    case 'text': {
      const place = `${short(shape.x)},${short(shape.y)} ${shape.anchor}`;
      return `drawn ${place} ${shape.face} ${short(shape.sizePt)} ${shape.colour} ${JSON.stringify(shape.text)}`;
    }
  }
}

function dumpPiece(piece: PathPiece): string {
  if (piece.op === 'close') return 'z';
  if (piece.op !== 'curve') return `${piece.op === 'move' ? 'm' : 'l'} ${short(piece.x)},${short(piece.y)}`;
  const points = [piece.x1, piece.y1, piece.x2, piece.y2, piece.x, piece.y];
  return `c ${points.map(short).join(',')}`;
}

function dumpPaint({ paint }: Exclude<Shape, { kind: 'text' }>): string {
  const fill = paint.fill === undefined ? '' : ` fill ${paint.fill}`;
  const { stroke } = paint;
  if (stroke === undefined) return fill;
  const dash = stroke.dashPt === undefined ? '' : ` dash ${stroke.dashPt.map(short).join(',')}`;
  return `${fill} line ${stroke.colour} ${short(stroke.widthPt)}${dash}`;
}

function dumpOutline({ title, destination, children }: OutlineEntry, level: number): string[] {
  return [
    `bookmark ${'>'.repeat(level)} ${title} -> ${destination}`,
    ...children.flatMap((child) => dumpOutline(child, level + 1)),
  ];
}

/** A length with two decimals at most, so that dumps agree between machines. */
function short(value: number): string {
  const rounded = Math.round(value * 100) / 100;
  return String(rounded === 0 ? 0 : rounded);
}
