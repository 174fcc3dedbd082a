/**
 * Steps: number (and box to tick) hang before the action; the result stands at the end of a leader or beneath. A
 * step whose omission nothing later would show has a heavy bar and a pointer. Cautions stand before their step.
 */
import type { CautionBlock, StepItem, StepsBlock } from '../../markup/block';
import { fits } from '../fits';
import { surrounded } from '../flow/frame-splittable';
import type { PlacedItem, StructureIndex } from '../frame';
import { setBalanced, setBalancedAfter, setBalancedWithin } from '../inline/balance';
import { lineBoxes, placeLine, refuseTooNarrow, type SetText, setCut, setText } from '../inline/text';
import { cutText } from '../inline/tokens';
import { baselineIn, type Look } from '../look';
import {
  anchored,
  type Box,
  box,
  gap,
  heldTogether,
  notLast,
  type Piece,
  stackHeight,
  withItems,
} from '../pieces';
import type { Place, Setting } from '../setting';
import { cautionBox } from './caution';
import { withChange } from './change';
import { besidePt } from './letter';
import { filledRect, leader, leastLeaderEm, pointer, tickBox } from './marks';
import { measure } from './paragraph';
import { type SaidPlace, saidAbove, tieKey } from './said';

/** A step up to this share of a page stays whole if a page can hold it. */
const wholeShare = 0.75;

/** Makes steps ready for pages. */
export function collectSteps(block: StepsBlock, place: Place, setting: Setting): Piece[] {
  const columns = stepColumns(block, place, setting);
  refuseTooNarrow(columns.textPt, setting.look.steps.action, setting, block.origin);
  const list = setting.structure.add('L', place.tag, { numbering: 'Decimal' });
  const pieces = block.items.flatMap((item, index) => {
    const step = collectStep(item, block.start + index, { block, place, columns, list, setting });
    const isFirstOfSeveral = index === 0 && block.items.length > 1;
    return [...(isFirstOfSeveral ? notLast(step) : step), gap(setting.look.steps.gapPt)];
  });
  return [...pieces, gap(setting.look.space.paragraph)];
}

/** Where the parts of a step stand across the column. */
interface StepColumns {
  readonly barX: number;
  readonly pointerX: number;
  readonly tickX: number;
  readonly numberRight: number;
  readonly textX: number;
  readonly textPt: number;
}

interface StepContext {
  readonly block: StepsBlock;
  readonly place: Place;
  readonly columns: StepColumns;
  readonly list: StructureIndex;
  readonly setting: Setting;
}

function stepColumns(block: StepsBlock, place: Place, setting: Setting): StepColumns {
  const { look, survey } = setting;
  const { number, action } = look.steps;
  const em = action.sizePt;
  const hasBar = survey.steps.hasMarks;
  const pointerX = place.x + look.line.bar + 0.12 * em;
  const marksX = hasBar ? pointerX + (saidEm + clearEm) * em : place.x;
  const { digits, saidDigits } = survey.steps;
  const letterPt = saidDigits > 0 ? besidePt(number, look.fonts) : 0;
  const isTicked = block.mark === 'tick';
  const tickX = isTicked ? marksX + letterPt : marksX;
  const numberX = isTicked ? tickX + tickSideEm * em + 0.45 * em : tickX;
  const digitsPt = (count: number) => look.fonts[number.face].widthOf('0'.repeat(count), number.sizePt);
  // a letter may stand where a shorter number leaves room
  const markedPt = isTicked ? 0 : letterPt + digitsPt(saidDigits);
  const numberRight = numberX + Math.max(digitsPt(digits), markedPt);
  const textX = Math.max(numberRight + 0.34 * em, hasBar ? 0 : place.x + look.space.indent);
  const shift = textX - (numberRight + 0.34 * em);
  const textPt = place.x + measure(place.widthPt, look) - textX;
  return { barX: place.x, pointerX, tickX, numberRight: numberRight + shift, textX, textPt };
}

const tickSideEm = 0.8;

/** Width of the triangle of a caution that is said above, and what is kept clear between it and the widest number. */
const saidEm = 0.64;
const clearEm = 0.16;

