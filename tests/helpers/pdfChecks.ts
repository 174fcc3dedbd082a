/**
 * What a file must hold to be an accessible PDF (PDF/UA-1) and one for keeping (PDF/A-2).
 *
 * Clauses are those of ISO 14289-1 (`UA`) and ISO 19005-2 (`A`). Each check gives the breaches it finds, in words.
 * They are the machine checks that our files can break; they are not a verdict of conformance.
 */
import { type Dict, isDict, Name, operations, type PdfFile, Ref, Stream, type Value } from './pdfFile';
import { lettersByGlyph } from './pdfText';

/** One check. */
export interface Check {
  readonly clause: string;
  readonly breaches: (file: PdfFile) => readonly string[];
}

const nameOf = (value: Value | undefined): string => (value instanceof Name ? value.name : '');
const unless = (holds: boolean, words: string): readonly string[] => (holds ? [] : [words]);

/** An element of the structure tree. */
interface Element {
  readonly id: number;
  readonly dict: Dict;
  readonly type: string;
  readonly kids: readonly Value[];
  readonly parent: Element | undefined;
}

function elementsOf(file: PdfFile): readonly Element[] {
  const list: Element[] = [];
  const walk = (value: Value, parent: Element | undefined): void => {
    const dict = file.dict(value);
    if (!(value instanceof Ref) || !('S' in dict)) return;
    const element = { id: value.id, dict, type: nameOf(dict.S), kids: file.list(dict.K), parent };
    list.push(element);
    for (const kid of element.kids) walk(kid, element);
  };
  for (const kid of file.list(file.dict(file.catalog.StructTreeRoot).K)) walk(kid, undefined);
  return list;
}

function attribute(file: PdfFile, element: Element, name: string): Value {
  return (
    file
      .list(element.dict.A)
      .map((one) => file.dict(one)[name])
      .find((value) => value !== undefined) ?? null
  );
}

const childTypes = (file: PdfFile, element: Element): readonly string[] =>
  element.kids.flatMap((kid) =>
    isDict(file.get(kid)) && 'S' in file.dict(kid) ? [nameOf(file.dict(kid).S)] : [],
  );

function metadata(file: PdfFile): string {
  const value = file.get(file.catalog.Metadata);
  return value instanceof Stream ? value.bytes.toString('utf8') : '';
}

/** Number-tree entries. */
function parentTree(file: PdfFile): ReadonlyMap<number, Value> {
  const nums = file.list(file.dict(file.dict(file.catalog.StructTreeRoot).ParentTree).Nums);
  return new Map(
    nums.flatMap((key, at) => (at % 2 === 0 ? [[Number(key), nums[at + 1] ?? null] as const] : [])),
  );
}

function fontsOf(file: PdfFile): readonly Dict[] {
  return [...file.objects.values()]
    .filter(isDict)
    .filter((dict) => nameOf(dict.Type) === 'Font' && nameOf(dict.Subtype) === 'Type0');
}

/** Text shown outside marked content, marked content inside marked content, marks left open. */
function markingBreaches(file: PdfFile): readonly string[] {
  const paints = new Set(['Tj', 'TJ', 'S', 'f', 'B', 'n', 'f*', 'B*', 'sh', 'Do']);
  return file.pages.flatMap((page, index) => {
    let depth = 0;
    const found: string[] = [];
    for (const { operator } of operations(file.stream(file.dict(page).Contents))) {
      if (operator === 'BDC' || operator === 'BMC') depth += 1;
      if (operator === 'EMC') depth -= 1;
      if (depth > 1) found.push(`page ${index + 1}: marked content inside marked content`);
      if (depth < 1 && paints.has(operator))
        found.push(`page ${index + 1}: ${operator} outside marked content`);
    }
    return depth === 0 ? found : [...found, `page ${index + 1}: marked content left open`];
  });
}

/** Every mark on a page belongs to the element that names it, and the other way round. */
function parentTreeBreaches(file: PdfFile): readonly string[] {
  const tree = parentTree(file);
  const marks = new Map<string, number>();
  for (const element of elementsOf(file)) {
    for (const kid of element.kids) {
      const own =
        typeof kid === 'number'
          ? { mcid: kid, page: element.dict.Pg }
          : { mcid: file.dict(kid).MCID, page: file.dict(kid).Pg ?? element.dict.Pg };
      if (typeof own.mcid === 'number' && own.page instanceof Ref)
        marks.set(`${own.page.id}:${own.mcid}`, element.id);
    }
  }
  return file.pages.flatMap((page) => {
    const parents = file.list(tree.get(Number(file.dict(page).StructParents)));
    const used = operations(file.stream(file.dict(page).Contents)).flatMap(
      ({ operator, operands: [, properties] }) =>
        operator === 'BDC' ? [Number(file.dict(properties).MCID)] : [],
    );
    return used.flatMap((mcid) => {
      const parent = parents[mcid];
      return unless(
        parent instanceof Ref && marks.get(`${page.id}:${mcid}`) === parent.id,
        `mark ${mcid} of page object ${page.id} has no element`,
      );
    });
  });
}

