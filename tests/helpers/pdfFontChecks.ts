/** Fonts: PDF/UA-1, 7.21; PDF/A-2, 6.2.11, asks the same of them in other words. */
import * as fontkit from 'fontkit';
import { type Check, nameOf, type PdfFacts, unless } from './pdfFacts';
import { type Dict, type PdfFile, Stream, type Value } from './pdfFile';
import { lettersByGlyph } from './pdfText';

/** A font that text is shown with, with what describes its glyphs. */
interface FoundFont {
  readonly name: string;
  readonly font: Dict;
  readonly described: Dict;
}

function fontsOf({ file, dicts }: PdfFacts): readonly FoundFont[] {
  return dicts
    .filter(({ Type, Subtype }) => nameOf(Type) === 'Font' && !nameOf(Subtype).startsWith('CIDFont'))
    .map((font) => ({
      name: nameOf(font.BaseFont),
      font,
      described: nameOf(font.Subtype) === 'Type0' ? file.dict(file.list(font.DescendantFonts)[0]) : font,
    }));
}

const isComposite = ({ font }: FoundFont): boolean => nameOf(font.Subtype) === 'Type0';

/** Unicode values by glyph, from the ToUnicode table; the glyphs shown must all have one. */
function unicodeBreaches(facts: PdfFacts): readonly string[] {
  const bad = ['', '0000', 'FEFF', 'FFFE'];
  return fontsOf(facts)
    .filter(isComposite)
    .flatMap(({ name, font }) => {
      const map = facts.file.get(font.ToUnicode);
      if (!(map instanceof Stream)) return [`${name} has no ToUnicode`];
      const values = [...lettersByGlyph(map.bytes.toString('latin1')).values()];
      return unless(values.length > 0, `${name} has an empty ToUnicode`).concat(
        values.flatMap((hex) => unless(!bad.includes(hex), `${name} maps a glyph to ${hex}`)),
      );
    });
}

function notdefBreaches({ contents }: PdfFacts): readonly string[] {
  return contents.flatMap((page, index) =>
    page.flatMap(({ operator, operands: [shown] }) => {
      if (operator !== 'Tj' && operator !== 'TJ') return [];
      const strings = Array.isArray(shown) ? shown.filter((one) => typeof one === 'string') : [String(shown)];
      const glyphs = strings.flatMap((one) => String(one).match(/.{2}/gs) ?? []);
      return unless(!glyphs.includes('\0\0'), `page ${index + 1} shows a letter its font lacks`);
    }),
  );
}

/** Widths by glyph, from `W` (ISO 32000-1, 9.7.4.3): a first glyph and the widths from there on. */
function widthsByGlyph(file: PdfFile, described: Dict): readonly (readonly [glyph: number, width: number])[] {
  const list = file.list(described.W);
  return list.flatMap((value, at) => {
    if (typeof value !== 'number' || at % 2 === 1) return [];
    return file.list(list[at + 1]).map((width, step) => [value + step, Number(width)] as const);
  });
}

/** Widths by letter, from `Widths`: those of the Latin-1 letters, whose codes are their code points. */
function widthsByLetter(file: PdfFile, font: Dict): readonly (readonly [letter: number, width: number])[] {
  return file
    .list(font.Widths)
    .map((width, at) => [Number(font.FirstChar) + at, Number(width)] as const)
    .filter(([code, width]) => width > 0 && (code < 0x7f || code >= 0xa0));
}

function widthBreaches(facts: PdfFacts): readonly string[] {
  const { file } = facts;
  return fontsOf(facts).flatMap((found) => {
    const program = programOf(file, found);
    if (program === undefined) return [];
    const scale = 1000 / program.unitsPerEm;
    const differs = (told: number, glyph: fontkit.Glyph | null): boolean =>
      glyph === null || Math.abs(told - glyph.advanceWidth * scale) > 1;
    const wrong = isComposite(found)
      ? widthsByGlyph(file, found.described).filter(([id, told]) => differs(told, program.getGlyph(id)))
      : widthsByLetter(file, found.font).filter(([letter, told]) =>
          differs(told, program.glyphForCodePoint(letter)),
        );
    return unless(wrong.length === 0, `${found.name} tells other widths than its program has: ${wrong[0]}`);
  });
}

function programOf(file: PdfFile, { described }: FoundFont): fontkit.Font | undefined {
  const stream: Value = file.get(file.dict(described.FontDescriptor).FontFile2);
  if (!(stream instanceof Stream)) return undefined;
  const font = fontkit.create(stream.bytes);
  return font.type === 'TTF' ? font : undefined;
}

/** The checks. */
export const fontChecks: readonly Check[] = [
  {
    clause: 'UA 7.21.3',
    breaches: (facts) =>
      fontsOf(facts)
        .filter(isComposite)
        .flatMap(({ name, font, described }) =>
          unless(
            nameOf(font.Encoding) === 'Identity-H' && nameOf(described.CIDToGIDMap) === 'Identity',
            `${name} does not call its glyphs by their numbers`,
          ),
        ),
  },
  {
    clause: 'UA 7.21.4.1',
    breaches: (facts) =>
      fontsOf(facts).flatMap(({ name, described }) =>
        unless(
          facts.file.get(facts.file.dict(described.FontDescriptor).FontFile2) instanceof Stream,
          `${name} is not embedded`,
        ),
      ),
  },
  { clause: 'UA 7.21.5', breaches: widthBreaches },
  {
    clause: 'UA 7.21.6',
    breaches: (facts) =>
      fontsOf(facts)
        .filter((found) => !isComposite(found))
        .flatMap(({ name, font, described }) =>
          unless(
            ['WinAnsiEncoding', 'MacRomanEncoding'].includes(nameOf(font.Encoding)) &&
              (Number(facts.file.dict(described.FontDescriptor).Flags) & 4) === 0,
            `${name} is called by letter, but does not say by which list`,
          ),
        ),
  },
  { clause: 'UA 7.21.7', breaches: unicodeBreaches },
  { clause: 'UA 7.21.8', breaches: notdefBreaches },
];
