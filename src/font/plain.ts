/**
 * Shaping of plain words: letters that join into ligatures and pairs that move together, and nothing else.
 *
 * Nearly every word of a paper is of this kind, and a general shaper takes most of a run's time for them. What is not
 * surely plain (letters with marks of their own, slanted fractions, a font with more rules) is left to the general one.
 */
import { classOf, coverageOf, featuresOf, from, type Lookups, type Subtable } from './openType';
import { type Glyphs, glyphsOf, tablesOf } from './sfnt';

/** A word as glyphs, in the font's own units. */
export interface ShapedWord {
  readonly advance: number;
  readonly glyphs: readonly ShapedGlyph[];
}

/** One glyph: the letters it stands for, its own width, how far the pen moves, how far it is set off to the right. */
export interface ShapedGlyph {
  readonly id: number;
  readonly codePoints: readonly number[];
  readonly width: number;
  readonly advance: number;
  readonly offset: number;
}

/** Shapes a word, or nothing if it is not plain in this font. */
export type PlainShaper = (word: string) => ShapedWord | undefined;

/** Features a general shaper applies to Latin text unasked. */
const unasked = new Set(
  'rvrn rclt rlig calt clig liga locl ccmp abvm blwm mark mkmk curs dist kern rtlm rtla ltra ltrm'.split(' '),
);

/** A shaper of the plain words of a font; one that shapes none if the font has rules of another kind. */
export function plainShaper(sfnt: Uint8Array): PlainShaper {
  const tables = tablesOf(sfnt);
  const glyphs = glyphsOf(tables);
  const [gsub, gpos] = [tables.get('GSUB'), tables.get('GPOS')];
  if (glyphs === undefined || gsub === undefined || gpos === undefined) return () => undefined;
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
  if (strange || !fits) return () => undefined;
  const kern = kerning(pairs);
  return (word) => shapePlain(word, glyphs, ligatures, kern);
}

const isLigature = ({ type }: Subtable): boolean => type === 4;

/** Pairs that move the pen after the first glyph and nothing else. */
const isPair = ({ type, view }: Subtable): boolean =>
  type === 2 && view.getUint16(4) === movesAdvance && view.getUint16(6) === 0;

const movesAdvance = 0x0004;

function shapePlain(
  word: string,
  glyphs: Glyphs,
  ligatures: Lookups,
  kern: (left: number, right: number) => number,
): ShapedWord | undefined {
  const letters: { id: number; codePoints: readonly number[] }[] = [];
  for (let at = 0; at < word.length; at += 1) {
    const code = word.charCodeAt(at);
    const id = isPlain(code) ? glyphs.of(code) : 0;
    if (id === 0) return undefined;
    letters.push({ id, codePoints: [code] });
  }
  for (const lookup of ligatures) join(letters, lookup);
  let advance = 0;
  const shaped = letters.map(({ id, codePoints }, index): ShapedGlyph => {
    const next = letters[index + 1];
    const width = glyphs.advance(id);
    const moved = width + (next === undefined ? 0 : kern(id, next.id));
    advance += moved;
    return { id, codePoints, width, advance: moved, offset: 0 };
  });
  return { advance, glyphs: shaped };
}

/** Latin letters, figures and signs without marks that are put on others; no soft hyphen, no fraction slash. */
function isPlain(code: number): boolean {
  if (code < 0x180) return code >= 0x20 && (code < 0x7f || code > 0x9f) && !putOn.has(code);
  return (code >= 0x2010 && code <= 0x2027) || (code >= 0x2030 && code <= 0x203a) || code === 0x2212;
}

/** Grave, diaeresis, soft hyphen, macron, acute, cedilla by themselves. */
const putOn = new Set([0x60, 0xa8, 0xad, 0xaf, 0xb4, 0xb8]);

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
