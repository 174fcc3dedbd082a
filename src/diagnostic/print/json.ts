/**
 * Problems for other programs, as JSON.
 *
 * The shape is kept: fields may be added, none is taken away or changes its meaning while `format` is 1. A field of a
 * problem that says nothing is left out.
 */
import { catalogue } from '../catalogue';
import type { Diagnostic } from '../diagnostic';
import { countOf } from './count';

/** What is written, in the order it is written. */
export interface JsonReport {
  readonly format: 1;
  readonly errors: number;
  readonly remarks: number;
  readonly problems: readonly JsonProblem[];
}

/** One problem. Lines and columns count from 1. */
export interface JsonProblem {
  readonly severity: 'error' | 'remark';
  readonly code: string;
  /** What the code means, whatever the case at hand. */
  readonly meaning: string;
  readonly message: string;
  readonly file?: string;
  readonly line?: number;
  readonly column?: number;
  /** The place inside the data, such as `tanks.main-tank.capacity`. */
  readonly path?: string;
  readonly found?: string;
  readonly expected?: string;
  readonly mend: string;
  readonly notes?: readonly string[];
}

/** All problems in the order given, with two spaces for an indent. */
export function printAsJson(problems: readonly Diagnostic[]): string {
  const report: JsonReport = { format: 1, ...countOf(problems), problems: problems.map(asJson) };
  return JSON.stringify(report, null, 2);
}

/** One problem as plain data. */
export function asJson({
  severity,
  code,
  message,
  at,
  found,
  expected,
  mend,
  notes,
}: Diagnostic): JsonProblem {
  return {
    severity,
    code,
    meaning: catalogue[code],
    message,
    ...(at === undefined ? {} : { file: at.file, line: at.line, column: at.column }),
    ...(at?.path === undefined ? {} : { path: at.path }),
    ...(found === undefined ? {} : { found }),
    ...(expected === undefined ? {} : { expected }),
    mend,
    ...(notes === undefined || notes.length === 0 ? {} : { notes }),
  };
}
