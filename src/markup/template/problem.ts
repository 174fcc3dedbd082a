/**
 * Problems of templates, at their place.
 */
import type { DiagnosticCode } from '../../diagnostic/catalogue';
import type { Diagnostic } from '../../diagnostic/diagnostic';
import type { Place } from './syntax';

/** What to say beside the place. */
export interface ProblemWords {
  readonly message: string;
  readonly mend: string;
  readonly found?: string;
  readonly expected?: string;
  readonly notes?: readonly string[];
  readonly path?: string;
}

/** An error at a place of a template. */
export function templateProblem(
  code: DiagnosticCode,
  template: string,
  place: Place,
  { path, ...words }: ProblemWords,
): Diagnostic {
  const at = { file: template, line: place.line, column: place.column + 1 };
  return { code, severity: 'error', at: path === undefined ? at : { ...at, path }, ...words };
}

/** Names for a sentence: `a`, `b`, `c` and 4 more. */
export function listNames(names: Iterable<string>, most = 12): string {
  const all = [...names];
  if (all.length === 0) return 'nothing';
  const shown = all.slice(0, most).map((name) => `\`${name}\``);
  return all.length > most ? `${shown.join(', ')} and ${all.length - most} more` : shown.join(', ');
}
