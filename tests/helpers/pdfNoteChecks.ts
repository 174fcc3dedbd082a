/** Links and fields: PDF/UA-1, 7.15 and 7.18; PDF/A-2, 6.3 and 6.4. */

import { type Check, nameOf, ownerOf, type PdfFacts, unless } from './pdfFacts';
import { isDict, Stream } from './pdfFile';

const links = ({ annotations }: PdfFacts) => annotations.filter(({ type }) => type === 'Link');
const fields = ({ annotations }: PdfFacts) => annotations.filter(({ type }) => type === 'Widget');
const form = ({ file }: PdfFacts) => file.dict(file.catalog.AcroForm);

/** Of PDF/UA-1. */
export const noteChecks: readonly Check[] = [
  {
    clause: 'UA 7.15',
    breaches: (facts) => unless(!('XFA' in form(facts)), 'the form is one of XFA'),
  },
  {
    clause: 'UA 7.18.1',
    breaches: (facts) =>
      fields(facts).flatMap(({ dict }) =>
        unless(String(dict.TU ?? '') !== '', `the field ${String(dict.T)} does not say what belongs in it`),
      ),
  },
  {
    clause: 'UA 7.18.2',
    breaches: ({ annotations }) =>
      unless(
        annotations.every(({ type }) => type !== 'TrapNet'),
        'a trap network',
      ),
  },
  {
    clause: 'UA 7.18.3',
    breaches: ({ annotations }) =>
      annotations.flatMap(({ page }) =>
        unless(nameOf(page.Tabs) === 'S', 'a page with links or fields has no tab order'),
      ),
  },
  {
    clause: 'UA 7.18.4',
    breaches: (facts) =>
      fields(facts).flatMap((field) =>
        unless(
          ownerOf(facts, field)?.type === 'Form',
          `the field ${String(field.dict.T)} is not in a Form element`,
        ),
      ),
  },
  {
    clause: 'UA 7.18.5-1',
    breaches: (facts) =>
      links(facts).flatMap((link) =>
        unless(ownerOf(facts, link)?.type === 'Link', 'a link is not in a Link element'),
      ),
  },
  {
    clause: 'UA 7.18.5-2',
    breaches: (facts) =>
      links(facts).flatMap(({ dict }) => unless(String(dict.Contents ?? '') !== '', 'a link has no words')),
  },
];

/** Of PDF/A-2. */
export const keptNoteChecks: readonly Check[] = [
  {
    clause: 'A 6.3.1',
    breaches: ({ annotations }) =>
      annotations.flatMap(({ type }) =>
        unless(['Link', 'Widget'].includes(type), `an annotation of the kind ${type}`),
      ),
  },
  {
    clause: 'A 6.3.2',
    breaches: ({ annotations }) =>
      annotations.flatMap(({ dict }) => unless(dict.F === 4, 'a link or field is not marked to be printed')),
  },
  {
    clause: 'A 6.3.3',
    breaches: (facts) =>
      fields(facts).flatMap(({ dict }) => {
        const looks = facts.file.dict(dict.AP);
        const normal = facts.file.get(looks.N);
        const sound = nameOf(dict.FT) === 'Btn' ? isDict(normal) : normal instanceof Stream;
        return unless(
          sound && Object.keys(looks).length === 1,
          `the field ${String(dict.T)} has not one appearance of its kind`,
        );
      }),
  },
  {
    clause: 'A 6.4.1-1',
    breaches: (facts) =>
      fields(facts).flatMap(({ dict }) =>
        unless(!('A' in dict) && !('AA' in dict), 'a field that does something'),
      ),
  },
  {
    clause: 'A 6.4.1-3',
    breaches: (facts) => unless(form(facts).NeedAppearances !== true, 'fields are to be drawn anew'),
  },
  {
    clause: 'A 6.4.2',
    breaches: ({ file, ...facts }) =>
      unless(
        !('XFA' in form({ file, ...facts })) && file.catalog.NeedsRendering !== true,
        'the form is one of XFA, or wants to be made before it is shown',
      ),
  },
];
