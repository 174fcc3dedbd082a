/**
 * The font that fields are filled in with: every letter of Windows' Western list, called by one byte each, so that a reader
 * program can set letters that nobody has typed yet (ISO 32000-1, 9.6.3, 12.7.3.3 and Annex D).
 *
 * The fonts of the text cannot serve: they hold only the glyphs that were used, and call them by number. One of the fonts that
 * every reader has of its own would do, but is not embedded, and so not allowed in a file for keeping (PDF/A).
 */
import { glyphsOf } from '../font/sfnt';
import type { Shaper } from '../font/shaper';
import { subsetOf } from '../font/subset';
import { descriptorOf, nonsymbolicFlag, postScriptName, tagOf } from './embed';
import type { ObjectStore } from './objects';
import { num, ref } from './syntax';

const firstCode = 0x20;
const lastCode = 0xff;

/** What the codes from 0x80 to 0x9f stand for in `WinAnsiEncoding`; the rest is Latin-1. 0 where they stand for nothing. */
const between: readonly number[] = [
  0x20ac, 0, 0x201a, 0x0192, 0x201e, 0x2026, 0x2020, 0x2021, 0x02c6, 0x2030, 0x0160, 0x2039, 0x0152, 0,
  0x017d, 0, 0, 0x2018, 0x2019, 0x201c, 0x201d, 0x2022, 0x2013, 0x2014, 0x02dc, 0x2122, 0x0161, 0x203a,
  0x0153, 0, 0x017e, 0x0178,
];

/** The letter of a code; nothing for a code without one. */
function letterOf(code: number): number | undefined {
  if (code === 0x7f) return undefined;
  const letter = code >= 0x80 && code < 0xa0 ? (between[code - 0x80] ?? 0) : code;
  return letter === 0 ? undefined : letter;
}

/** Writes the font whole as far as the list goes; gives the number of its object. */
export function embedFieldFont(shaper: Shaper, store: ObjectStore): number {
  const { tables, heights } = shaper;
  const scale = 1000 / heights.unitsPerEm;
  const letters = glyphsOf(tables);
  if (letters === undefined) throw new Error('a font without a Unicode table cannot be typed with');
  const glyphs = new Map<number, number>();
  const widths: string[] = [];
  for (let code = firstCode; code <= lastCode; code += 1) {
    const letter = letterOf(code);
    const glyph = letter === undefined ? 0 : letters.of(letter);
    if (letter !== undefined && glyph !== 0) glyphs.set(letter, glyph);
    widths.push(glyph === 0 ? '0' : num(shaper.widthOf(glyph) * scale));
  }
  const kept = [...glyphs.values()].sort((a, b) => a - b);
  const name = `${tagOf(kept)}+${postScriptName(tables.view('name'))}`;
  const program = subsetOf(tables, kept, glyphs);
  const file = store.addStream(`/Length1 ${program.length}`, program);
  const descriptor = store.add(descriptorOf(shaper, name, file, nonsymbolicFlag));
  return store.add(
    `<</Type /Font /Subtype /TrueType /BaseFont /${name} /Encoding /WinAnsiEncoding /FirstChar ${firstCode}` +
      ` /LastChar ${lastCode} /Widths [${widths.join(' ')}] /FontDescriptor ${ref(descriptor)}>>`,
  );
}