const rows: Readonly<Record<string, readonly string[]>> = {
  TR: ['Table', 'THead', 'TBody', 'TFoot'],
  TH: ['TR'],
  TD: ['TR'],
  THead: ['Table'],
  TBody: ['Table'],
  LI: ['L'],
  Lbl: ['LI', 'Note', 'TOCI'],
  LBody: ['LI'],
  TOCI: ['TOC'],
};

function tableWidths(file: PdfFile, table: Element): readonly number[] {
  const elements = elementsOf(file);
  const below = (parent: Element): readonly Element[] =>
    elements.filter((one) => one.parent?.id === parent.id);
  const tableRows = below(table).flatMap((part) =>
    part.type === 'TR' ? [part] : below(part).filter(({ type }) => type === 'TR'),
  );
  return tableRows.map((row) =>
    below(row).reduce((sum, cell) => sum + Number(attribute(file, cell, 'ColSpan') ?? 1), 0),
  );
}

function headingBreaches(file: PdfFile): readonly string[] {
  let level = 0;
  return elementsOf(file).flatMap(({ type }) => {
    const found = /^H([1-6])$/.exec(type);
    if (!found) return [];
    const before = level;
    level = Number(found[1]);
    return unless(level <= before + 1, `H${level} follows H${before}`);
  });
}

/** Unicode values by glyph, from the ToUnicode table; the characters shown must all have one. */
function unicodeBreaches(file: PdfFile): readonly string[] {
  return fontsOf(file).flatMap((font) => {
    const map = file.get(font.ToUnicode);
    if (!(map instanceof Stream)) return [`${nameOf(font.BaseFont)} has no ToUnicode`];
    const values = [...lettersByGlyph(map.bytes.toString('latin1')).values()];
    const bad = ['', '0000', 'FEFF', 'FFFE'];
    return unless(values.length > 0, 'an empty ToUnicode').concat(
      values.flatMap((hex) => unless(!bad.includes(hex), `${nameOf(font.BaseFont)} maps a glyph to ${hex}`)),
    );
  });
}

function notdefBreaches(file: PdfFile): readonly string[] {
  return file.pages.flatMap((page, index) =>
    operations(file.stream(file.dict(page).Contents)).flatMap(({ operator, operands: [shown] }) => {
      if (operator !== 'Tj' && operator !== 'TJ') return [];
      const strings = Array.isArray(shown) ? shown.filter((one) => typeof one === 'string') : [String(shown)];
      const glyphs = strings.flatMap((one) => String(one).match(/.{2}/gs) ?? []);
      return unless(!glyphs.includes('\0\0'), `page ${index + 1} shows a letter its font lacks`);
    }),
  );
}

const linksOf = (file: PdfFile) =>
  file.pages.flatMap((page) =>
    file
      .list(file.dict(page).Annots)
      .map((annotation) => ({ page: file.dict(page), annotation, dict: file.dict(annotation) })),
  );

