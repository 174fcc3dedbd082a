/**
 * Problems of markup, at their place in a template.
 */
import type { DiagnosticCode } from '../diagnostic/catalogue';
import type { Diagnostic } from '../diagnostic/diagnostic';
import type { BlockOrigin } from './block';

/** Finds the origin of the letter at an offset of the markup. */
export type Finder = (offset: number) => BlockOrigin;

/** What to say beside the place. */
export interface MarkupWords {
  readonly message: string;
  readonly mend: string;
  readonly found?: string;
  readonly expected?: string;
}

/** An error at an offset of the markup. */
export function markupProblem(
  code: DiagnosticCode,
  finder: Finder,
  offset: number,
  words: MarkupWords,
): Diagnostic {
  const { template, line, column } = finder(offset);
  return { code, severity: 'error', at: { file: template, line, column }, ...words };
}
