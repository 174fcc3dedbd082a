/** PDF/UA-1 (ISO 14289-1): the file as a whole and its structure tree. */

import { attribute, type Check, childTypes, type Element, nameOf, type PdfFacts, unless } from './pdfFacts';
import { Ref, Stream } from './pdfFile';

/** The standard structure types (ISO 32000-1, 14.8.4). */
const standardTypes = new Set(
  (
    'Document Part Art Sect Div BlockQuote Caption TOC TOCI Index NonStruct Private P H H1 H2 H3 H4 H5 H6 L LI Lbl LBody ' +
    'Table TR TH TD THead TBody TFoot Span Quote Note Reference BibEntry Code Link Annot Ruby Warichu RB RT RP WT WP ' +
    'Figure Formula Form'
  ).split(' '),
);

/** What each may stand in, and what may stand in each. */
const within: Readonly<Record<string, readonly string[]>> = {
  TR: ['Table', 'THead', 'TBody', 'TFoot'],
  TH: ['TR'],
  TD: ['TR'],
  THead: ['Table'],
  TBody: ['Table'],
  TFoot: ['Table'],
  LI: ['L'],
  Lbl: ['LI', 'Note', 'TOCI'],
  LBody: ['LI'],
  TOCI: ['TOC'],
};
const holding: Readonly<Record<string, readonly string[]>> = {
  Table: ['Caption', 'TR', 'THead', 'TBody', 'TFoot'],
  THead: ['TR'],
  TBody: ['TR'],
  TFoot: ['TR'],
  TR: ['TH', 'TD'],
  L: ['LI', 'L', 'Caption'],
  LI: ['Lbl', 'LBody'],
  TOC: ['TOC', 'TOCI', 'Caption'],
};

const holds =
  (parent: string) =>
  (facts: PdfFacts): readonly string[] =>
    facts.elements
      .filter(({ type }) => type === parent)
      .flatMap((element) =>
        childTypes(facts, element).flatMap((type) =>
          unless((holding[parent] ?? []).includes(type), `${parent} holds ${type}`),
        ),
      );

/** Language tags as BCP 47 writes them. */
const languageForm = /^[a-z]{2,3}(-[A-Za-z0-9]{2,8})*$/;

