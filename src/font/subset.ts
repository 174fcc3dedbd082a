/**
 * A TrueType font cut down to some of its glyphs, each under the number it has in the whole font, so that a word has the same
 * glyph numbers in every file (ISO/IEC 14496-22; which tables a PDF needs: ISO 32000-1, 9.9).
 */
import { type FontTables, viewOf } from './fontFile';

/**
 * The font file with `glyphs` and the parts they are made of; all others are empty. With `letters`, code points of the basic
 * plane with their glyphs, it says which glyph each stands for. Throws if it has no TrueType outlines.
 */
export function subsetOf(
  tables: FontTables,
  glyphs: Iterable<number>,
  letters?: ReadonlyMap<number, number>,
): Uint8Array {
  const outlines = new Outlines(tables);
  const kept = [...outlines.withParts(glyphs)].sort((a, b) => a - b);
  const count = (kept[kept.length - 1] ?? 0) + 1;
  const { glyf, loca } = outlines.cut(kept, count);
  const files = new Map<string, Uint8Array>();
  for (const tag of ['cvt ', 'fpgm', 'prep']) {
    const table = tables.bytes(tag);
    if (table !== undefined) files.set(tag, table);
  }
  files.set('glyf', glyf);
  files.set('loca', loca);
  files.set('head', changed(wanted(tables, 'head'), { 8: 0, 10: 0, 50: 1 }));
  files.set('hhea', changed(wanted(tables, 'hhea'), { 34: count }));
  files.set('hmtx', widths(tables, kept, count));
  files.set('maxp', changed(wanted(tables, 'maxp'), { 4: count }));
  if (letters !== undefined) files.set('cmap', letterMap(letters));
  return assembled(files);
}

/** The table `tag`, which every font with TrueType outlines has. */
function wanted(tables: FontTables, tag: string): Uint8Array {
  const table = tables.bytes(tag);
  if (table === undefined)
    throw new Error(`the font has no table \`${tag}\`: only TrueType outlines can be embedded`);
  return table;
}

/** A copy of a table with 16-bit numbers changed. */
function changed(table: Uint8Array, numbers: Readonly<Record<number, number>>): Uint8Array {
  const copy = table.slice();
  const view = viewOf(copy);
  for (const [at, value] of Object.entries(numbers)) view.setUint16(Number(at), value);
  return copy;
}

/** The outlines of a font. */
class Outlines {
  private readonly glyf: Uint8Array;
  private readonly view: DataView;
  private readonly loca: DataView;
  private readonly hasLongOffsets: boolean;

  constructor(tables: FontTables) {
    this.glyf = wanted(tables, 'glyf');
    this.view = viewOf(this.glyf);
    this.loca = viewOf(wanted(tables, 'loca'));
    this.hasLongOffsets = viewOf(wanted(tables, 'head')).getInt16(50) === 1;
  }

  /** The glyphs, the parts they are put together from, and the glyph that stands for what a font lacks. */
  withParts(glyphs: Iterable<number>): ReadonlySet<number> {
    const all = new Set([0, ...glyphs]);
    for (const glyph of all) for (const part of this.partsOf(glyph)) all.add(part);
    return all;
  }

  /** The outlines of `kept` one after the other, and where each begins. */
  cut(kept: readonly number[], count: number): { readonly glyf: Uint8Array; readonly loca: Uint8Array } {
    const parts = kept.map((glyph) => this.glyf.subarray(this.offset(glyph), this.offset(glyph + 1)));
    const glyf = new Uint8Array(parts.reduce((sum, { length }) => sum + padded(length), 0));
    const loca = new Uint8Array(4 * (count + 1));
    const starts = viewOf(loca);
    let at = 0;
    let next = 0;
    for (let glyph = 0; glyph <= count; glyph += 1) {
      starts.setUint32(4 * glyph, at);
      const part = kept[next] === glyph ? parts[next++] : undefined;
      if (part === undefined) continue;
      glyf.set(part, at);
      at += padded(part.length);
    }
    return { glyf, loca };
  }

  private offset(glyph: number): number {
    return this.hasLongOffsets ? this.loca.getUint32(4 * glyph) : 2 * this.loca.getUint16(2 * glyph);
  }

