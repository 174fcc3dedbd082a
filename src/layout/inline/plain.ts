/**
 * Plain text: one run in one style that leads nowhere, which is most of a paper. It is cut into words where it stands, and its
 * lines are stretches of it; nothing is made for a word. Whatever needs a closer look is set token by token instead.
 */
import type { Face, FontMetrics } from '../../font/metrics';
import type { TextRun } from '../../markup/block';
import { fits } from '../fits';
import type { Extent } from './extent';
import type { Line } from './lines';
import { hasJoint, hasLooseJoint } from './opportunities';
import type { Token } from './tokens';

/** The words of a run, whatever its size. */
export interface WordsOfRun {
  /** With spaces as its only white space. */
  readonly text: string;
  readonly face: Face;
  /** Where each word begins and ends. */
  readonly starts: readonly number[];
  readonly ends: readonly number[];
  /** Widths at a type size of one point. */
  readonly widthsEm: readonly number[];
  readonly spaceEm: number;
  readonly missing: readonly string[];
}

/** Words at a size. */
export interface PlainText {
  readonly words: WordsOfRun;
  readonly sizePt: number;
}

/** The words of one paper’s runs. They are remembered: more than half of its runs read like another, and cards are tried at one size after another. */
export class RememberedWords {
  private readonly byFace = new Map<Face, Map<string, WordsOfRun>>();

  of({ text }: TextRun, metrics: FontMetrics): WordsOfRun {
    let known = this.byFace.get(metrics.face);
    if (known === undefined) {
      known = new Map();
      this.byFace.set(metrics.face, known);
    }
    let words = known.get(text);
    if (words === undefined) {
      words = wordsOfRun(text, metrics);
      known.set(text, words);
    }
    return words;
  }
}

function wordsOfRun(raw: string, metrics: FontMetrics): WordsOfRun {
  const text = spaced(raw);
  const starts: number[] = [];
  const ends: number[] = [];
  const widthsEm: number[] = [];
  let at = 0;
  while (at < text.length) {
    if (text.charCodeAt(at) === space) {
      at += 1;
      continue;
    }
    const next = text.indexOf(' ', at);
    const end = next === -1 ? text.length : next;
    starts.push(at);
    ends.push(end);
    widthsEm.push(metrics.widthOf(text.slice(at, end), 1));
    at = end;
  }
  const missing = metrics.missing(text);
  return { text, face: metrics.face, starts, ends, widthsEm, spaceEm: metrics.widthOf(' ', 1), missing };
}

/** A text with spaces as its only white space. */
export function spaced(text: string): string {
  return otherSpace.test(text) ? text.replace(everyOtherSpace, ' ') : text;
}

const space = 0x20;
const otherSpace = /[\t\n\r\f]/;
const everyOtherSpace = /[\t\n\r\f]/g;

/** The same words as tokens. */
export function tokensOf({ words, sizePt }: PlainText): Token[] {
  const { text, face, starts, ends } = words;
  return starts.map((start, index) => {
    const end = ends[index] ?? start;
    const spaces = text.slice(end, starts[index + 1] ?? text.length);
    return {
      text: text.slice(start, end),
      face,
      widthPt: widthOf(words, index, sizePt),
      spaces,
      spacesPt: spacesAfter(words, index, sizePt),
      end: spaces === '' ? 'joined' : 'may-break',
    };
  });
}

function widthOf({ widthsEm }: WordsOfRun, index: number, sizePt: number): number {
  return (widthsEm[index] ?? 0) * sizePt;
}

function spacesAfter({ text, starts, ends, spaceEm }: WordsOfRun, index: number, sizePt: number): number {
  const from = ends[index] ?? text.length;
  return spaceEm * sizePt * ((starts[index + 1] ?? text.length) - from);
}

/** Least and natural width; nothing if some word may be broken. */
export function plainExtent({ words, sizePt }: PlainText): Extent | undefined {
  if (hasJoint(words.text)) return undefined;
  let minPt = 0;
  let maxPt = 0;
  let linePt = 0;
  for (let index = 0; index < words.starts.length; index += 1) {
    const widthPt = widthOf(words, index, sizePt);
    if (widthPt > minPt) minPt = widthPt;
    if (linePt + widthPt > maxPt) maxPt = linePt + widthPt;
    linePt += widthPt + spacesAfter(words, index, sizePt);
  }
  return { minPt, maxPt };
}

/** The lines of plain text; nothing if a word would have to be broken, or might be. */
export function plainLines({ words, sizePt }: PlainText, widthPt: number): Line[] | undefined {
  const lines: Line[] = [];
  let first = 0;
  let x = 0;
  let inkEnd = 0;
  for (let index = 0; index < words.starts.length; index += 1) {
    const wordPt = widthOf(words, index, sizePt);
    if (!fits(x + wordPt, widthPt)) {
      if (!fits(wordPt, widthPt) || hasLooseJoint(wordAt(words, index))) return undefined;
      lines.push(lineOf(words, first, index - 1, inkEnd, false));
      first = index;
      x = 0;
    }
    inkEnd = x + wordPt;
    x = inkEnd + spacesAfter(words, index, sizePt);
  }
  if (words.starts.length > 0) lines.push(lineOf(words, first, words.starts.length - 1, inkEnd, true));
  return lines;
}

function wordAt({ text, starts, ends }: WordsOfRun, index: number): string {
  return text.slice(starts[index], ends[index]);
}

/** The words from `first` to `last` as a line; one space parts it from the next. */
function lineOf(
  { text, face, starts, ends }: WordsOfRun,
  first: number,
  last: number,
  widthPt: number,
  isLast: boolean,
): Line {
  const line = text.slice(starts[first], (ends[last] ?? 0) + (isLast ? 0 : 1));
  return { fragments: [{ text: line, face, x: 0, widthPt }], widthPt };
}