/** Text shown outside marked content, marked content inside marked content, marks left open. */
function markingBreaches({ contents }: PdfFacts): readonly string[] {
  const paints = new Set(['Tj', 'TJ', 'S', 'f', 'B', 'n', 'f*', 'B*', 'sh', 'Do']);
  return contents.flatMap((page, index) => {
    let depth = 0;
    const found: string[] = [];
    for (const { operator } of page) {
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
function parentTreeBreaches({ file, elements, owners, contents }: PdfFacts): readonly string[] {
  const marks = new Map<string, number>();
  for (const element of elements) {
    for (const kid of element.kids) {
      const own =
        typeof kid === 'number'
          ? { mcid: kid, page: element.dict.Pg }
          : { mcid: file.dict(kid).MCID, page: file.dict(kid).Pg ?? element.dict.Pg };
      if (typeof own.mcid === 'number' && own.page instanceof Ref)
        marks.set(`${own.page.id}:${own.mcid}`, element.id);
    }
  }
  return file.pages.flatMap((page, index) => {
    const parents = file.list(owners.get(Number(file.dict(page).StructParents)));
    const used = (contents[index] ?? []).flatMap(({ operator, operands: [, properties] }) =>
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

/** Types that lead through the role map to no standard type, or in a circle. */
function unmapped({ file, elements }: PdfFacts): readonly string[] {
  const roles = file.dict(file.dict(file.catalog.StructTreeRoot).RoleMap);
  return [...new Set(elements.map(({ type }) => type))].flatMap((type) => {
    const seen = new Set<string>();
    let role = type;
    while (!standardTypes.has(role) && !seen.has(role)) {
      seen.add(role);
      role = nameOf(roles[role]);
    }
    return unless(standardTypes.has(role), `${type} is no type that readers know`);
  });
}

function tableWidths(facts: PdfFacts, table: Element): readonly number[] {
  const below = (parent: Element): readonly Element[] =>
    parent.kids.flatMap((kid) => (kid instanceof Ref ? (facts.byId.get(kid.id) ?? []) : []));
  const rows = below(table).flatMap((part) =>
    part.type === 'TR' ? [part] : below(part).filter(({ type }) => type === 'TR'),
  );
  return rows.map((row) =>
    below(row).reduce((sum, cell) => sum + Number(attribute(facts, cell, 'ColSpan') ?? 1), 0),
  );
}

function headingBreaches({ elements }: PdfFacts): readonly string[] {
  let level = 0;
  return elements.flatMap(({ type }) => {
    const found = /^H([1-6])$/.exec(type);
    if (!found) return [];
    const before = level;
    level = Number(found[1]);
    return unless(level <= before + 1, `H${level} follows H${before}`);
  });
}

/** The checks. */
export const tagChecks: readonly Check[] = [
  {
    clause: 'UA 5-1',
    breaches: ({ metadata }) =>
      unless(/<pdfuaid:part>1<\/pdfuaid:part>/.test(metadata), 'the metadata do not say PDF/UA-1'),
  },
  {
    clause: 'UA 5-2',
    breaches: ({ metadata }) =>
      unless(
        metadata.includes('xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/"'),
        'the prefix of the PDF/UA schema is not pdfuaid',
      ),
  },
  {
    clause: 'UA 6.1',
    breaches: ({ file }) =>
      unless(/^%PDF-1\.[0-7]\n/.test(file.header), 'the header is not that of PDF 1.0 to 1.7'),
  },
  {
    clause: 'UA 6.2',
    breaches: ({ file }) =>
      unless(file.dict(file.catalog.MarkInfo).Marked === true, 'the file is not marked as tagged'),
  },
  { clause: 'UA 7.1-1', breaches: markingBreaches },
  { clause: 'UA 7.1-2', breaches: parentTreeBreaches },
  {
    clause: 'UA 7.1-4',
    breaches: ({ file }) =>
      unless(file.dict(file.catalog.MarkInfo).Suspects !== true, 'the tags are said to be suspect'),
  },
  { clause: 'UA 7.1-5', breaches: unmapped },
  {
    clause: 'UA 7.1-7',
    breaches: ({ file }) =>
      Object.keys(file.dict(file.dict(file.catalog.StructTreeRoot).RoleMap)).flatMap((type) =>
        unless(!standardTypes.has(type), `the role map gives the standard type ${type} another meaning`),
      ),
  },
  {
    clause: 'UA 7.1-8',
    breaches: ({ file }) =>
      unless(file.get(file.catalog.Metadata) instanceof Stream, 'the catalog has no metadata'),
  },
  {
    clause: 'UA 7.1-9',
    breaches: ({ metadata }) =>
      unless(/<dc:title>.*\S.*<\/dc:title>/s.test(metadata), 'the metadata hold no title'),
  },
  {
    clause: 'UA 7.1-10',
    breaches: ({ file }) =>
      unless(
        file.dict(file.catalog.ViewerPreferences).DisplayDocTitle === true,
        'the title is not to be shown',
      ),
  },
  {
    clause: 'UA 7.1-11',
    breaches: ({ elements }) =>
      unless(elements[0]?.type === 'Document', 'the tree does not begin with a Document'),
  },
  {
    clause: 'UA 7.2-2',
    breaches: ({ file }) => unless(languageForm.test(String(file.catalog.Lang)), 'the language is not given'),
  },
  {
    clause: 'UA 7.2-29',
    breaches: ({ elements }) =>
      elements.flatMap(({ type, dict }) =>
        unless(
          dict.Lang === undefined || languageForm.test(String(dict.Lang)),
          `the language of a ${type} is none`,
        ),
      ),
  },
  {
    clause: 'UA 7.2-3',
    breaches: ({ elements }) =>
      elements.flatMap(({ type, parent }) =>
        unless(within[type]?.includes(parent?.type ?? '') ?? true, `${type} stands in ${parent?.type}`),
      ),
  },
  { clause: 'UA 7.2-10', breaches: holds('TR') },
  {
    clause: 'UA 7.2-11',
    breaches: (facts) => [
      ...holds('Table')(facts),
      ...facts.elements
        .filter(({ type }) => type === 'Table')
        .flatMap((table) => {
          const parts = childTypes(facts, table);
          const caption = parts.indexOf('Caption');
          return [
            ...unless(parts.filter((type) => type === 'THead').length <= 1, 'a table has two heads'),
            ...unless(
              caption <= 0 || caption === parts.length - 1,
              'a caption stands in the middle of its table',
            ),
          ];
        }),
    ],
  },
  {
    clause: 'UA 7.2-12',
    breaches: (facts) => ['THead', 'TBody', 'TFoot'].flatMap((type) => holds(type)(facts)),
  },
  {
    clause: 'UA 7.2-15',
    breaches: (facts) =>
      facts.elements
        .filter(({ type }) => type === 'Table')
        .flatMap((table) => {
          const widths = tableWidths(facts, table);
          return unless(new Set(widths).size <= 1, `a table has rows of ${widths} columns`);
        }),
  },
  { clause: 'UA 7.2-17', breaches: holds('L') },
  { clause: 'UA 7.2-19', breaches: holds('LI') },
  { clause: 'UA 7.2-26', breaches: holds('TOC') },
  {
    clause: 'UA 7.3',
    breaches: ({ elements }) =>
      elements.flatMap((one) =>
        unless(one.type !== 'Figure' || String(one.dict.Alt ?? '') !== '', 'a figure has no words'),
      ),
  },
  { clause: 'UA 7.4.2', breaches: headingBreaches },
  {
    clause: 'UA 7.4.4',
    breaches: ({ elements }) => {
      const types = new Set(elements.map(({ type }) => type));
      return unless(
        !types.has('H') || ![...types].some((type) => /^H[1-6]$/.test(type)),
        'headings with and without a level are mixed',
      );
    },
  },
  {
    clause: 'UA 7.5',
    breaches: (facts) =>
      facts.elements.flatMap((one) =>
        unless(
          one.type !== 'TH' || nameOf(attribute(facts, one, 'Scope')) !== '',
          'a head cell does not say what it heads',
        ),
      ),
  },
  {
    clause: 'UA 7.9',
    breaches: ({ elements }) => {
      const ids = elements.filter(({ type }) => type === 'Note').map(({ dict }) => String(dict.ID ?? ''));
      return unless(
        !ids.includes('') && new Set(ids).size === ids.length,
        'notes without an id of their own',
      );
    },
  },
  {
    clause: 'UA 7.10',
    breaches: ({ file }) =>
      unless(
        !('OCProperties' in file.catalog) ||
          String(file.dict(file.dict(file.catalog.OCProperties).D).Name ?? '') !== '',
        'content that can be hidden has no name',
      ),
  },
  {
    clause: 'UA 7.11',
    breaches: ({ dicts }) =>
      dicts
        .filter(({ Type }) => nameOf(Type) === 'Filespec')
        .flatMap((dict) => unless('F' in dict && 'UF' in dict, 'an attached file has not both its names')),
  },
  {
    clause: 'UA 7.16',
    breaches: ({ file }) =>
      unless(
        !('Encrypt' in file.trailer) || (Number(file.dict(file.trailer.Encrypt).P) & 512) !== 0,
        'the file is locked against screen readers',
      ),
  },
  {
    clause: 'UA 7.20',
    breaches: ({ dicts }) =>
      dicts
        .filter(({ Subtype }) => nameOf(Subtype) === 'Form')
        .flatMap((dict) => unless(!('Ref' in dict), 'something drawn stands in another file')),
  },
];
