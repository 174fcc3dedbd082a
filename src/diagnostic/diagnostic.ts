/**
 * A problem told to a keeper: what is wrong, where, and how to mend it.
 *
 * Facts come first (code, place, found, expected); sentences are made from them by the printers in
 * this folder. Every stage returns problems of this one type, so that a run can report all of them at once.
 */
import type { DiagnosticCode } from './catalogue';

/** `error` stops the making of papers; `remark` is worth reading and stops nothing. */
export type Severity = 'error' | 'remark';

/** A place in a text file. Lines and columns count from 1. */
export interface Spot {
  /** The file as the keeper named it. */
  readonly file: string;
  readonly line: number;
  readonly column: number;
  /** The place inside the data, such as `tanks.main-tank.capacity`. */
  readonly path?: string;
}

/** One problem. All sentences are plain words, lower case, without a full stop. */
export interface Diagnostic {
  /** The stable identifier, listed with its meaning in `catalogue.ts` and in `docs/diagnostics.md`. */
  readonly code: DiagnosticCode;
  readonly severity: Severity;
  /** What is wrong, in one line; names stand in back-ticks. */
  readonly message: string;
  readonly at?: Spot;
  /** What stands there now. */
  readonly found?: string;
  /** What would be right there. */
  readonly expected?: string;
  /** What the keeper can do. */
  readonly mend: string;
  /** Context that helps, each a sentence of its own. */
  readonly notes?: readonly string[];
}

/** Either a value, or the problems that kept it from being made. Remarks may come with a value. */
export type Outcome<T> =
  | { readonly ok: true; readonly value: T; readonly remarks: readonly Diagnostic[] }
  | { readonly ok: false; readonly problems: readonly Diagnostic[] };

/** A good outcome, with any remarks made on the way. */
export function good<T>(value: T, remarks: readonly Diagnostic[] = []): Outcome<T> {
  return { ok: true, value, remarks };
}

/** A failed outcome. `problems` holds at least one error, and any remarks made on the way. */
export function bad<T>(problems: readonly Diagnostic[]): Outcome<T> {
  return { ok: false, problems };
}

/** True if any of the problems is an error. */
export function hasErrors(problems: readonly Diagnostic[]): boolean {
  return problems.some((problem) => problem.severity === 'error');
}
