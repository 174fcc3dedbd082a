import { beforeAll, describe, expect, it } from 'vitest';
import type { LaidOut } from '../../src/layout/frame';
import { writePdf } from '../../src/pdf/write';
import { fontFiles, plexFonts } from '../helpers/fonts';
import { options, page, paper, textItem } from '../helpers/laidOut';
import { PdfFile } from '../helpers/pdfFile';
import { openPdf, shownText, textOf } from '../helpers/pdfText';

let bytes: Uint8Array;
let file: PdfFile;
beforeAll(async () => {
  bytes = await writePdf(paper, options);
  file = new PdfFile(bytes);
});

/** A paper of one page with no structure but its document. */
const single = (items: LaidOut['pages'][number]['items']): LaidOut => ({
  structure: [{ type: 'Document' }],
  pages: [page('1', items)],
  destinations: [],
  outline: [],
});

describe('text', () => {
  it('stands where the frame says, at its size and width', async () => {
    const found = await textOf(bytes);
    for (const [index, { items }] of paper.pages.entries()) {
      for (const item of items) {
        // the reader parts spaces at either end of a run from it
        if (item.kind !== 'text' || item.text !== item.text.trim()) continue;
        const run = found[index]?.find(
          ({ text, x }) => text.trimEnd() === item.text.trimEnd() && Math.abs(x - item.x) < 0.01,
        );
        expect(run, item.text).toBeDefined();
        expect(run?.y).toBeCloseTo(item.y, 2);
        expect(run?.size).toBeCloseTo(item.sizePt, 2);
      }
    }
  });

  it('is as wide as it was measured, also where letters are kerned or joined', async () => {
    const words = 'AV To Ty. waffle “fi” 1½ 0° – VALVE';
    const item = textItem(words, 72, 100, { sizePt: 30, face: 'narrow' });
    const [first] = await textOf(
      await writePdf(
        single([
          item,
          { ...item, y: 200, face: 'text-bold', widthPt: plexFonts['text-bold'].widthOf(words, 30) },
        ]),
        options,
      ),
    );
    const lines = [100, 200].map((y) => (first ?? []).filter((run) => Math.abs(run.y - y) < 1));
    const ends = lines.map((runs) => Math.max(...runs.map(({ x, width }) => x + width)) - 72);
    expect(ends[0]).toBeCloseTo(item.widthPt, 1);
    expect(ends[1]).toBeCloseTo(plexFonts['text-bold'].widthOf(words, 30), 1);
  });

  it('is read back letter for letter', async () => {
    const words = 'AVAVA fi fl ffi Ω µ ° ½ ¾ → ≥ “quoted” it’s 45\u00a0psi – é ü ß';
    const made = new PdfFile(await writePdf(single([textItem(words, 72, 100)]), options));
    expect(shownText(made, 0)).toEqual([words]);
  });

  it('is read back letter for letter, and is the same bytes, whatever was written before', async () => {
    // files not read before, since what was read is remembered by file
    const fresh = () => {
      const copies = Object.entries(fontFiles).map(([face, file]) => [face, file.slice()]);
      return { ...options, fontFiles: Object.fromEntries(copies) as typeof fontFiles };
    };
    const words = 'it’s 0.2, \u03a9, finé';
    const wanted = single([textItem(words, 72, 100, { face: 'narrow' })]);
    // quotes and colons are made of parts that are letters too; U+2126 has the glyph of U+03A9
    const before = single([textItem('“:;…” \u2126 é', 72, 100, { face: 'narrow' })]);
    const used = fresh();
    await writePdf(before, used);
    const after = await writePdf(wanted, used);
    expect(shownText(new PdfFile(after), 0)).toEqual([words]);
    expect(Buffer.from(after).equals(Buffer.from(await writePdf(wanted, fresh())))).toBe(true);
  });

  it('has a space that is not seen where a line ends inside a paragraph, and nowhere else', () => {
    expect(shownText(file, 0)).toEqual([
      'Lighting the pilot',
      'Open the AV valve, see ',
      'blue flame',
      ' on ',
      'the next page',
      '1',
      'Shut the 45 psi “automatic” – 2½ turns, low-',
      'water first',
      'Valve',
      'Turns',
      'V1',
      'all shut',
      'V1',
      'up',
      'Kettlebook · i',
    ]);
  });

  it('of a turned or anchored shape stands as it should', async () => {
    const shape = (anchor: 'start' | 'middle' | 'end', turn?: number) =>
      ({
        kind: 'shape',
        shape: {
          kind: 'text',
          x: 300,
          y: 400,
          text: 'HIHI',
          face: 'text',
          sizePt: 20,
          colour: '#000000',
          anchor,
          ...(turn === undefined ? {} : { turn }),
        },
      }) as const;
    const width = plexFonts.text.widthOf('HIHI', 20);
    const at = async (...given: Parameters<typeof shape>) =>
      (await textOf(await writePdf(single([shape(...given)]), options)))[0]?.[0];
    expect((await at('start'))?.x).toBeCloseTo(300, 2);
    expect((await at('middle'))?.x).toBeCloseTo(300 - width / 2, 2);
    expect((await at('end'))?.x).toBeCloseTo(300 - width, 2);
    const turned = await at('end', 90);
    expect(turned?.x).toBeCloseTo(300, 2);
    expect(turned?.y).toBeCloseTo(400 - width, 2);
  });
});

