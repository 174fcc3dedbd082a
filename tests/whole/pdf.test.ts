import { describe, expect, test } from 'vitest';
import { makePapers } from '../../src/kettlebook';
import type { MadePaper } from '../../src/paper/paper';
import { english } from '../helpers/english';
import { pdfBreaches } from '../helpers/pdfChecks';
import { PdfFile } from '../helpers/pdfFile';
import { lettersIn } from '../helpers/pdfLetters';
import { openPdf, textOf } from '../helpers/pdfText';
import { demo, demoNames, goodOf, workshop } from './made';

const shop = await workshop();

async function make(name: string): Promise<readonly MadePaper[]> {
  const list: MadePaper[] = [];
  goodOf(await makePapers(await demo(name), shop.papers, shop, (paper) => void list.push(paper)));
  return list;
}

describe.each(demoNames)('the files of %s', (name) => {
  const all = make(name);

  test('keep every clause of PDF/UA-1 and PDF/A-2 that is checked', async () => {
    for (const paper of await all) {
      for (const { fileName, bytes } of [paper, ...(paper.sheets === undefined ? [] : [paper.sheets])])
        expect(pdfBreaches(new PdfFile(Buffer.from(bytes))), fileName).toEqual([]);
    }
  }, 300_000);

  test('show beside every step whose caution is said above the letter of that caution, higher up on its page', async () => {
    let marks = 0;
    for (const { name: paper, bytes, blocks } of await all) {
      const found = await lettersIn(bytes, blocks, english.furniture.sheets.saidAbove);
      expect(found.faults, paper).toEqual([]);
      marks += found.marks;
    }
    expect(marks).toBeGreaterThan(5);
  });

  test('are the same to the byte when made again', async () => {
    const again = await make(name);
    const first = await all;
    expect(again.length).toBe(shop.papers.length);
    for (const [index, paper] of again.entries()) {
      expect(
        Buffer.compare(Buffer.from(paper.bytes), Buffer.from(first[index]?.bytes ?? [])),
        paper.name,
      ).toBe(0);
    }
  });

  test('say their title and language, and read back with as many pages as were laid out', async () => {
    const { spec } = (await demo(name)).car;
    for (const paper of await all) {
      const pdf = await openPdf(paper.bytes);
      const { info } = await pdf.getMetadata();
      expect(pdf.numPages).toBe(paper.laidOut?.pages.length);
      expect((info as { Title?: string }).Title).toBe(`${spec.car.name}: ${paper.title}`);
      expect((info as { Language?: string }).Language).toBe(spec.print.language);
    }
  });
});

test('the words of the manual can be taken out of the file again, in order', async () => {
  const manual = (await make('marigold')).find((paper) => paper.name === 'owners-manual');
  if (manual === undefined) throw new Error('there is no manual');
  const laid = manual.laidOut?.pages ?? [];
  const lettersOf = (texts: readonly string[]) => texts.join('').replace(/[\s\u00a0]+/g, '');
  const pages = await textOf(manual.bytes);
  expect(pages.length).toBe(laid.length);
  for (const [index, page] of laid.entries()) {
    const placed = page.items.flatMap((item) => {
      if (item.kind === 'text') return [item.text];
      return item.kind === 'shape' && item.shape.kind === 'text' ? [item.shape.text] : [];
    });
    const found = lettersOf((pages[index] ?? []).map((piece) => piece.text));
    expect(found.length, `page ${index + 1}`).toBe(lettersOf(placed).length);
    for (const text of placed) expect(found, `page ${index + 1}`).toContain(lettersOf([text]));
  }
});

test('bookmarks lead to the chapters, and links lead somewhere', async () => {
  const manual = (await make('marigold')).find((paper) => paper.name === 'owners-manual');
  if (manual === undefined) throw new Error('there is no manual');
  const pdf = await openPdf(manual.bytes);
  const outline = await pdf.getOutline();
  const titles = outline.map((entry) => entry.title);
  for (const chapter of [
    'Read this first',
    'Controls, by place',
    'Firing up',
    'When something is wrong',
    'Record of issues',
  ])
    expect(titles).toContain(chapter);
  let links = 0;
  for (let number = 1; number <= Math.min(pdf.numPages, 12); number += 1) {
    const annotations = await (await pdf.getPage(number)).getAnnotations();
    for (const annotation of annotations) {
      if (annotation.subtype !== 'Link') continue;
      links += 1;
      expect(await pdf.getDestination(String(annotation.dest)), String(annotation.dest)).not.toBeNull();
    }
  }
  expect(links).toBeGreaterThan(20);
});
