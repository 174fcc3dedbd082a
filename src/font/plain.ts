/**
 * Shaping of plain words: letters that join into ligatures and pairs that move together, and nothing else.
 *
 * Nearly every word of a paper is of this kind, and a general shaper takes most of a run's time for them. What is not
 * surely plain (letters with marks of their own, slanted fractions, a font with more rules) is left to the general one.
 */
import type { FontTables } from './fontFile';
import { classOf, coverageOf, coveredBy, featuresOf, from, type Lookups, type Subtable } from './openType';
import { type Glyphs, glyphsOf } from './sfnt';

/** A word as glyphs, in the font's own units. */
export interface ShapedWord {
  readonly advance: number;
  readonly glyphs: readonly number[];
  /** How far the pen moves at each glyph. */
  readonly moves: readonly number[];
  /** How far each glyph is set off to the right; left out if none is. */
  readonly offsets?: readonly number[];
  /** The letters that each glyph stands for; left out if they are the letters of the word, one by one. */
  readonly letters?: readonly (readonly number[])[];
}

/** Shapes plain words; what is not plain in its font it leaves undone. */
export interface PlainShaper {
  shape(word: string): ShapedWord | undefined;
  /** How far a word moves the pen: less work than shaping it. */
  advanceOf(word: string): number | undefined;
}

/** Features a general shaper applies to Latin text unasked. */
const unasked = new Set(
  'rvrn rclt rlig calt clig liga locl ccmp abvm blwm mark mkmk curs dist kern rtlm rtla ltra ltrm'.split(' '),
);

const shapesNothing: PlainShaper = { shape: () => undefined, advanceOf: () => undefined };

/** A shaper of the plain words of a font; one that shapes none if the font has rules of another kind. */
export function plainShaper(tables: FontTables): PlainShaper {
  const glyphs = glyphsOf(tables);
  const [gsub, gpos] = [tables.view('GSUB'), tables.view('GPOS')];
  if (glyphs === undefined || gsub === undefined || gpos === undefined) return shapesNothing;
  const substitutions = featuresOf(gsub, 7);
  const positions = featuresOf(gpos, 9);
  const ligatures = substitutions.get('liga') ?? [];
  const pairs = positions.get('kern') ?? [];
  // marks and their composition do not touch plain letters
  const known = new Set(['liga', 'kern', 'ccmp', 'mark', 'mkmk']);
  const strange = [...substitutions.keys(), ...positions.keys()].some(
    (tag) => unasked.has(tag) && !known.has(tag),
  );
  const fits = ligatures.flat().every(isLigature) && pairs.flat().every(isPair) && pairs.length > 0;
  if (strange || !fits) return shapesNothing;
  const marks = [...(positions.get('mark') ?? []), ...(positions.get('mkmk') ?? [])].flat().flatMap(covered);
  return new PlainFont(glyphs, new Set(marks), ligatures, kerning(pairs));
}

/** The glyphs that a subtable begins with: of ligatures the first, of marks the marks. */
const covered = ({ view }: Subtable): readonly number[] => coveredBy(view, view.getUint16(2));

const isLigature = ({ type }: Subtable): boolean => type === 4;

/** Pairs that move the pen after the first glyph and nothing else. */
const isPair = ({ type, view }: Subtable): boolean =>
  type === 2 && view.getUint16(4) === movesAdvance && view.getUint16(6) === 0;

const movesAdvance = 0x0004;

/** One more than the last code point of a plain letter. */
const plainEnd = 0x2220;

class PlainFont implements PlainShaper {
  /** One more than the glyph of each letter, 1 if it is not plain; 0 if it has not been looked up. */
  private readonly known = new Uint16Array(plainEnd);
  /** Glyphs that a ligature begins with. */
  private readonly joining: ReadonlySet<number>;

  constructor(
    private readonly glyphs: Glyphs,
    /** Glyphs that are put on the letter before them. */
    private readonly marks: ReadonlySet<number>,
    private readonly ligatures: Lookups,
    private readonly kern: (left: number, right: number) => number,
  ) {
    this.joining = new Set(ligatures.flat().flatMap(covered));
  }

  advanceOf(word: string): number | undefined {
    let advance = 0;
    let before = 0;
    for (let at = 0; at < word.length; at += 1) {
      const glyph = this.glyphOf(word.charCodeAt(at));
      if (glyph === 0) return undefined;
      if (this.joining.has(glyph)) return this.shape(word)?.advance;
      if (before !== 0) advance += this.kern(before, glyph);
      advance += this.glyphs.advance(glyph);
      before = glyph;
    }
    return advance;
  }

