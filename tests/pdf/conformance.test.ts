import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { writePdf } from '../../src/pdf/write';
import { options, paperWithFields } from '../helpers/laidOut';
import { pdfBreaches, pdfChecks } from '../helpers/pdfChecks';
import { factsOf } from '../helpers/pdfFacts';
import { type Dict, isDict, Name, PdfFile, Stream, type Value } from '../helpers/pdfFile';

let bytes: Uint8Array;
beforeAll(async () => {
  bytes = await writePdf(paperWithFields, options);
});

it('a file we write breaks none of the rules', () => {
  expect(pdfBreaches(new PdfFile(bytes))).toEqual([]);
});

const elements = (file: PdfFile, type: string): readonly Dict[] =>
  [...file.objects.values()]
    .filter(isDict)
    .filter((dict) => dict.S instanceof Name && dict.S.name === type && 'P' in dict);

function edit(file: PdfFile, value: Value | undefined, change: (text: string) => string): void {
  for (const [id, object] of file.objects) {
    if (object === file.get(value) && object instanceof Stream) {
      file.objects.set(
        id,
        new Stream(object.dict, Buffer.from(change(object.bytes.toString('latin1')), 'latin1')),
      );
    }
  }
}

const editMetadata = (change: (text: string) => string) => (file: PdfFile) =>
  edit(file, file.catalog.Metadata, change);
const editPage = (change: (text: string) => string) => (file: PdfFile) =>
  edit(file, file.dict(file.pages[0]).Contents, change);
const fontWith = (file: PdfFile, key: string): Dict =>
  [...file.objects.values()].filter(isDict).find((dict) => key in dict) ?? {};
const annotation = (file: PdfFile, type: string): Dict =>
  file.pages
    .flatMap((page) => file.list(file.dict(page).Annots))
    .map((one) => file.dict(one))
    .find(({ Subtype }) => Subtype instanceof Name && Subtype.name === type) ?? {};
const firstLink = (file: PdfFile): Dict => annotation(file, 'Link');
const firstField = (file: PdfFile): Dict => annotation(file, 'Widget');
const form = (file: PdfFile): Dict => file.dict(file.catalog.AcroForm);
const retype = (file: PdfFile, from: string, to: string): void =>
  void Object.assign(elements(file, from)[0] ?? {}, { S: new Name(to) });
/** An object that our files never have. */
const put = (dict: Dict) => (file: PdfFile) => void file.objects.set(1_000_000, dict);
const anyStream = (file: PdfFile): Stream => file.stream(file.dict(file.pages[0]).Contents);

/** The field's own font, called by letter. */
const letterFont = (file: PdfFile): Dict => file.dict(file.dict(file.dict(form(file).DR).Font).Fill);

