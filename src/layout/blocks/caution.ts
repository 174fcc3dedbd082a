/**
 * Cautions: a panel with the signal word and the alert triangle, then hazard, consequence and avoidance. Never broken.
 * Words, symbol and line carry the meaning; the colour only helps.
 */
import type { Colour } from '../../drawing/drawing';
import type { CautionBlock, Inline } from '../../markup/block';
import type { PlacedItem, StructureIndex } from '../frame';
import { placeText, type SetText, setText, textHeight } from '../inline/text';
import { baselineIn, type Look, strongStyle } from '../look';
import { type Box, box, gap, type Layer, layeredBox, type Piece } from '../pieces';
import type { Place, Setting } from '../setting';
import { besidePt, placeLetter } from './letter';
import { alertTriangle, filledRect, outlinedRect, rule, ruleDown } from './marks';
import { measure } from './paragraph';
import { setSigns } from './sign';

/** Makes a caution that stands by itself ready for pages. */
export function collectCaution(block: CautionBlock, place: Place, setting: Setting): Piece[] {
  const around = gap(setting.look.space.block);
  const column = { ...place, widthPt: measure(place.widthPt, setting.look) };
  return [around, cautionBox(block, column, setting), around];
}

/** What a brief caution has to do with the steps it stands among. */
export interface AmongSteps {
  /** Where their words begin. */
  readonly textX: number;
  /** What ties it to those marked with it, if it may be. */
  readonly key: string | undefined;
}

/** The caution as one box. The words of a brief one begin where those of its step do, if they are to and its symbol has room. */
export function cautionBox(block: CautionBlock, place: Place, setting: Setting, among?: AmongSteps): Box {
  return block.brief === true ? briefBox(block, place, among, setting) : panelBox(block, place, setting);
}

/**
 * A brief caution: the triangle on its colour to the left, with a letter where a step below is marked with it; signal word
 * and hazard beside it in one run.
 */
function briefBox(block: CautionBlock, place: Place, among: AmongSteps | undefined, setting: Setting): Box {
  const { look, survey } = setting;
  const { panels, padYPt, signal, text: style } = look.cautions;
  const { word, panel, letters, symbol } = panels[block.signal];
  const tag = setting.structure.add('P', setting.structure.add('Div', place.tag));
  const side = 1.1 * signal.sizePt;
  const beside = 0.5 * signal.sizePt;
  const letter = strongStyle(style);
  const hasLetters = among !== undefined && survey.steps.saidDigits > 0;
  const leastPt = side + 0.5 * signal.sizePt + (hasLetters ? besidePt(letter, look.fonts) : 0);
  const wishedX = look.cautions.briefFrom === 'steps' ? (among?.textX ?? place.x) : place.x;
  const column = Math.max(leastPt, wishedX - beside - place.x);
  const textX = place.x + column + beside;
  const words: Inline[] = [
    { kind: 'text', text: `${word} `, strong: true, emphasis: false },
    ...block.hazard,
    ...[block.consequence, block.avoidance].flatMap((part) => (part.length > 0 ? [space, ...part] : [])),
  ];
  const text = setText(
    words,
    style,
    place.x + place.widthPt - look.cautions.padXPt - textX,
    setting,
    block.origin,
    tag,
  );
  const padY = 0.5 * padYPt;
  const heightPt = textHeight(text) + 2 * padY;
  const baseline = padY + baselineIn(style, look.fonts);
  const footY = baseline + 0.12 * signal.sizePt;
  const mark = (shown: string | undefined): PlacedItem[] => {
    const letterPt = shown === undefined ? 0 : besidePt(letter, look.fonts);
    const x = place.x + (column - side - letterPt) / 2;
    const at = { besideX: x + side, baseline, style: letter, colour: letters };
    return [
      ...alertTriangle(x, footY, side, letters, panel),
      ...(shown === undefined ? [] : [placeLetter(shown, at, look.fonts)]),
    ];
  };
  const key = among?.key;
  const behind = isBare(panel, look)
    ? ruleDown(place.x + column, 0, heightPt, look.colours.ink, look.line.thin)
    : filledRect(place.x, 0, column, heightPt, panel);
  const symbols: Layer[] =
    key === undefined
      ? [{ y: 0, items: symbol ? mark(undefined) : [] }]
      : [{ y: 0, items: [], tied: { key, kind: 'caution', show: mark } }];
  const items: PlacedItem[] = [
    ...placeText(text, textX, padY, 'left', setting, tag),
    outlinedRect(place.x, 0, place.widthPt, heightPt, look.colours.ink, look.line.thin),
  ];
  return layeredBox(heightPt, [{ y: 0, items: [behind] }, ...symbols, { y: 0, items }], block.origin);
}

