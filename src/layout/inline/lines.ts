/**
 * Breaks tokens into lines: as many words on each as fit, ragged right. A word that does not fit is broken at its
 * dashes and slashes; only a word longer than a whole line is broken at its hyphens or, if that is not enough, between letters.
 * Nothing is dropped.
 */
import type { Face, FontSet } from '../../font/metrics';
import { fits } from '../fits';
import { breakOffsets, letterOffsets, looseOffsets } from './opportunities';
import { plainLines, tokensOf } from './plain';
import { type Cut, isPlain, type LinkTo, type Token } from './tokens';

/** Text of one face standing together on a line. `text` may end in the space that parts it from the next line. */
export interface Fragment {
  readonly text: string;
  readonly face: Face;
  /** From the start of the line. */
  readonly x: number;
  /** Without spaces at the end. */
  readonly widthPt: number;
  readonly link?: LinkTo;
}

/** One line of text. */
export interface Line {
  readonly fragments: readonly Fragment[];
  readonly widthPt: number;
}

/** Lines, and what had to be forced to get them. */
export interface Broken {
  readonly lines: readonly Line[];
  /** Words broken between letters. */
  readonly brokenWords: readonly string[];
  /** A letter was wider than its line. */
  readonly overfull: boolean;
}

type Draft = { -readonly [K in keyof Fragment]: Fragment[K] };

/**
 * Breaks text, set at `sizePt`, into lines no wider than `widthPt`, the first of them from `fromX` on. No words give no
 * lines; where not even one fits on what is left of the first, that line is empty.
 */
export function breakLines(cut: Cut, sizePt: number, widthPt: number, fonts: FontSet, fromX = 0): Broken {
  if (!isPlain(cut)) return new LineBreaker(cut.slice(), sizePt, widthPt, fonts, fromX).run();
  if (fromX > 0) return new LineBreaker(tokensOf(cut), sizePt, widthPt, fonts, fromX).run();
  const lines = plainLines(cut, widthPt);
  if (lines !== undefined) return { lines, brokenWords: none, overfull: false };
  return new LineBreaker(tokensOf(cut), sizePt, widthPt, fonts, 0).run();
}

const none: readonly string[] = [];

class LineBreaker {
  private readonly lines: Line[] = [];
  private readonly brokenWords = new Set<string>();
  private overfull = false;
  private fragments: Draft[] = [];
  /** Where the next letter would stand, and where the last one ended. */
  private x: number;
  private inkEnd = 0;
  /** Whether the last token placed ends a word. */
  private wordEnds = false;

  constructor(
    private readonly tokens: Token[],
    private readonly sizePt: number,
    private readonly widthPt: number,
    private readonly fonts: FontSet,
    fromX: number,
  ) {
    this.x = fromX;
  }

  run(): Broken {
    let at = 0;
    while (at < this.tokens.length) at = this.placeWord(at);
    if (this.fragments.length > 0) this.endLine(true);
    return { lines: this.lines, brokenWords: [...this.brokenWords], overfull: this.overfull };
  }

  /** Places the word that begins at token `at`, or as much of it as fits, and gives the token to go on with. */
  private placeWord(at: number): number {
    const after = this.wordEnd(at);
    let widthPt = 0;
    for (let index = at; index < after; index += 1) widthPt += this.token(index).widthPt;
    if (fits(this.x + widthPt, this.widthPt)) {
      for (let index = at; index < after; index += 1) this.append(this.token(index));
      if (this.token(after - 1).end === 'must-break') this.endLine(after === this.tokens.length);
      return after;
    }
    const joint = this.splitAt(at, after, fits(widthPt, this.widthPt) ? looseOffsets : breakOffsets);
    if (joint !== undefined) return joint;
    if (this.x > 0) {
      this.endLine(false);
      return at;
    }
    return this.splitAt(at, after, letterOffsets) ?? this.forceLetter(at);
  }

  private wordEnd(at: number): number {
    let index = at;
    while (index < this.tokens.length - 1 && this.token(index).end === 'joined') index += 1;
    return index + 1;
  }