/** What breaks each rule. */
const damage: Readonly<Record<string, (file: PdfFile) => void>> = {
  'UA 5-1': editMetadata((text) => text.replace('<pdfuaid:part>1<', '<pdfuaid:part>2<')),
  'UA 5-2': editMetadata((text) => text.replace('xmlns:pdfuaid=', 'xmlns:ua=')),
  'UA 6.1': (file) => Object.assign(file, { header: '%PDF-2.0\n' }),
  'UA 6.2': (file) => delete file.catalog.MarkInfo,
  'UA 7.1-1': editPage((text) => text.replace('EMC', '')),
  'UA 7.1-2': editPage((text) => text.replace('/MCID 1>>', '/MCID 99>>')),
  'UA 7.1-4': (file) => Object.assign(file.dict(file.catalog.MarkInfo), { Suspects: true }),
  'UA 7.1-5': (file) => retype(file, 'P', 'Words'),
  'UA 7.1-7': (file) =>
    Object.assign(file.dict(file.catalog.StructTreeRoot), { RoleMap: { P: new Name('H1') } }),
  'UA 7.1-8': (file) => delete file.catalog.Metadata,
  'UA 7.1-9': editMetadata((text) => text.replace(/<dc:title>.*<\/dc:title>/, '')),
  'UA 7.1-10': (file) => delete file.catalog.ViewerPreferences,
  'UA 7.1-11': (file) => delete file.catalog.StructTreeRoot,
  'UA 7.2-2': (file) => delete file.catalog.Lang,
  'UA 7.2-29': (file) => Object.assign(elements(file, 'P')[0] ?? {}, { Lang: 'in English' }),
  'UA 7.2-3': (file) => retype(file, 'TR', 'TD'),
  'UA 7.2-10': (file) => retype(file, 'TD', 'P'),
  'UA 7.2-11': (file) => retype(file, 'TBody', 'P'),
  'UA 7.2-12': (file) => retype(file, 'TR', 'P'),
  'UA 7.2-15': (file) => delete elements(file, 'TD')[1]?.A,
  'UA 7.2-17': (file) => retype(file, 'LI', 'P'),
  'UA 7.2-19': (file) => retype(file, 'LBody', 'P'),
  'UA 7.2-26': (file) => retype(file, 'L', 'TOC'),
  'UA 7.3': (file) => delete elements(file, 'Figure')[0]?.Alt,
  'UA 7.4.2': (file) => retype(file, 'H1', 'H2'),
  'UA 7.4.4': (file) => retype(file, 'P', 'H'),
  'UA 7.5': (file) => delete elements(file, 'TH')[0]?.A,
  'UA 7.9': (file) => delete elements(file, 'Note')[0]?.ID,
  'UA 7.10': (file) => Object.assign(file.catalog, { OCProperties: { D: {} } }),
  'UA 7.11': put({ Type: new Name('Filespec'), F: 'log.csv' }),
  'UA 7.15': (file) => Object.assign(form(file), { XFA: [] }),
  'UA 7.16': (file) => Object.assign(file.trailer, { Encrypt: { P: 0 } }),
  'UA 7.18.1': (file) => delete firstField(file).TU,
  'UA 7.18.2': (file) => Object.assign(firstLink(file), { Subtype: new Name('TrapNet') }),
  'UA 7.18.3': (file) => delete file.dict(file.pages[0]).Tabs,
  'UA 7.18.4': (file) => retype(file, 'Form', 'Span'),
  'UA 7.18.5-1': (file) => retype(file, 'Link', 'Span'),
  'UA 7.18.5-2': (file) => delete firstLink(file).Contents,
  'UA 7.20': put({ Subtype: new Name('Form'), Ref: {} }),
  'UA 7.21.3': (file) => Object.assign(fontWith(file, 'DescendantFonts'), { Encoding: new Name('UniJIS') }),
  'UA 7.21.4.1': (file) => delete fontWith(file, 'FontFile2').FontFile2,
  'UA 7.21.5': (file) => Object.assign(letterFont(file), { FirstChar: 33 }),
  'UA 7.21.6': (file) => delete letterFont(file).Encoding,
  'UA 7.21.7': (file) =>
    edit(file, fontWith(file, 'ToUnicode').ToUnicode, (text) =>
      text.replace(/(beginbfchar\n<....>) <[^>]*>/, '$1 <0000>'),
    ),
  'UA 7.21.8': editPage((text) => text.replace(/\(\0[A-Za-z]/, '(\0\0')),
  'A 6.1.2': (file) => Object.assign(file, { start: file.start.replace(/\n%.*\n/, '\n%____\n') }),
  'A 6.1.3': (file) => delete file.trailer.ID,
  'A 6.1.7.1': (file) => Object.assign(anyStream(file).dict, { F: 'elsewhere.bin' }),
  'A 6.1.7.2': (file) => Object.assign(anyStream(file).dict, { Filter: new Name('LZWDecode') }),
  'A 6.1.13-1': put({ Title: 'x'.repeat(40_000) }),
  'A 6.1.13-11': (file) => Object.assign(file.dict(file.pages[0]), { MediaBox: [0, 0, 2, 2] }),
  'A 6.2.3': (file) => delete file.catalog.OutputIntents,
  'A 6.2.4.3': editPage((text) => `0 0 0 1 k\n${text}`),
  'A 6.2.5': put({ Type: new Name('ExtGState'), TR: new Name('Identity') }),
  'A 6.2.8': put({ Subtype: new Name('Image'), Interpolate: true }),
  'A 6.2.9': put({ Subtype: new Name('PS') }),
  'A 6.2.10': put({ Type: new Name('ExtGState'), ca: 0.5 }),
  'A 6.3.1': (file) => Object.assign(firstLink(file), { Subtype: new Name('Movie') }),
  'A 6.3.2': (file) => Object.assign(firstLink(file), { F: 2 }),
  'A 6.3.3': (file) => delete firstField(file).AP,
  'A 6.4.1-1': (file) => Object.assign(firstField(file), { AA: {} }),
  'A 6.4.1-3': (file) => Object.assign(form(file), { NeedAppearances: true }),
  'A 6.4.2': (file) => Object.assign(file.catalog, { NeedsRendering: true }),
  'A 6.5.1': put({ S: new Name('JavaScript'), JS: 'app.alert(1)' }),
  'A 6.5.2': (file) => Object.assign(file.catalog, { AA: {} }),
  'A 6.6.2.1': (file) => delete file.catalog.Metadata,
  'A 6.6.4': editMetadata((text) => text.replace('<pdfaid:conformance>A', '<pdfaid:conformance>B')),
  'A 6.6.2.3': editMetadata((text) => text.replace('<pdfaSchema:prefix>pdfuaid', '<pdfaSchema:prefix>x')),
  'A 6.8': put({ Type: new Name('EmbeddedFile') }),
  'A 6.10': (file) => Object.assign(file.dict(file.pages[0]), { PresSteps: {} }),
  'A 6.11': (file) => Object.assign(file.catalog, { Requirements: [] }),
};

describe.each(pdfChecks)('the check of $clause', ({ clause, breaches }) => {
  it('finds what it is for', () => {
    const file = new PdfFile(bytes);
    expect(breaches(factsOf(file))).toEqual([]);
    damage[clause]?.(file);
    expect(breaches(factsOf(file))).not.toEqual([]);
  });
});

it('docs/pdf.md lists the clauses that are checked, and no others', () => {
  const page = readFileSync(new URL('../../docs/pdf.md', import.meta.url), 'utf8');
  const listed = [...page.matchAll(/^\| ((?:UA|A) [\d.-]+) \|/gm)].map(([, clause]) => clause);
  expect(listed.sort()).toEqual(pdfChecks.map(({ clause }) => clause).sort());
});

it('each check has a clause of its own', () => {
  const clauses = pdfChecks.map(({ clause }) => clause);
  expect(new Set(clauses).size).toBe(clauses.length);
  expect(Object.keys(damage).sort()).toEqual([...clauses].sort());
});