describe('the file', () => {
  it('is the same bytes for the same paper', async () => {
    expect(Buffer.from(await writePdf(paper, options)).equals(Buffer.from(bytes))).toBe(true);
  });

  it('differs with the date', async () => {
    const later = await writePdf(paper, { ...options, creationDate: new Date('2026-01-02T03:04:06Z') });
    expect(Buffer.from(later).equals(Buffer.from(bytes))).toBe(false);
  });

  it('says what it is, letter for letter, in both places', async () => {
    const pdf = await openPdf(bytes);
    const { info, metadata } = await pdf.getMetadata();
    expect(info).toMatchObject({
      Title: options.title,
      Author: options.author,
      Subject: options.subject,
      Keywords: options.keywords,
      Language: 'en-US',
      CreationDate: 'D:20260102030405Z',
    });
    expect(metadata?.get('dc:title')).toBe(options.title);
    expect(metadata?.get('dc:creator')).toEqual([options.author]);
    expect(metadata?.get('dc:description')).toBe(options.subject);
    expect(metadata?.get('xmp:createdate')).toBe('2026-01-02T03:04:05Z');
    await pdf.destroy();
  });

  it('has pages of the size given, with their labels', async () => {
    const pdf = await openPdf(bytes);
    const sizes = await Promise.all([1, 2, 3].map(async (number) => (await pdf.getPage(number)).view));
    expect(sizes).toEqual([
      [0, 0, 612, 792],
      [0, 0, 595, 842],
      [0, 0, 612, 792],
    ]);
    expect(await pdf.getPageLabels()).toEqual(['i', '1', '2']);
    await pdf.destroy();
  });

  it('asks to be printed at true size, turned on the long edge', () => {
    const hints = file.dict(file.catalog.ViewerPreferences);
    expect(hints).toMatchObject({
      PrintScaling: { name: 'None' },
      Duplex: { name: 'DuplexFlipLongEdge' },
      DisplayDocTitle: true,
    });
  });

  it('embeds only the fonts and the letters it uses', async () => {
    const few = await writePdf(single([textItem('abc', 72, 100)]), options);
    const fonts = [...new PdfFile(few).objects.values()].filter((value) =>
      JSON.stringify(value)?.includes('"FontFile2"'),
    );
    expect(fonts).toHaveLength(1);
    expect(few.length).toBeLessThan(8000);
  });
});

describe('ways about', () => {
  it('are bookmarks that lead to their places', async () => {
    const pdf = await openPdf(bytes);
    const outline = await pdf.getOutline();
    expect(outline.map(({ title, dest, items }) => [title, dest, items.length])).toEqual([
      ['Lighting the pilot', 'one', 1],
      ['Putting out', 'two', 0],
    ]);
    expect(outline[0]?.items[0]).toMatchObject({ title: 'Später', dest: 'Ofen (groß)' });
    await pdf.destroy();
  });

  it('are named places, found by name, at their height on their page', async () => {
    const pdf = await openPdf(bytes);
    for (const { name, page: index, y } of paper.destinations) {
      const place = await pdf.getDestination(name);
      expect(await pdf.getPageIndex(place?.[0])).toBe(index);
      expect(place?.slice(1)).toEqual([{ name: 'XYZ' }, null, (paper.pages[index]?.heightPt ?? 0) - y, null]);
    }
    await pdf.destroy();
  });

  it('are found whatever their number and their letters', async () => {
    const names = Array.from({ length: 200 }, (_, index) => `${'aZé_-ß('[index % 7]}${index * 7919}`);
    const many: LaidOut = {
      ...single([]),
      destinations: names.map((name, index) => ({ name, page: 0, y: index })),
    };
    const pdf = await openPdf(await writePdf(many, options));
    for (const [index, name] of names.entries())
      expect((await pdf.getDestination(name))?.[3], name).toBe(792 - index);
    await pdf.destroy();
  });

  it('are links with words, in their box', async () => {
    const pdf = await openPdf(bytes);
    const [link, ...others] = await (await pdf.getPage(1)).getAnnotations();
    expect(others).toEqual([]);
    expect(link).toMatchObject({
      subtype: 'Link',
      dest: 'two',
      rect: [140, 645, 210, 658],
      contentsObj: { str: 'Putting out (next page)' },
    });
    await pdf.destroy();
  });
});

describe('a paper that contradicts itself', () => {
  const link = {
    kind: 'link',
    x: 0,
    y: 0,
    widthPt: 1,
    heightPt: 1,
    target: 'nowhere',
    words: 'x',
    tag: 0,
  } as const;
  it.each([
    ['a link to nowhere', single([link])],
    [
      'a link without a tag',
      {
        ...single([{ ...link, tag: undefined }] as never),
        destinations: [{ name: 'nowhere', page: 0, y: 0 }],
      },
    ],
    ['a tag that does not exist', single([textItem('x', 1, 1, { tag: 7 })])],
    ['a place that is no number', single([textItem('x', Number.NaN, 1)])],
    ['a place on no page', { ...single([]), destinations: [{ name: 'x', page: 3, y: 0 }] }],
    [
      'a bookmark to nowhere',
      { ...single([]), outline: [{ title: 'x', destination: 'nowhere', children: [] }] },
    ],
    ['a colour that is none', single([textItem('x', 1, 1, { colour: '#red' })])],
  ])('is refused: %s', async (_, laidOut: LaidOut) => {
    await expect(writePdf(laidOut, options)).rejects.toThrow(RangeError);
  });
});
