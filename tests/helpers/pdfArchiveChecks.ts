/** PDF/A-2 (ISO 19005-2), but for links, fields and fonts. */
import { type Check, nameOf, type PdfFacts, unless } from './pdfFacts';
import { isDict, Stream, type Value } from './pdfFile';

const streams = ({ file }: PdfFacts): readonly Stream[] =>
  [...file.objects.values()].filter((value) => value instanceof Stream);

/** Actions that a file for keeping may not hold (6.5.1). */
const forbiddenActions = new Set(
  'Launch Sound Movie ResetForm ImportData Hide SetOCGState Rendition Trans GoTo3DView JavaScript'.split(' '),
);

/** Colours that are not told as RGB or grey. */
const otherColours = new Set(['k', 'K', 'cs', 'CS', 'scn', 'SCN', 'sh']);

/** Longest string and name, in bytes (6.1.13). */
const longestString = 32_767;
const longestName = 127;

function limitBreaches({ file }: PdfFacts): readonly string[] {
  const seen = (value: Value | undefined): readonly string[] => {
    if (typeof value === 'string') return unless(value.length <= longestString, 'a string is too long');
    if (typeof value === 'number')
      return unless(Math.abs(value) < 2 ** 31, `the number ${value} is too large`);
    if (Array.isArray(value)) return value.flatMap(seen);
    const dict = value instanceof Stream ? value.dict : isDict(value) ? value : {};
    const names = [...Object.keys(dict), nameOf(value)];
    return [
      ...names.flatMap((name) => unless(name.length <= longestName, 'a name is too long')),
      ...Object.values(dict).flatMap(seen),
    ];
  };
  return [...file.objects.values()].flatMap(seen);
}

