/**
 * What a file must hold to be an accessible PDF (PDF/UA-1) and one for keeping (PDF/A-2).
 *
 * Clauses are those of ISO 14289-1 (`UA`) and ISO 19005-2 (`A`). Each check gives the breaches it finds, in words. They are
 * the machine checks that our files can break; they are not a verdict of conformance. docs/pdf.md lists them, and what is
 * not checked.
 */
import { archiveChecks } from './pdfArchiveChecks';
import { type Check, factsOf } from './pdfFacts';
import type { PdfFile } from './pdfFile';
import { fontChecks } from './pdfFontChecks';
import { keptNoteChecks, noteChecks } from './pdfNoteChecks';
import { tagChecks } from './pdfTagChecks';

/** Every check. */
export const pdfChecks: readonly Check[] = [
  ...tagChecks,
  ...noteChecks,
  ...fontChecks,
  ...archiveChecks,
  ...keptNoteChecks,
];

/** Every breach of every check, with its clause. */
export function pdfBreaches(file: PdfFile): readonly string[] {
  const facts = factsOf(file);
  return pdfChecks.flatMap(({ clause, breaches }) => breaches(facts).map((words) => `${clause}: ${words}`));
}
