import { beforeAll, describe, expect, it } from 'vitest';
import { writePdf } from '../../src/pdf/write';
import { options, paper } from '../helpers/laidOut';
import { accessibilityChecks, archiveChecks, pdfBreaches } from '../helpers/pdfChecks';
import { type Dict, isDict, Name, PdfFile, Stream, type Value } from '../helpers/pdfFile';

let bytes: Uint8Array;
beforeAll(async () => {
  bytes = await writePdf(paper, options);
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
const firstLink = (file: PdfFile): Dict => file.dict(file.list(file.dict(file.pages[0]).Annots)[0]);

/** What breaks each rule. */
const damage: Readonly<Record<string, (file: PdfFile) => void>> = {
  'UA 5': editMetadata((text) => text.replace('<pdfuaid:part>1<', '<pdfuaid:part>2<')),
  'UA 6.1': (file) => Object.assign(file, { header: '%PDF-2.0\n' }),
  'UA 6.2': (file) => delete file.catalog.MarkInfo,
  'UA 7.1-1': editPage((text) => text.replace('EMC', '')),
  'UA 7.1-2': editPage((text) => text.replace('/MCID 1>>', '/MCID 99>>')),
  'UA 7.1-4': (file) => Object.assign(file.dict(file.catalog.MarkInfo), { Suspects: true }),
  'UA 7.1-9': editMetadata((text) => text.replace(/<dc:title>.*<\/dc:title>/, '')),
  'UA 7.1-10': (file) => delete file.catalog.ViewerPreferences,
  'UA 7.1-11': (file) => delete file.catalog.StructTreeRoot,
  'UA 7.2-2': (file) => delete file.catalog.Lang,
  'UA 7.2-3': (file) => Object.assign(elements(file, 'TR')[0] ?? {}, { S: new Name('TD') }),
  'UA 7.2-15': (file) => delete elements(file, 'TD')[1]?.A,
  'UA 7.2-17': (file) => Object.assign(elements(file, 'LI')[0] ?? {}, { S: new Name('P') }),
  'UA 7.3': (file) => delete elements(file, 'Figure')[0]?.Alt,
  'UA 7.4.2': (file) => Object.assign(elements(file, 'H1')[0] ?? {}, { S: new Name('H2') }),
  'UA 7.5': (file) => delete elements(file, 'TH')[0]?.A,
  'UA 7.9': (file) => delete elements(file, 'Note')[0]?.ID,
  'UA 7.18.3': (file) => delete file.dict(file.pages[0]).Tabs,
  'UA 7.18.5-1': (file) => Object.assign(elements(file, 'Link')[0] ?? {}, { S: new Name('Span') }),
  'UA 7.18.5-2': (file) => delete firstLink(file).Contents,
  'UA 7.21.4.1': (file) => delete fontWith(file, 'FontFile2').FontFile2,
  'UA 7.21.7': (file) =>
    edit(file, fontWith(file, 'ToUnicode').ToUnicode, (text) =>
      text.replace(/(beginbfchar\n<....>) <[^>]*>/, '$1 <0000>'),
    ),
  'UA 7.21.8': editPage((text) => text.replace(/\(\0[A-Za-z]/, '(\0\0')),
  'A 6.1.3': (file) => delete file.trailer.ID,
  'A 6.2.3': (file) => delete file.catalog.OutputIntents,
  'A 6.2.4.3': editPage((text) => `0 0 0 1 k\n${text}`),
  'A 6.3.2': (file) => Object.assign(firstLink(file), { F: 2 }),
  'A 6.6.2.1': (file) => delete file.catalog.Metadata,
  'A 6.6.4': editMetadata((text) => text.replace('<pdfaid:conformance>A', '<pdfaid:conformance>B')),
  'A 6.6.2.3': editMetadata((text) => text.replace('<pdfaSchema:prefix>pdfuaid', '<pdfaSchema:prefix>x')),
};

describe.each([...accessibilityChecks, ...archiveChecks])('the check of $clause', ({ clause, breaches }) => {
  it('finds what it is for', () => {
    const file = new PdfFile(bytes);
    expect(breaches(file)).toEqual([]);
    damage[clause]?.(file);
    expect(breaches(file)).not.toEqual([]);
  });
});
