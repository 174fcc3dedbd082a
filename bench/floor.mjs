/**
 * The floor: a bare script that puts the manual's lines at the places where the program has put them, one `doc.text` each,
 * and does nothing else: no shapes, no tags, no bookmarks, no layout, no checks.
 *
 * `node bench/floor.mjs LINES.json OUT.pdf`; the lines come from `bench/lines.ts`.
 */
import { createWriteStream, readFileSync } from 'node:fs';
import { finished } from 'node:stream/promises';
import PDFDocument from 'pdfkit';

const [linesFile, outFile] = process.argv.slice(2);
const files = {
  text: 'IBMPlexSans-Regular',
  'text-italic': 'IBMPlexSans-Italic',
  'text-bold': 'IBMPlexSans-Bold',
  narrow: 'IBMPlexSansCondensed-Regular',
  'narrow-bold': 'IBMPlexSansCondensed-Bold',
};
const pages = JSON.parse(readFileSync(linesFile, 'utf8'));
const doc = new PDFDocument({ autoFirstPage: false });
for (const [face, file] of Object.entries(files))
  doc.registerFont(face, new URL(`../shared/fonts/${file}.woff`, import.meta.url).pathname);
const out = doc.pipe(createWriteStream(outFile));
for (const { size, lines } of pages) {
  doc.addPage({ size, margin: 0 });
  for (const [x, y, face, sizePt, text] of lines)
    doc.font(face, sizePt).text(text, x, y, { lineBreak: false, baseline: 'alphabetic' });
}
doc.end();
await finished(out);