  private partsOf(glyph: number): readonly number[] {
    const start = this.offset(glyph);
    if (this.offset(glyph + 1) === start || this.view.getInt16(start) >= 0) return [];
    const parts: number[] = [];
    let flags = morePartsFlag;
    for (let at = start + 10; flags & morePartsFlag; ) {
      flags = this.view.getUint16(at);
      parts.push(this.view.getUint16(at + 2));
      at += 4 + (flags & wordsFlag ? 4 : 2) + scaleBytes(flags);
    }
    return parts;
  }
}

const wordsFlag = 0x0001;
const morePartsFlag = 0x0020;

/** How many bytes say how a part is scaled: one number, two, or a matrix. */
function scaleBytes(flags: number): number {
  if (flags & 0x0008) return 2;
  if (flags & 0x0040) return 4;
  return flags & 0x0080 ? 8 : 0;
}

const padded = (length: number): number => (length + 3) & ~3;

/** `hmtx` with a width and a left side for every glyph up to `count`, those that are not kept left at nothing. */
function widths(tables: FontTables, kept: readonly number[], count: number): Uint8Array {
  const whole = viewOf(wanted(tables, 'hmtx'));
  const wide = viewOf(wanted(tables, 'hhea')).getUint16(34);
  const cut = new Uint8Array(4 * count);
  const view = viewOf(cut);
  for (const glyph of kept) {
    view.setUint16(4 * glyph, whole.getUint16(4 * Math.min(glyph, wide - 1)));
    const left = glyph < wide ? 4 * glyph + 2 : 4 * wide + 2 * (glyph - wide);
    view.setInt16(4 * glyph + 2, whole.getInt16(left));
  }
  return cut;
}

/** `cmap` with one table of format 4 for Windows, Unicode BMP: a segment for each letter, and the one that ends them all. */
function letterMap(letters: ReadonlyMap<number, number>): Uint8Array {
  const sorted = [...letters].sort(([a], [b]) => a - b);
  const segments = [
    ...sorted.map(([letter, glyph]) => ({ letter, delta: glyph - letter })),
    { letter: 0xffff, delta: 1 },
  ];
  const count = segments.length;
  const length = 16 + 8 * count;
  const table = new Uint8Array(12 + length);
  const view = viewOf(table);
  const steps = Math.floor(Math.log2(count));
  const head = [
    0,
    1,
    3,
    1,
    0,
    12,
    4,
    length,
    0,
    2 * count,
    2 ** (steps + 1),
    steps,
    2 * count - 2 ** (steps + 1),
  ];
  for (const [index, number] of head.entries()) view.setUint16(2 * index, number);
  segments.forEach(({ letter, delta }, index) => {
    const at = 26 + 2 * index;
    view.setUint16(at, letter);
    view.setUint16(at + 2 * count + 2, letter);
    view.setUint16(at + 4 * count + 2, delta & 0xffff);
  });
  return table;
}

/** A font file of these tables. */
function assembled(tables: ReadonlyMap<string, Uint8Array>): Uint8Array {
  const sorted = [...tables].sort(([a], [b]) => (a < b ? -1 : 1));
  const start = 12 + 16 * sorted.length;
  const file = new Uint8Array(sorted.reduce((sum, [, { length }]) => sum + padded(length), start));
  const view = viewOf(file);
  const steps = Math.floor(Math.log2(sorted.length));
  view.setUint32(0, 0x00010000);
  view.setUint16(4, sorted.length);
  view.setUint16(6, 2 ** steps * 16);
  view.setUint16(8, steps);
  view.setUint16(10, (sorted.length - 2 ** steps) * 16);
  let at = start;
  sorted.forEach(([tag, bytes], index) => {
    const entry = 12 + 16 * index;
    for (let letter = 0; letter < 4; letter += 1) view.setUint8(entry + letter, tag.charCodeAt(letter));
    file.set(bytes, at);
    view.setUint32(entry + 4, sumOf(view, at, padded(bytes.length)));
    view.setUint32(entry + 8, at);
    view.setUint32(entry + 12, bytes.length);
    at += padded(bytes.length);
  });
  const head = sorted.findIndex(([tag]) => tag === 'head');
  const place = view.getUint32(12 + 16 * head + 8) + 8;
  view.setUint32(place, (0xb1b0afba - sumOf(view, 0, file.length)) >>> 0);
  return file;
}

/** Sum of a stretch of a file as 32-bit numbers, as checksums of tables are worked out. */
function sumOf(view: DataView, from: number, length: number): number {
  let sum = 0;
  for (let at = from; at < from + length; at += 4) sum = (sum + view.getUint32(at)) | 0;
  return sum >>> 0;
}
