/**
 * Text of a PDF file with its places, as a widely used reader finds it (pdf.js).
 */
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { PDFDocumentProxy } from 'pdfjs-dist/types/src/display/api';
import { type Dict, Name, operations, type PdfFile } from './pdfFile';

/** A run of text on a page; `y` counts from the top of the page to the baseline. */
export interface FoundText {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly size: number;
}

/** Opens a file; close it with `destroy`. */
export function openPdf(bytes: Uint8Array): Promise<PDFDocumentProxy> {
  return getDocument({ data: bytes.slice(), useSystemFonts: false, verbosity: 0 }).promise;
}

/** The runs of text on each page, in the order they are written. */
export async function textOf(bytes: Uint8Array): Promise<readonly (readonly FoundText[])[]> {
  const pdf = await openPdf(bytes);
  const pages: FoundText[][] = [];
  for (let number = 1; number <= pdf.numPages; number += 1) {
    const page = await pdf.getPage(number);
    const { height } = page.getViewport({ scale: 1 });
    const content = await page.getTextContent({ disableNormalization: true });
    pages.push(
      content.items.flatMap((item) =>
        'str' in item && item.str !== ''
          ? [
              {
                text: item.str,
                x: item.transform[4],
                y: height - item.transform[5],
                width: item.width,
                size: Math.hypot(item.transform[2], item.transform[3]),
              },
            ]
          : [],
      ),
    );
  }
  await pdf.destroy();
  return pages;
}

/** What each text operator of a page shows, decoded by the fonts' own tables: exactly what a copy would give. */
export function shownText(file: PdfFile, pageIndex: number): readonly string[] {
  const page = file.dict(file.pages[pageIndex]);
  const fonts = file.dict(file.dict(page.Resources).Font);
  let letters: ReadonlyMap<number, string> = new Map();
  return operations(file.stream(page.Contents)).flatMap(({ operator, operands: [first] }) => {
    if (operator === 'Tf' && first instanceof Name) letters = lettersOf(file, file.dict(fonts[first.name]));
    if (operator !== 'Tj' && operator !== 'TJ') return [];
    const strings = Array.isArray(first) ? first.filter((one) => typeof one === 'string') : [first];
    const codes = Buffer.from(strings.join(''), 'latin1');
    return [
      Array.from(
        { length: codes.length / 2 },
        (_, at) => letters.get(codes.readUInt16BE(at * 2)) ?? '?',
      ).join(''),
    ];
  });
}

/** What each glyph of a font stands for, as text. */
function lettersOf(file: PdfFile, font: Dict): ReadonlyMap<number, string> {
  const table = lettersByGlyph(file.stream(font.ToUnicode).bytes.toString('latin1'));
  const text = (hex: string) => Buffer.from(hex, 'hex').swap16().toString('utf16le');
  return new Map([...table].map(([glyph, hex]) => [glyph, text(hex)]));
}

/** The `bfchar` lines of a ToUnicode table: letters in UTF-16 as hexadecimal digits, by glyph. */
export function lettersByGlyph(table: string): ReadonlyMap<number, string> {
  const lists = [...table.matchAll(/\d+ beginbfchar\n([\s\S]*?)endbfchar/g)].map(([, list = '']) => list);
  const lines = lists.flatMap((list) => [...list.matchAll(/^<([0-9A-F]{4})> <([0-9A-F]*)>$/gm)]);
  return new Map(lines.map(([, glyph = '', hex = '']) => [Number.parseInt(glyph, 16), hex]));
}
