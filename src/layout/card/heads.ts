/**
 * The head of each face of a card: its title on the first; on the others that of the part which begins there, or the card
 * and, where a part of it goes on, that part. The hole stands beside or above it.
 */
import type { Block, Inline } from '../../markup/block';
import { collectBlocks } from '../blocks/collect';
import { rule } from '../blocks/marks';
import { placeText, setText, textHeight } from '../inline/text';
import type { Look, TextStyle } from '../look';
import type { PartHeading } from '../pages/paginate';
import { isSolid, type Piece } from '../pieces';
import type { Place, Setting } from '../setting';
import { moveItem } from '../shape';
import { originOf, type SurveyedHeading } from '../survey';
import type { HoleRoom } from './hole';
import { type Strip, words } from './strip';

/** What a head is made from. */
export interface HeadOptions {
  /** Of the card, for faces after the first. */
  readonly title: string;
  readonly widthPt: number;
  readonly hole: HoleRoom;
}

/** The heads of a card, all counted from the left of its text. */
export interface Heads {
  readonly first: Strip;
  /** Of a later face that begins within the part of this name, or within none. */
  next(part: string | undefined): Strip;
  /** Of a later face that a part with this heading begins: the heading itself, at the top edge where it is looked for. */
  begins(heading: PartHeading): Strip;
  /** The tallest of them. */
  readonly mostPt: number;
  /** Names of the places that the title holds. */
  readonly titleNames: readonly string[];
  /** Parts that a face can begin within. */
  readonly parts: ReadonlyMap<string, SurveyedHeading>;
}

/** Level of the headings of parts that are named where they go on. */
const partLevel = 2;

/** Sets all heads of a card whose title is `title`, if it has one. */
export function headsOf(title: Block | undefined, options: HeadOptions, setting: Setting): Heads {
  const { hole } = options;
  const widthPt = options.widthPt - hole.besidePt;
  const place: Place = { x: 0, widthPt, tag: 0, depth: 0, keptAbovePt: 0 };
  const titlePieces = title === undefined ? [] : collectBlocks([title], place, setting);
  const parts = new Map(
    setting.survey.headings.filter(({ block }) => block.level === partLevel).map((part) => [part.name, part]),
  );
  const strip = (head: Strip) => besideHole(underlined(head, widthPt, setting), hole);
  const names = [...parts.values()].map((part) => part.title);
  const titleOf = continuedTitles(options.title, names, widthPt, setting);
  const continued = (part: string | undefined) => strip(titleOf(parts.get(part ?? '')?.title));
  const first = strip(stripOf(titlePieces));
  const nexts = new Map([undefined, ...parts.keys()].map((part) => [part, continued(part)]));
  const next = (part: string | undefined) => nexts.get(part) ?? continued(part);
  const mostPt = Math.max(first.heightPt, ...[...nexts.values()].map(({ heightPt }) => heightPt));
  const titleNames = titlePieces.flatMap((piece) =>
    isSolid(piece) ? piece.anchors.map(({ name }) => name) : [],
  );
  const begins = ({ boxes }: PartHeading) => strip(stripOf(boxes));
  return { first, next, begins, mostPt, titleNames, parts };
}

/** The look with the headings of parts no wider than beside the hole. */
export function withRoomForHole(look: Look, { besidePt }: HoleRoom): Look {
  const [title, part, topic, point] = look.headings;
  return { ...look, headings: [title, { ...part, besidePt }, topic, point] };
}

/** How far to the right a head stands: on a front the hole is at its left, on a back at its right. */
export function headX(face: number, { besidePt }: HoleRoom): number {
  return face % 2 === 0 ? besidePt : 0;
}

/** A title with the line below it. `title` counts from its own top. */
function underlined(title: Strip, widthPt: number, { look }: Setting): Strip {
  if (title.heightPt === 0) return title;
  const gapPt = 0.2 * look.body.sizePt;
  const lineY = title.heightPt + gapPt + look.line.heavy / 2;
  const line = rule(0, lineY, widthPt, look.colours.ink, look.line.heavy);
  return { heightPt: lineY + look.line.heavy / 2 + 0.45 * look.body.sizePt, items: [...title.items, line] };
}

/** The strip below or beside the hole; what follows begins below both. */
function besideHole({ heightPt, items }: Strip, { abovePt, leastPt }: HoleRoom): Strip {
  return {
    heightPt: Math.max(abovePt + heightPt, leastPt),
    items: items.map((item) => moveItem(item, 0, abovePt)),
  };
}

/**
 * The titles of faces that go on from the one before, each within a part or within none. All of a title is an artifact. Card and part stand
 * on all of them, in the type of the heads or, if one of them would not have room on one line, in that of the steps; if it would not have
 * even so, the part alone stands on all: the foot says which card it is, and a second line of every head would cost the card whole faces.
 */
function continuedTitles(
  title: string,
  parts: readonly string[],
  widthPt: number,
  setting: Setting,
): (part: string | undefined) => Strip {
  const { look } = setting;
  const inHeads = { ...look.headings[partLevel].style, face: look.body.face };
  const after = words(` (${look.words.continued})`, false);
  const set = (content: readonly Inline[], style: TextStyle) =>
    setText(content, style, widthPt, setting, originOf([]));
  const own = (part: string) => [words(part, true), after];
  const both = (part: string) => [...(part === title ? [] : [words(`${title}: `, false)]), ...own(part)];
  const style = [inHeads, look.body].find((tried) =>
    parts.every((part) => set(both(part), tried).lines.length === 1),
  );
  return (part = title) => {
    const text = style === undefined ? set(own(part), inHeads) : set(both(part), style);
    return { heightPt: textHeight(text), items: placeText(text, 0, 0, 'left', setting) };
  };
}

function stripOf(pieces: readonly Piece[]): Strip {
  let heightPt = 0;
  const items = pieces.flatMap((piece) => {
    if (piece.kind !== 'box') return [];
    const moved = piece.layers.flatMap(({ y, items }) =>
      items.map((item) => moveItem(item, 0, heightPt + y)),
    );
    heightPt += piece.heightPt;
    return moved;
  });
  return { heightPt, items };
}
