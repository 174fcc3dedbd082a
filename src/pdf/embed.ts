/**
 * A font in the file: the glyphs that are used and what they stand for (ISO 32000-1, 9.7 and 9.10.3).
 */
import type { Shaper } from '../font/shaper';
import { subsetOf } from '../font/subset';
import type { ObjectStore } from './objects';
import { hex4, latin, num, nums, ref } from './syntax';

/** The letters a glyph stands for, as code points; none for a glyph that adds nothing to the letters before it. */
export type Letters = readonly number[];

/** Writes a font with its glyphs by their numbers in the whole font, as object `id`. */
export function embedFont(
  shaper: Shaper,
  letters: ReadonlyMap<number, Letters>,
  id: number,
  store: ObjectStore,
): void {
  const { tables } = shaper;
  const glyphs = [...letters.keys()].sort((a, b) => a - b);
  const name = `${tagOf(glyphs)}+${postScriptName(tables.view('name'))}`;
  const program = subsetOf(tables, glyphs);
  const file = store.addStream(`/Length1 ${program.length}`, program);
  const descriptor = store.add(descriptorOf(shaper, name, file, symbolicFlag));
  const unicode = store.addStream('', latin(unicodeMap(glyphs, letters)));
  const descendant = store.add(
    `<</Type /Font /Subtype /CIDFontType2 /BaseFont /${name}` +
      ' /CIDSystemInfo <</Registry (Adobe) /Ordering (Identity) /Supplement 0>>' +
      ` /FontDescriptor ${ref(descriptor)} /W [${widthRuns(glyphs, shaper)}] /CIDToGIDMap /Identity>>`,
  );
  store.put(
    id,
    `<</Type /Font /Subtype /Type0 /BaseFont /${name} /Encoding /Identity-H` +
      ` /DescendantFonts [${ref(descendant)}] /ToUnicode ${ref(unicode)}>>`,
  );
}

/** Six letters that tell subsets of one font apart (9.6.4), by their glyphs: an FNV-1a hash. */
export function tagOf(glyphs: readonly number[]): string {
  let hash = 0x811c9dc5;
  for (const glyph of glyphs) hash = Math.imul(hash ^ glyph, 0x01000193) >>> 0;
  let tag = '';
  for (let place = 0; place < 6; place += 1) {
    tag += String.fromCharCode(0x41 + (hash % 26));
    hash = Math.floor(hash / 26);
  }
  return tag;
}

/** The font's PostScript name (name 6 of the table `name`, for Windows), with nothing in it that a PDF name cannot hold. */
export function postScriptName(table: DataView | undefined): string {
  if (table === undefined) return 'Font';
  for (let index = 0; index < table.getUint16(2); index += 1) {
    const at = 6 + 12 * index;
    if (table.getUint16(at) !== 3 || table.getUint16(at + 6) !== 6) continue;
    const start = table.getUint16(4) + table.getUint16(at + 10);
    let name = '';
    for (let letter = 0; letter < table.getUint16(at + 8); letter += 2)
      name += String.fromCharCode(table.getUint16(start + letter));
    return name.replace(/[^A-Za-z0-9-]/g, '_');
  }
  return 'Font';
}

/** What a reader needs to put another font in the place of this one (9.8). `kind` says whether glyphs are called by letter. */
export function descriptorOf({ tables, heights }: Shaper, name: string, file: number, kind: number): string {
  const scale = 1000 / heights.unitsPerEm;
  const [head, post] = [tables.view('head'), tables.view('post')];
  const box = [36, 38, 40, 42].map((at) => (head?.getInt16(at) ?? 0) * scale);
  const slant = (post?.getInt32(4) ?? 0) / 0x10000;
  const isItalic = ((head?.getUint16(44) ?? 0) & 2) !== 0;
  const flags = kind | (isItalic ? italicFlag : 0);
  const { ascent, descent, capHeight, xHeight } = heights;
  return (
    `<</Type /FontDescriptor /FontName /${name} /Flags ${flags} /FontBBox [${nums(...box)}]` +
    ` /ItalicAngle ${num(slant)} /Ascent ${num(ascent * scale)} /Descent ${num(descent * scale)}` +
    ` /CapHeight ${num(capHeight * scale)} /XHeight ${num(xHeight * scale)} /StemV 0 /FontFile2 ${ref(file)}>>`
  );
}

/** Glyphs are called by number, not by letter (9.8.2); or by letter. */
const symbolicFlag = 4;
export const nonsymbolicFlag = 32;
const italicFlag = 64;

/** Widths of the glyphs, neighbours in one list (9.7.4.3). */
function widthRuns(glyphs: readonly number[], shaper: Shaper): string {
  const scale = 1000 / shaper.heights.unitsPerEm;
  let runs = '';
  glyphs.forEach((glyph, index) => {
    const goesOn = index > 0 && glyphs[index - 1] === glyph - 1;
    runs += goesOn ? ' ' : `${index > 0 ? '] ' : ''}${glyph} [`;
    runs += num(shaper.widthOf(glyph) * scale);
  });
  return `${runs}]`;
}

/** What is read for a glyph that adds nothing to the letters before it: a zero-width space. */
const nothingSeen: Letters = [0x200b];

/** Glyph 0 stands for a letter the font lacks; readers must not take it for the letter NUL. */
const lacking: Letters = [0xfffd];

/** What text is copied out as: the letters of each glyph, at most a hundred in one list. */
function unicodeMap(glyphs: readonly number[], letters: ReadonlyMap<number, Letters>): string {
  const lines = glyphs.map((glyph) => {
    const own = letters.get(glyph) ?? [];
    return `<${hex4(glyph)}> <${utf16(glyph === 0 ? lacking : own.length > 0 ? own : nothingSeen)}>`;
  });
  const lists: string[] = [];
  for (let start = 0; start < lines.length; start += mostLines) {
    const some = lines.slice(start, start + mostLines);
    lists.push(`${some.length} beginbfchar\n${some.join('\n')}\nendbfchar`);
  }
  return `/CIDInit /ProcSet findresource begin
12 dict begin
begincmap
/CIDSystemInfo <</Registry (Adobe) /Ordering (UCS) /Supplement 0>> def
/CMapName /Adobe-Identity-UCS def
/CMapType 2 def
1 begincodespacerange
<0000> <ffff>
endcodespacerange
${lists.join('\n')}
endcmap
CMapName currentdict /CMap defineresource pop
end
end`;
}

const mostLines = 100;

function utf16(codePoints: Letters): string {
  const text = String.fromCodePoint(...codePoints);
  let hex = '';
  for (let at = 0; at < text.length; at += 1) hex += hex4(text.charCodeAt(at));
  return hex;
}