function collectStep(item: StepItem, value: number, context: StepContext): Piece[] {
  const { place, columns, list, setting } = context;
  const { structure, look } = setting;
  const step = structure.add('LI', list);
  const label = structure.add('Lbl', step);
  const body = structure.add('LBody', step);
  const cautions = item.cautions.flatMap((caution) => {
    const key = tieKey(caution, list, setting);
    const shown = cautionBox(caution, cautionPlace(caution, { ...place, tag: body }, columns), setting, {
      textX: columns.textX,
      key,
    });
    const said =
      key === undefined ? undefined : saidAbove(caution, key, saidPlace(columns, look), body, setting);
    const kept: Box = {
      ...shown,
      keep: 'must',
      passesMark: true,
      ...(said === undefined ? {} : { said }),
    };
    const made: Piece[] = [...withChange([kept], caution.change), gap(0.7 * look.steps.gapPt)];
    return caution.id === undefined ? made : withAnchor(made, caution.id);
  });
  const lines = stepLines(item, body, context);
  const marks = stepMarks(item, value, label, context);
  const [first, ...rest] = lines;
  const all = withChange(first === undefined ? [] : [withItems(first, marks), ...rest], item.change);
  const small = fits(stackHeight(all), wholeShare * setting.roomPt);
  const held = small ? heldTogether(all, 'ought') : all;
  const made = [...cautions, ...(item.critical ? [barred(held, item, context)] : held)];
  return item.id === undefined ? made : anchored(made, [item.id], item.origin);
}

/** A whole caution stands in the column of the text; a brief one has only its words there, and its panel left of them. */
function cautionPlace(caution: CautionBlock, place: Place, { textX, textPt }: StepColumns): Place {
  if (caution.brief !== true) return { ...place, x: textX, widthPt: textPt };
  return { ...place, widthPt: textX + textPt - place.x };
}

/** Where the pointer of a critical step stands. */
function saidPlace({ pointerX }: StepColumns, { steps: { action, number }, fonts }: Look): SaidPlace {
  const baseline = baselineIn(action, fonts);
  return { x: pointerX, baseline, widthPt: saidEm * action.sizePt, letter: number };
}

function withAnchor(pieces: readonly Piece[], name: string): Piece[] {
  return pieces.map((piece) => (piece.kind === 'box' ? { ...piece, anchors: [{ name, y: 0 }] } : piece));
}

function barred(pieces: readonly Piece[], item: StepItem, { columns, setting }: StepContext): Piece {
  const { line, colours } = setting.look;
  const bar = (heightPt: number) => [filledRect(columns.barX, 0, line.bar, heightPt, colours.ink)];
  return surrounded(pieces, 0, bar, setting, item.origin);
}

/** Number, box to tick and pointer, standing on the first line. */
function stepMarks(item: StepItem, value: number, tag: StructureIndex, context: StepContext): PlacedItem[] {
  const { block, columns, setting } = context;
  const { look } = setting;
  const { number, action } = look.steps;
  const y = baselineIn(action, look.fonts);
  const text = String(value);
  const widthPt = look.fonts[number.face].widthOf(text, number.sizePt);
  const { face, sizePt, colour } = number;
  const middle = y - (look.fonts[action.face].capHeight / 2) * action.sizePt;
  const side = tickSideEm * action.sizePt;
  return [
    ...(item.critical ? [pointer(columns.pointerX, middle, 0.6 * action.sizePt, look.colours.ink)] : []),
    ...(block.mark === 'tick'
      ? [tickBox(columns.tickX, middle + side / 2, side, look.colours.ink, look.line.thin)]
      : []),
    { kind: 'text', x: columns.numberRight - widthPt, y, widthPt, text, face, sizePt, colour, tag },
  ];
}

/** Action, result and remark as lines; at least one line, for the number to stand on. */
function stepLines(item: StepItem, parent: StructureIndex, context: StepContext): Box[] {
  const { block, columns, setting } = context;
  const { look } = setting;
  const { steps } = look;
  const set = (content: StepItem['action'], style: typeof steps.action) => {
    const tag = setting.structure.add('P', parent);
    return { text: setText(content, style, columns.textPt, setting, item.origin, tag), tag };
  };
  const action = set(item.action, steps.action);
  const lines = lineBoxes(action.text, columns.textX, 'left', setting, item.origin, action.tag);
  if (lines.length === 0) lines.push(emptyLine(item, setting));
  if (item.result.length > 0) {
    const isLed = block.led === true || steps.leader[block.mark];
    const result = setResult(item, parent, isLed ? action.text : undefined, context);
    const led = isLed ? onLeader(lines, action.text, result, context) : undefined;
    if (led !== undefined) lines[lines.length - 1] = led;
    addBelow(lines, resultBeneath(result, led === undefined ? 0 : 1, item, context));
  }
  if (item.remark.length > 0) {
    const remark = set(item.remark, steps.remark);
    addBelow(lines, lineBoxes(remark.text, columns.textX, 'left', setting, item.origin, remark.tag));
  }
  return lines;
}

/**
 * A result that stands at the right edge is a block there: its lines begin under each other and are about as long as each
 * other, so that no single word hangs. It begins at the end of the action’s line if that saves one.
 */