/** The checks. */
export const archiveChecks: readonly Check[] = [
  {
    clause: 'A 6.1.2',
    breaches: ({ file }) =>
      unless(
        /^%PDF-1\.[0-7]\n%[\x80-\xff]{4}\n/.test(file.start),
        'the file does not begin with its header and four bytes that are no letters',
      ),
  },
  {
    clause: 'A 6.1.3',
    breaches: ({ file }) =>
      unless(
        file.list(file.trailer.ID).length === 2 && !('Encrypt' in file.trailer),
        'no file id, or encrypted',
      ),
  },
  {
    clause: 'A 6.1.7.1',
    breaches: (facts) =>
      streams(facts).flatMap(({ dict }) =>
        unless(
          !['F', 'FFilter', 'FDecodeParms'].some((key) => key in dict),
          'a stream stands in another file',
        ),
      ),
  },
  {
    clause: 'A 6.1.7.2',
    breaches: (facts) =>
      streams(facts).flatMap(({ dict }) =>
        facts.file
          .list(dict.Filter)
          .flatMap((filter) => unless(!['LZWDecode', 'Crypt'].includes(nameOf(filter)), nameOf(filter))),
      ),
  },
  { clause: 'A 6.1.13-1', breaches: limitBreaches },
  {
    clause: 'A 6.1.13-11',
    breaches: ({ file }) =>
      file.pages.flatMap((page) => {
        const [left = 0, bottom = 0, right = 0, top = 0] = file.list(file.dict(page).MediaBox).map(Number);
        const sides = [right - left, top - bottom];
        return unless(
          sides.every((side) => side >= 3 && side <= 14_400),
          `a page of ${sides.join(' × ')} points`,
        );
      }),
  },
  {
    clause: 'A 6.2.3',
    breaches: ({ file }) => {
      const intent = file.list(file.catalog.OutputIntents).map((one) => file.dict(one))[0];
      const profile = file.get(intent?.DestOutputProfile);
      const sound =
        profile instanceof Stream &&
        profile.bytes.toString('latin1', 12, 20) === 'mntrRGB ' &&
        profile.bytes.readUInt32BE(0) === profile.bytes.length;
      return unless(
        sound && nameOf(intent?.S) === 'GTS_PDFA1',
        'no output intent with a profile for display in RGB',
      );
    },
  },
  {
    clause: 'A 6.2.4.3',
    breaches: ({ contents, appearances }) =>
      [...contents, ...appearances].flatMap((content) =>
        content.flatMap(({ operator }) =>
          unless(!otherColours.has(operator), `a colour that is not RGB: ${operator}`),
        ),
      ),
  },
  {
    clause: 'A 6.2.5',
    breaches: ({ dicts }) =>
      dicts
        .filter(({ Type }) => nameOf(Type) === 'ExtGState')
        .flatMap((dict) =>
          unless(!['TR', 'HTP'].some((key) => key in dict), 'a state that bends colours or screens'),
        ),
  },
  {
    clause: 'A 6.2.8',
    breaches: ({ dicts }) =>
      dicts
        .filter(({ Subtype }) => nameOf(Subtype) === 'Image')
        .flatMap((dict) =>
          unless(
            dict.Interpolate !== true && !('Alternates' in dict) && !('OPI' in dict),
            'a picture that others may draw otherwise',
          ),
        ),
  },
  {
    clause: 'A 6.2.9',
    breaches: ({ dicts }) =>
      dicts.flatMap(({ Subtype, Subtype2 }) =>
        unless(nameOf(Subtype) !== 'PS' && nameOf(Subtype2) !== 'PS', 'a piece of PostScript'),
      ),
  },
  {
    clause: 'A 6.2.10',
    breaches: ({ dicts }) =>
      dicts.flatMap((dict) =>
        unless(
          [dict.CA, dict.ca].every((alpha) => typeof alpha !== 'number' || alpha === 1) &&
            ['', 'Normal', 'Compatible'].includes(nameOf(dict.BM)),
          'something that can be seen through',
        ),
      ),
  },
  {
    clause: 'A 6.5.1',
    breaches: ({ dicts }) =>
      dicts.flatMap(({ S }) => unless(!forbiddenActions.has(nameOf(S)), `an action: ${nameOf(S)}`)),
  },
  {
    clause: 'A 6.5.2',
    breaches: ({ file }) =>
      [file.catalog, ...file.pages.map((page) => file.dict(page))].flatMap((dict) =>
        unless(!('AA' in dict), 'something that happens by itself'),
      ),
  },
  {
    clause: 'A 6.6.2.1',
    breaches: ({ file }) => {
      const stream = file.get(file.catalog.Metadata);
      return unless(
        stream instanceof Stream && !('Filter' in stream.dict),
        'the metadata are missing or packed',
      );
    },
  },
  {
    clause: 'A 6.6.2.3',
    breaches: ({ metadata }) =>
      unless(
        !metadata.includes('pdfuaid:part') ||
          metadata.includes('<pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>'),
        'the schema of PDF/UA is used but not described',
      ),
  },
  {
    clause: 'A 6.6.4',
    breaches: ({ metadata }) =>
      unless(
        /<pdfaid:part>2<\/pdfaid:part>\s*<pdfaid:conformance>A<\/pdfaid:conformance>/.test(metadata),
        'the metadata do not say PDF/A-2a',
      ),
  },
  {
    clause: 'A 6.8',
    breaches: ({ file, dicts }) =>
      unless(
        !('EmbeddedFiles' in file.dict(file.catalog.Names)) &&
          dicts.every(({ Type }) => nameOf(Type) !== 'EmbeddedFile'),
        'a file inside the file',
      ),
  },
  {
    clause: 'A 6.10',
    breaches: ({ file }) =>
      unless(
        !('AlternatePresentations' in file.dict(file.catalog.Names)) &&
          file.pages.every((page) => !('PresSteps' in file.dict(page))),
        'another presentation of the same',
      ),
  },
  {
    clause: 'A 6.11',
    breaches: ({ file }) => unless(!('Requirements' in file.catalog), 'demands on the reader program'),
  },
];