  shape(word: string): ShapedWord | undefined {
    const glyphs: number[] = [];
    let joins = false;
    for (let at = 0; at < word.length; at += 1) {
      const glyph = this.glyphOf(word.charCodeAt(at));
      if (glyph === 0) return undefined;
      joins ||= this.joining.has(glyph);
      glyphs.push(glyph);
    }
    if (!joins) return this.set(glyphs);
    const letters = glyphs.map((id, at) => ({ id, codePoints: [word.charCodeAt(at)] }));
    for (const lookup of this.ligatures) join(letters, lookup);
    if (letters.length === glyphs.length) return this.set(letters.map(({ id }) => id));
    return {
      ...this.set(letters.map(({ id }) => id)),
      letters: letters.map(({ codePoints }) => codePoints),
    };
  }

  /** Glyphs side by side, pairs moved together. */
  private set(glyphs: readonly number[]): ShapedWord {
    let advance = 0;
    const moves: number[] = [];
    for (let at = 0; at < glyphs.length; at += 1) {
      const glyph = glyphs[at] ?? 0;
      const next = glyphs[at + 1];
      const moved = this.glyphs.advance(glyph) + (next === undefined ? 0 : this.kern(glyph, next));
      moves.push(moved);
      advance += moved;
    }
    return { advance, glyphs, moves };
  }

  /** The glyph of a plain letter; 0 if the letter is not plain or the font lacks it. */
  private glyphOf(code: number): number {
    if (code >= plainEnd) return 0;
    const known = this.known[code] ?? 0;
    if (known !== 0) return known - 1;
    const found = isPlain(code) ? this.glyphs.of(code) : 0;
    const glyph = this.marks.has(found) ? 0 : found;
    this.known[code] = glyph + 1;
    return glyph;
  }
}

/** Latin letters, figures, signs and arrows without marks that are put on others; no soft hyphen, no fraction slash. */
function isPlain(code: number): boolean {
  if (code < 0x180) return code >= 0x20 && (code < 0x7f || code > 0x9f) && !putOn.has(code);
  if (code < 0x2190) return (code >= 0x2010 && code <= 0x2027) || (code >= 0x2030 && code <= 0x203a);
  return code <= 0x2193 || code === 0x2212;
}

/** Diaeresis, soft hyphen, macron, acute, cedilla by themselves. */
const putOn = new Set([0xa8, 0xad, 0xaf, 0xb4, 0xb8]);

type Letter = { readonly id: number; readonly codePoints: readonly number[] };

/** Puts ligatures in place of the letters they join. */
function join(letters: Letter[], lookup: readonly Subtable[]): void {
  for (let at = 0; at < letters.length; at += 1) {
    for (const { view } of lookup) {
      const found = ligatureAt(letters, at, view);
      if (found === undefined) continue;
      const joined = letters.slice(at, at + found.length).flatMap(({ codePoints }) => codePoints);
      letters.splice(at, found.length, { id: found.id, codePoints: joined });
      break;
    }
  }
}

function ligatureAt(
  letters: readonly Letter[],
  at: number,
  view: DataView,
): { readonly id: number; readonly length: number } | undefined {
  const index = coverageOf(view, view.getUint16(2), letters[at]?.id ?? 0);
  if (index === -1) return undefined;
  const set = from(view, view.getUint16(6 + 2 * index));
  for (let each = 0; each < set.getUint16(0); each += 1) {
    const ligature = set.getUint16(2 + 2 * each);
    const length = set.getUint16(ligature + 2);
    let same = 1;
    while (same < length && letters[at + same]?.id === set.getUint16(ligature + 2 + 2 * same)) same += 1;
    if (same === length) return { id: set.getUint16(ligature), length };
  }
  return undefined;
}

/** How far a pair moves together (below zero) or apart; each pair is looked up once. */
function kerning(lookups: Lookups): (left: number, right: number) => number {
  const known = new Map<number, number>();
  return (left, right) => {
    const pair = left * 0x10000 + right;
    const moved = known.get(pair);
    if (moved !== undefined) return moved;
    let sum = 0;
    for (const lookup of lookups) sum += pairIn(lookup, left, right);
    known.set(pair, sum);
    return sum;
  };
}

/** The first subtable that has the pair decides. */
function pairIn(lookup: readonly Subtable[], left: number, right: number): number {
  for (const { view } of lookup) {
    const index = coverageOf(view, view.getUint16(2), left);
    if (index === -1) continue;
    if (view.getUint16(0) === 2) return classPair(view, left, right);
    const found = listedPair(view, view.getUint16(10 + 2 * index), right);
    if (found !== undefined) return found;
  }
  return 0;
}

function classPair(view: DataView, left: number, right: number): number {
  const first = classOf(view, view.getUint16(8), left);
  const second = classOf(view, view.getUint16(10), right);
  return view.getInt16(16 + 2 * (first * view.getUint16(14) + second));
}

function listedPair(view: DataView, set: number, right: number): number | undefined {
  for (let low = 0, high = view.getUint16(set) - 1; low <= high; ) {
    const middle = (low + high) >> 1;
    const entry = set + 2 + 4 * middle;
    const glyph = view.getUint16(entry);
    if (glyph === right) return view.getInt16(entry + 2);
    if (glyph < right) low = middle + 1;
    else high = middle - 1;
  }
  return undefined;
}
