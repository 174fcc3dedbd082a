/**
 * Inlines cut into tokens: words with their widths, and what may happen after each.
 */
import type { Face } from '../../font/metrics';
import type { BlockOrigin, Inline, TextRun } from '../../markup/block';
import type { StructureIndex } from '../frame';
import type { TextStyle } from '../look';
import type { Setting } from '../setting';
import { type PlainText, spaced } from './plain';

/** Where a piece of text leads, and its element in the structure tree if it has one. */
export interface LinkTo {
  readonly target: string;
  readonly words: string;
  readonly tag?: StructureIndex;
}

/** What may happen after a token: a line may end there, must end there, or the next token belongs to the same word. */
export type TokenEnd = 'may-break' | 'must-break' | 'joined';

/** A stretch of letters in one face, without spaces; then the spaces that follow it. */
export interface Token {
  readonly text: string;
  readonly face: Face;
  readonly widthPt: number;
  readonly spaces: string;
  readonly spacesPt: number;
  readonly end: TokenEnd;
  readonly link?: LinkTo;
}

/** Text made ready to be set: plain, or token by token. */
export type Cut = readonly Token[] | PlainText;

/** Whether text is plain. */
export function isPlain(cut: Cut): cut is PlainText {
  return 'words' in cut;
}

/** Cuts inlines set in `style`, plain text as such; all else token by token. */
export function cutText(
  content: readonly Inline[],
  style: TextStyle,
  setting: Setting,
  origin: BlockOrigin,
  tag?: StructureIndex,
): Cut {
  const [run] = content;
  if (content.length !== 1 || run?.kind !== 'text' || run.link !== undefined)
    return tokenize(content, style, setting, origin, tag);
  const words = setting.words.of(run, setting.look.fonts[faceFor(run, style)]);
  if (words.missing.length > 0) setting.problems.missingLetters(words.missing, origin);
  return { words, sizePt: style.sizePt };
}

type Draft = { -readonly [K in keyof Token]: Token[K] };

/**
 * Cuts inlines into tokens set in `style`. Links get a `Link` element under `tag`; without a tag the text is an
 * artifact and its links are dropped.
 */
export function tokenize(
  content: readonly Inline[],
  style: TextStyle,
  setting: Setting,
  origin: BlockOrigin,
  tag?: StructureIndex,
): Token[] {
  const drafts: Draft[] = [];
  for (const inline of content) {
    if (inline.kind === 'break') endLine(drafts, style);
    else if (inline.kind === 'text') {
      const link =
        inline.link === undefined ? undefined : linkTo(inline.link, inline.text, setting, origin, tag);
      addText(drafts, inline.text, faceFor(inline, style), style, setting, origin, link);
    } else {
      const label = setting.labels.of(inline.target, origin);
      const link = linkTo(inline.target, label, setting, origin, tag);
      addText(drafts, label, style.face, style, setting, origin, link);
    }
  }
  return drafts;
}

function faceFor(run: TextRun, style: TextStyle): Face {
  if (run.strong) return style.strong;
  return run.emphasis ? style.emphasis : style.face;
}

function linkTo(
  target: string,
  words: string,
  setting: Setting,
  origin: BlockOrigin,
  parent: StructureIndex | undefined,
): LinkTo | undefined {
  setting.labels.expect(target, origin);
  if (parent === undefined) return undefined;
  return { target, words, tag: setting.structure.add('Link', parent) };
}

function endLine(drafts: Draft[], style: TextStyle): void {
  const last = drafts[drafts.length - 1];
  if (last === undefined || last.end === 'must-break') {
    drafts.push({ text: '', face: style.face, widthPt: 0, spaces: '', spacesPt: 0, end: 'must-break' });
  } else {
    last.end = 'must-break';
  }
}

function addText(
  drafts: Draft[],
  raw: string,
  face: Face,
  style: TextStyle,
  setting: Setting,
  origin: BlockOrigin,
  link: LinkTo | undefined,
): void {
  const metrics = setting.look.fonts[face];
  const text = spaced(raw);
  const missing = metrics.missing(text);
  if (missing.length > 0) setting.problems.missingLetters(missing, origin);
  let at = 0;
  while (at < text.length) {
    const spacesFrom = at;
    while (text.charCodeAt(at) === space) at += 1;
    if (at > spacesFrom) addSpaces(drafts, text.slice(spacesFrom, at), style, setting);
    const next = text.indexOf(' ', at);
    const end = next === -1 ? text.length : next;
    if (end > at) {
      const word = text.slice(at, end);
      const widthPt = metrics.widthOf(word, style.sizePt);
      const draft: Draft = { text: word, face, widthPt, spaces: '', spacesPt: 0, end: 'joined' };
      if (link !== undefined) draft.link = link;
      drafts.push(draft);
    }
    at = end;
  }
}

/** Spaces belong to the word before them; those at the start of a line are dropped. */
function addSpaces(drafts: Draft[], spaces: string, style: TextStyle, setting: Setting): void {
  const last = drafts[drafts.length - 1];
  if (last === undefined || last.end === 'must-break') return;
  last.spaces += spaces;
  last.spacesPt += setting.look.fonts[last.face].widthOf(' ', style.sizePt) * spaces.length;
  last.end = 'may-break';
}

const space = 0x20;