  /** Ends the line at the last place in the word that still fits; gives nothing if none does. */
  private splitAt(
    at: number,
    after: number,
    offsetsIn: (word: string) => readonly number[],
  ): number | undefined {
    let x = this.x;
    let best: { index: number; offset: number; widthPt: number } | undefined;
    for (let index = at; index < after && fits(x, this.widthPt); index += 1) {
      const token = this.token(index);
      for (const offset of offsetsIn(token.text)) {
        const widthPt = this.fonts[token.face].widthOf(token.text.slice(0, offset), this.sizePt);
        if (!fits(x + widthPt, this.widthPt)) break;
        best = { index, offset, widthPt };
      }
      x += token.widthPt;
      const wholeMayEnd = offsetsIn === letterOffsets && index < after - 1 && fits(x, this.widthPt);
      if (wholeMayEnd) best = { index, offset: token.text.length, widthPt: token.widthPt };
    }
    if (best === undefined) return undefined;
    if (offsetsIn === letterOffsets) this.noteBroken(at, after);
    return this.splitToken(at, best.index, best.offset, best.widthPt);
  }

  /** Ends the line inside token `index`; what is left of it takes its place. */
  private splitToken(at: number, index: number, offset: number, widthPt: number): number {
    for (let before = at; before < index; before += 1) this.append(this.token(before));
    const token = this.token(index);
    if (offset === token.text.length) {
      this.append(token);
      this.endLine(false);
      return index + 1;
    }
    const part = { ...token, text: token.text.slice(0, offset), widthPt, spaces: '', spacesPt: 0 };
    this.append({ ...part, end: 'joined' });
    this.endLine(false);
    const rest = token.text.slice(offset);
    this.tokens[index] = { ...token, text: rest, widthPt: this.fonts[token.face].widthOf(rest, this.sizePt) };
    return index;
  }

  /** Not even one letter fits: it is placed all the same, so that nothing is lost, and the line is marked overfull. */
  private forceLetter(at: number): number {
    this.overfull = true;
    const token = this.token(at);
    const offset = letterOffsets(token.text)[0] ?? token.text.length;
    if (offset === token.text.length) {
      this.append(token);
      this.endLine(at === this.tokens.length - 1);
      return at + 1;
    }
    return this.splitToken(
      at,
      at,
      offset,
      this.fonts[token.face].widthOf(token.text.slice(0, offset), this.sizePt),
    );
  }

  private noteBroken(at: number, after: number): void {
    const word = this.tokens.slice(at, after).map((token) => token.text);
    this.brokenWords.add(word.join(''));
  }

  private append(token: Token): void {
    const last = this.fragments[this.fragments.length - 1];
    if (last !== undefined && last.face === token.face && last.link === token.link) {
      last.text += token.text + token.spaces;
      last.widthPt = this.x + token.widthPt - last.x;
    } else {
      const draft: Draft = {
        text: token.text + token.spaces,
        face: token.face,
        x: this.x,
        widthPt: token.widthPt,
      };
      if (token.link !== undefined) draft.link = token.link;
      this.fragments.push(draft);
    }
    this.inkEnd = this.x + token.widthPt;
    this.x = this.inkEnd + token.spacesPt;
    this.wordEnds = token.end !== 'joined';
  }

  /** Keeps one space at the end of a line where words part, so that they read apart; none at the end of the text. */
  private endLine(isLast: boolean): void {
    const last = this.fragments[this.fragments.length - 1];
    if (last !== undefined) {
      const bare = last.text.replace(spacesAtEnd, '');
      last.text = !isLast && this.wordEnds && bare !== '' ? `${bare} ` : bare;
    }
    this.lines.push({ fragments: this.fragments, widthPt: this.inkEnd });
    this.fragments = [];
    this.x = 0;
    this.inkEnd = 0;
  }

  private token(index: number): Token {
    const token = this.tokens[index];
    if (token === undefined) throw new RangeError(`no token ${index}`);
    return token;
  }
}

const spacesAtEnd = / +$/;
