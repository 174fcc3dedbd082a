/**
 * Problems of a log of trips, at their place.
 */
import type { Diagnostic, Spot } from '../../diagnostic/diagnostic';
import type { Cell } from './csv';

/** The place of a cell. */
export function spot(cell: Cell, file: string): Spot {
  return { file, line: cell.line, column: cell.column };
}

/** An error in a log. */
export function problem(
  code: Diagnostic['code'],
  at: Spot,
  message: string,
  found: string,
  expected: string,
  mend: string,
): Diagnostic {
  return { code, severity: 'error', at, message, found, expected, mend };
}
