import { beforeAll, describe, expect, it } from 'vitest';
import { shaperOf } from '../../src/font/shaper';
import { writePdf } from '../../src/pdf/write';
import { fontFiles } from '../helpers/fonts';
import { options, page, paper, paperWithFields } from '../helpers/laidOut';
import { type Dict, Name, PdfFile, Stream } from '../helpers/pdfFile';
import { openPdf } from '../helpers/pdfText';

let bytes: Uint8Array;
let file: PdfFile;
beforeAll(async () => {
  bytes = await writePdf(paperWithFields, options);
  file = new PdfFile(bytes);
});

const form = () => file.dict(file.catalog.AcroForm);
const fields = (): readonly Dict[] => file.list(form().Fields).map((field) => file.dict(field));

describe('fields', () => {
  it('have their names, what belongs in them, and stand where the frame says', () => {
    expect(fields().map(({ T, TU, FT }) => [T, TU, FT])).toEqual([
      ['trip-1-date', 'Trip 1: date', new Name('Tx')],
      ['good', 'Häkchen: “good”', new Name('Btn')],
      ['evening-1', 'What was not right', new Name('Tx')],
    ]);
    expect(fields()[0]?.Rect).toEqual([72, 674, 272, 692]);
    expect(fields()[2]).toMatchObject({ Ff: 4096 });
    for (const field of fields()) expect(field).toMatchObject({ F: 4, Subtype: new Name('Widget') });
  });

  it('are found by a reader program, empty, on their page', async () => {
    const pdf = await openPdf(bytes);
    const found = await (await pdf.getPage(3)).getAnnotations();
    expect(found.map((each) => [each.fieldName, each.alternativeText, each.fieldType])).toEqual([
      ['trip-1-date', 'Trip 1: date', 'Tx'],
      ['good', 'Häkchen: “good”', 'Btn'],
      ['evening-1', 'What was not right', 'Tx'],
    ]);
    expect(found[2]).toMatchObject({ multiLine: true, fieldValue: '' });
    expect(found[1]).toMatchObject({ checkBox: true, fieldValue: 'Off', exportValue: 'Yes' });
    await pdf.destroy();
  });

  it('keep what is written into them when the file is saved and read again', async () => {
    const pdf = await openPdf(bytes);
    const [date, good, evening] = await (await pdf.getPage(3)).getAnnotations();
    pdf.annotationStorage.setValue(date.id, { value: '2026-05-02' });
    pdf.annotationStorage.setValue(good.id, { value: true });
    pdf.annotationStorage.setValue(evening.id, { value: 'Zwölf Öler\nnachgesehen' });
    const saved = await openPdf(await pdf.saveDocument());
    const again = await (await saved.getPage(3)).getAnnotations();
    expect(again.map((each) => each.fieldValue)).toEqual(['2026-05-02', 'Yes', 'Zwölf Öler\nnachgesehen']);
    await saved.destroy();
    await pdf.destroy();
  });

  it('have an appearance, empty, as large as they are; a box has one for each state', () => {
    for (const field of fields()) {
      const [left = 0, bottom = 0, right = 0, top = 0] = file.list(field.Rect).map(Number);
      const normal = file.dict(field.AP).N;
      const streams = file.get(normal) instanceof Stream ? [normal] : Object.values(file.dict(normal));
      expect(streams.length).toBe(file.get(normal) instanceof Stream ? 1 : 2);
      for (const stream of streams)
        expect(file.stream(stream).dict.BBox).toEqual([0, 0, right - left, top - bottom]);
    }
    expect(file.dict(file.dict(fields()[1]?.AP).N)).toHaveProperty('Yes');
    expect(fields()[1]?.AS).toEqual(new Name('Off'));
  });

  it('are each held by a Form element that names them, in the order of the tree', () => {
    const parents = file.list(file.dict(file.dict(file.catalog.StructTreeRoot).ParentTree).Nums);
    for (const field of fields()) {
      const at = parents.indexOf(Number(field.StructParent));
      const element = file.dict(parents[at + 1]);
      expect(element.S).toEqual(new Name('Form'));
      expect(file.dict(file.dict(file.list(element.K)[0]).Obj).T).toBe(field.T);
    }
  });

  it('are filled in with a font that is in the file and has the whole of its list', () => {
    const font = file.dict(file.dict(file.dict(form().DR).Font).Fill);
    expect(font.Encoding).toEqual(new Name('WinAnsiEncoding'));
    const widths = file.list(font.Widths).map(Number);
    const shaper = shaperOf(fontFiles.narrow);
    for (const letter of 'AaZz09 .,-/äöüÄÖÜßéèñ½°') {
      const width = (shaper.advanceOf(letter) * 1000) / shaper.heights.unitsPerEm;
      expect(widths[letter.charCodeAt(0) - Number(font.FirstChar)], letter).toBeCloseTo(width, 2);
    }
    // Annex D of ISO 32000-1: 0x80 is the euro, 0x93 the left double quote
    for (const [code, letter] of [
      [0x80, '€'],
      [0x93, '“'],
    ] as const)
      expect(widths[code - 32], letter).toBeCloseTo(
        (shaper.advanceOf(letter) * 1000) / shaper.heights.unitsPerEm,
        2,
      );
    expect(file.get(file.dict(font.FontDescriptor).FontFile2)).toBeInstanceOf(Stream);
    for (const field of fields().filter(({ DA }) => DA !== undefined))
      expect(field.DA).toMatch(/^\/Fill 10 Tf /);
  });

  it('are not there, nor their font, in a file that has none', async () => {
    const plain = new PdfFile(await writePdf(paper, options));
    expect(plain.catalog).not.toHaveProperty('AcroForm');
    expect(bytes.length - (await writePdf(paper, options)).length).toBeLessThan(40_000);
  });

  it('are refused without a tag, and two of one name', async () => {
    const [field] = (paperWithFields.pages[2]?.items ?? []).filter((item) => item.kind === 'field');
    if (field === undefined) throw new Error('there is no field');
    const only = (...items: (typeof field)[]) => ({
      structure: [{ type: 'Document' as const }, { type: 'Form' as const, parent: 0 }],
      pages: [page('1', items)],
      destinations: [],
      outline: [],
    });
    const { tag: _, ...untagged } = field;
    await expect(writePdf(only(untagged), options)).rejects.toThrow(/no tag/);
    await expect(writePdf(only({ ...field, tag: 1 }, { ...field, tag: 1 }), options)).rejects.toThrow(
      /two fields/,
    );
  });
});