/** Whether a panel has the colour of the paper, so that a line has to part it from the words. */
function isBare(panel: Colour, { colours }: Look): boolean {
  return panel === colours.paper;
}

function panelBox(block: CautionBlock, place: Place, setting: Setting): Box {
  const { look } = setting;
  const { cautions } = look;
  const { x, widthPt } = place;
  const tag = setting.structure.add('Div', place.tag);
  const panel = signalPanel(block, place, setting, tag);
  const signs = setSigns(block.signs ?? [], tag, setting);
  const besidePt = signs.widthPt === 0 ? 0 : signs.widthPt + cautions.padXPt;
  const texts = cautionTexts(block, widthPt - 2 * cautions.padXPt - besidePt, setting, tag);
  const top = panel.heightPt + 0.75 * cautions.padYPt;
  const { items: drawn, figures } = signs.place(x + cautions.padXPt, top + 0.25 * cautions.padYPt);
  const items: PlacedItem[] = [...panel.items, ...drawn];
  let y = top;
  for (const { text, tag: own } of texts) {
    if (text.lines.length === 0) continue;
    items.push(...placeText(text, x + cautions.padXPt + besidePt, y, 'left', setting, own));
    y += textHeight(text);
  }
  const signsPt = signs.heightPt === 0 ? 0 : top + 0.25 * cautions.padYPt + signs.heightPt;
  const heightPt = Math.max(y + cautions.padYPt, signsPt + 0.5 * cautions.padYPt);
  const outline = outlinedRect(x, 0, widthPt, heightPt, look.colours.ink, look.line.heavy);
  return { ...box(heightPt, [...items, outline], block.origin), figures };
}

function signalPanel(block: CautionBlock, place: Place, setting: Setting, parent: StructureIndex) {
  const { look } = setting;
  const { panels, padXPt, signal } = look.cautions;
  const { word, panel, letters, symbol } = panels[block.signal];
  const style = { ...strongStyle(signal), colour: letters };
  const tag = setting.structure.add('P', parent);
  const side = symbol ? 1.25 * signal.sizePt : 0;
  const wordX = place.x + padXPt + side + (symbol ? 0.5 * signal.sizePt : 0);
  const content: Inline[] = [{ kind: 'text', text: word, strong: false, emphasis: false }];
  const text = setText(content, style, place.x + place.widthPt - padXPt - wordX, setting, block.origin, tag);
  const padY = 0.22 * signal.sizePt;
  const heightPt = textHeight(text) + 2 * padY;
  const baseline = padY + baselineIn(style, look.fonts);
  const footY = baseline + 0.12 * signal.sizePt;
  const items: PlacedItem[] = [
    isBare(panel, look)
      ? rule(place.x, heightPt, place.widthPt, look.colours.ink, look.line.thin)
      : filledRect(place.x, 0, place.widthPt, heightPt, panel),
    ...(symbol ? alertTriangle(place.x + padXPt, footY, side, letters, panel) : []),
    ...placeText(text, wordX, padY, 'left', setting, tag),
  ];
  return { heightPt, items };
}

interface TaggedText {
  readonly text: SetText;
  readonly tag: StructureIndex;
}

function cautionTexts(
  block: CautionBlock,
  widthPt: number,
  setting: Setting,
  parent: StructureIndex,
): TaggedText[] {
  const { text: style, runOn } = setting.look.cautions;
  const set = (content: readonly Inline[]): TaggedText => {
    const tag = setting.structure.add('P', parent);
    return { text: setText(content, style, widthPt, setting, block.origin, tag), tag };
  };
  const parts = [inStrong(block.hazard), block.consequence, block.avoidance].filter(
    (part) => part.length > 0,
  );
  return runOn ? [set(joined(parts))] : parts.map(set);
}

function inStrong(content: readonly Inline[]): Inline[] {
  return content.map((inline) => (inline.kind === 'text' ? { ...inline, strong: true } : inline));
}

const space: Inline = { kind: 'text', text: ' ', strong: false, emphasis: false };

function joined(parts: readonly (readonly Inline[])[]): Inline[] {
  return parts.flatMap((part, index) => (index === 0 ? part : [space, ...part]));
}