function setResult(
  item: StepItem,
  parent: StructureIndex,
  after: SetText | undefined,
  { columns, setting }: StepContext,
): SetResult {
  const { result: style, beneath } = setting.look.steps;
  const tag = setting.structure.add('P', parent);
  const cut = cutText(item.result, style, setting, item.origin, tag);
  const asBlock = (text: SetText): SetResult => {
    const blockPt = longestPt(text.lines);
    return { text, tag, firstPt: blockPt, restPt: blockPt };
  };
  if (beneath === 'left')
    return asBlock(setCut(cut, style, columns.textPt - resultIndent(setting), setting, item.origin));
  const block = asBlock(setBalanced(cut, style, columns.textPt, setting, item.origin));
  if (after === undefined) return block;
  const besidePt = columns.textPt - lastLinePt(after) - leastGapEm * setting.look.steps.action.sizePt;
  if (fits(block.firstPt, besidePt)) return block;
  const most = block.text.lines.length;
  const isWide = fits(leastBesideEm * style.sizePt, besidePt);
  const beside = isWide ? setBalancedWithin(cut, style, besidePt, most, setting) : undefined;
  if (beside !== undefined) return asBlock(beside);
  const room = { firstPt: besidePt, leastPt: leastBegunEm * style.sizePt, most };
  const begun = setBalancedAfter(cut, style, columns.textPt, room, setting);
  if (begun === undefined) return block;
  const [first, ...rest] = begun.lines;
  return { text: begun, tag, firstPt: first?.widthPt ?? 0, restPt: longestPt(rest) };
}

/** A block narrower than this is not set beside the action; a share of the type size. */
const leastBesideEm = 5;

/** Less than this of a result does not begin at the end of the action’s line; a share of the type size. */
const leastBegunEm = 2;

function longestPt(lines: SetText['lines']): number {
  return Math.max(0, ...lines.map((line) => line.widthPt));
}

function lastLinePt(text: SetText): number {
  return text.lines.at(-1)?.widthPt ?? 0;
}

interface SetResult {
  readonly text: SetText;
  readonly tag: StructureIndex;
  /** How far left of the right edge its first line begins: with the others, or where the action leaves off. */
  readonly firstPt: number;
  readonly restPt: number;
}

function emptyLine(item: StepItem, { look }: Setting): Box {
  return box(look.steps.action.leadingPt, [], item.origin, baselineIn(look.steps.action, look.fonts));
}

/** Adds lines whose first must stay with the last of those above. */
function addBelow(lines: Box[], more: readonly Box[]): void {
  const last = lines[lines.length - 1];
  if (last !== undefined && more.length > 0) lines[lines.length - 1] = { ...last, keep: 'must' };
  lines.push(...more);
}

/**
 * The last line of the action with the first line of the result at its end, after a leader if there is room for one;
 * nothing if they do not fit on the line.
 */
function onLeader(
  lines: readonly Box[],
  action: SetText,
  result: SetResult,
  context: StepContext,
): Box | undefined {
  const { columns, setting } = context;
  const { look } = setting;
  const { sizePt } = look.steps.action;
  const last = lines[lines.length - 1];
  const resultLine = result.text.lines[0];
  if (last === undefined || resultLine === undefined) return undefined;
  if (result.text.lines.length > 1 && look.steps.beneath === 'left') return undefined;
  const actionPt = lastLinePt(action);
  const { firstPt: widthPt } = result;
  if (!fits(actionPt + leastGapEm * sizePt + widthPt, columns.textPt)) return undefined;
  const y = baselineIn(look.steps.action, look.fonts);
  const resultX = columns.textX + columns.textPt - widthPt;
  const space = 0.35 * sizePt;
  const isLed = fits(actionPt + leastLeaderEm * sizePt + widthPt, columns.textPt);
  const from = columns.textX + actionPt + space;
  const dots = isLed ? leader(from, resultX - space, y, sizePt, look.colours.soft) : [];
  const led = placeLine(resultLine, resultX, y, look.steps.result, result.tag);
  return withItems(last, [], [...dots, ...led]);
}

/** Least space between an action and a result on one line, as a share of the type size. */
const leastGapEm = 0.7;

function resultIndent({ look }: Setting): number {
  return 1.1 * look.steps.result.sizePt;
}

/** The lines of a result from the given one on, under the action. */
function resultBeneath(
  result: SetResult,
  from: number,
  item: StepItem,
  { columns, setting }: StepContext,
): Box[] {
  const { look } = setting;
  const { result: style, beneath } = look.steps;
  if (beneath === 'right') {
    const blockX = columns.textX + columns.textPt - result.restPt;
    return lineBoxes(result.text, blockX, 'left', setting, item.origin, result.tag).slice(from);
  }
  const x = columns.textX + resultIndent(setting);
  const lines = lineBoxes(result.text, x, 'left', setting, item.origin, result.tag).slice(from);
  const [first, ...rest] = lines;
  if (first === undefined) return [];
  const middle = baselineIn(style, look.fonts) - (look.fonts[style.face].xHeight / 2) * style.sizePt;
  const mark = pointer(columns.textX + 0.1 * style.sizePt, middle, 0.42 * style.sizePt, look.colours.soft);
  return [withItems(first, [mark]), ...rest];
}