/** The checks of accessibility. */
export const accessibilityChecks: readonly Check[] = [
  {
    clause: 'UA 5',
    breaches: (file) =>
      unless(/<pdfuaid:part>1<\/pdfuaid:part>/.test(metadata(file)), 'the metadata do not say PDF/UA-1'),
  },
  {
    clause: 'UA 6.1',
    breaches: (file) =>
      unless(/^%PDF-1\.[0-7]\n/.test(file.header), 'the header is not that of PDF 1.0 to 1.7'),
  },
  {
    clause: 'UA 6.2',
    breaches: (file) =>
      unless(file.dict(file.catalog.MarkInfo).Marked === true, 'the file is not marked as tagged'),
  },
  { clause: 'UA 7.1-1', breaches: markingBreaches },
  { clause: 'UA 7.1-2', breaches: parentTreeBreaches },
  {
    clause: 'UA 7.1-4',
    breaches: (file) =>
      unless(file.dict(file.catalog.MarkInfo).Suspects !== true, 'the tags are said to be suspect'),
  },
  {
    clause: 'UA 7.1-9',
    breaches: (file) =>
      unless(/<dc:title>.*\S.*<\/dc:title>/s.test(metadata(file)), 'the metadata hold no title'),
  },
  {
    clause: 'UA 7.1-10',
    breaches: (file) =>
      unless(
        file.dict(file.catalog.ViewerPreferences).DisplayDocTitle === true,
        'the title is not to be shown',
      ),
  },
  {
    clause: 'UA 7.1-11',
    breaches: (file) =>
      unless(elementsOf(file)[0]?.type === 'Document', 'the tree does not begin with a Document'),
  },
  {
    clause: 'UA 7.2-2',
    breaches: (file) =>
      unless(/^[a-z]{2,3}(-[A-Za-z0-9]{2,8})*$/.test(String(file.catalog.Lang)), 'the language is not given'),
  },
  {
    clause: 'UA 7.2-3',
    breaches: (file) =>
      elementsOf(file).flatMap(({ type, parent }) =>
        unless(rows[type]?.includes(parent?.type ?? '') ?? true, `${type} stands in ${parent?.type}`),
      ),
  },
  {
    clause: 'UA 7.2-15',
    breaches: (file) =>
      elementsOf(file)
        .filter(({ type }) => type === 'Table')
        .flatMap((table) =>
          unless(
            new Set(tableWidths(file, table)).size <= 1,
            `a table has rows of ${tableWidths(file, table)} columns`,
          ),
        ),
  },
  {
    clause: 'UA 7.2-17',
    breaches: (file) =>
      elementsOf(file).flatMap((one) =>
        unless(
          one.type !== 'L' || childTypes(file, one).every((type) => ['LI', 'L', 'Caption'].includes(type)),
          'a list holds something other than entries',
        ),
      ),
  },
  {
    clause: 'UA 7.3',
    breaches: (file) =>
      elementsOf(file).flatMap((one) =>
        unless(one.type !== 'Figure' || String(one.dict.Alt ?? '') !== '', 'a figure has no words'),
      ),
  },
  { clause: 'UA 7.4.2', breaches: headingBreaches },
  {
    clause: 'UA 7.5',
    breaches: (file) =>
      elementsOf(file).flatMap((one) =>
        unless(
          one.type !== 'TH' || nameOf(attribute(file, one, 'Scope')) !== '',
          'a head cell does not say what it heads',
        ),
      ),
  },
  {
    clause: 'UA 7.9',
    breaches: (file) => {
      const ids = elementsOf(file)
        .filter(({ type }) => type === 'Note')
        .map(({ dict }) => String(dict.ID ?? ''));
      return unless(
        !ids.includes('') && new Set(ids).size === ids.length,
        'notes without an id of their own',
      );
    },
  },
  {
    clause: 'UA 7.18.3',
    breaches: (file) =>
      linksOf(file).flatMap(({ page }) =>
        unless(nameOf(page.Tabs) === 'S', 'a page with links has no tab order'),
      ),
  },
  {
    clause: 'UA 7.18.5-1',
    breaches: (file) =>
      linksOf(file).flatMap(({ annotation, dict }) => {
        const owner = parentTree(file).get(Number(dict.StructParent));
        const element = elementsOf(file).find(({ id }) => owner instanceof Ref && owner.id === id);
        const named = element?.kids.some((kid) => {
          const target = file.dict(kid).Obj;
          return target instanceof Ref && annotation instanceof Ref && target.id === annotation.id;
        });
        return unless(element?.type === 'Link' && named === true, 'a link is not in a Link element');
      }),
  },
  {
    clause: 'UA 7.18.5-2',
    breaches: (file) =>
      linksOf(file).flatMap(({ dict }) => unless(String(dict.Contents ?? '') !== '', 'a link has no words')),
  },
  {
    clause: 'UA 7.21.4.1',
    breaches: (file) =>
      fontsOf(file).flatMap((font) => {
        const descendant = file.dict(file.list(font.DescendantFonts)[0]);
        return unless(
          file.get(file.dict(descendant.FontDescriptor).FontFile2) instanceof Stream,
          `${nameOf(font.BaseFont)} is not embedded`,
        );
      }),
  },
  { clause: 'UA 7.21.7', breaches: unicodeBreaches },
  { clause: 'UA 7.21.8', breaches: notdefBreaches },
];

/** The checks of fitness for keeping. */
export const archiveChecks: readonly Check[] = [
  {
    clause: 'A 6.1.3',
    breaches: (file) =>
      unless(
        file.list(file.trailer.ID).length === 2 && !('Encrypt' in file.trailer),
        'no file id, or encrypted',
      ),
  },
  {
    clause: 'A 6.2.3',
    breaches: (file) => {
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
    breaches: (file) =>
      file.pages.flatMap((page) =>
        operations(file.stream(file.dict(page).Contents)).flatMap(({ operator }) =>
          unless(!['k', 'K', 'cs', 'CS'].includes(operator), `a colour that is not RGB: ${operator}`),
        ),
      ),
  },
  {
    clause: 'A 6.3.2',
    breaches: (file) =>
      linksOf(file).flatMap(({ dict }) => unless(dict.F === 4, 'a link is not marked to be printed')),
  },
  {
    clause: 'A 6.6.2.1',
    breaches: (file) => {
      const stream = file.get(file.catalog.Metadata);
      return unless(
        stream instanceof Stream && !('Filter' in stream.dict),
        'the metadata are missing or packed',
      );
    },
  },
  {
    clause: 'A 6.6.4',
    breaches: (file) =>
      unless(
        /<pdfaid:part>2<\/pdfaid:part>\s*<pdfaid:conformance>A<\/pdfaid:conformance>/.test(metadata(file)),
        'the metadata do not say PDF/A-2a',
      ),
  },
  {
    clause: 'A 6.6.2.3',
    breaches: (file) =>
      unless(
        !metadata(file).includes('pdfuaid:part') ||
          metadata(file).includes('<pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>'),
        'the schema of PDF/UA is used but not described',
      ),
  },
];

/** Every breach of every check, with its clause. */
export function pdfBreaches(file: PdfFile): readonly string[] {
  return [...accessibilityChecks, ...archiveChecks].flatMap(({ clause, breaches }) =>
    breaches(file).map((words) => `${clause}: ${words}`),
  );
}
