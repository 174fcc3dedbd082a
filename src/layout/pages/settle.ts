/**
 * Page numbers depend on layout and layout on page numbers: it runs again until the numbers it was given are the
 * numbers that come out.
 */
import { bad, type Diagnostic, good, hasErrors, type Outcome } from '../../diagnostic/diagnostic';
import type { BlockOrigin } from '../../markup/block';
import { spotOf } from '../problems';

/** How often layout runs before it is given up; a paper that settles at all does so in two or three rounds. */
export const mostRounds = 5;

/** What one run of layout yields. */
export interface Round<T> {
  /** Makes the result, once the labels have settled. */
  readonly finish: () => T;
  readonly problems: readonly Diagnostic[];
  /** Page labels by name, as they came out. */
  readonly labels: ReadonlyMap<string, string>;
  /** Whether every label that was printed is the one that came out. */
  readonly settled: boolean;
}

/** Runs `layout` with the labels of the run before until they settle. Not settling is an error, as is any error in a run. */
export function settle<T>(
  layout: (known: ReadonlyMap<string, string>) => Round<T>,
  origin: BlockOrigin,
): Outcome<T> {
  let known: ReadonlyMap<string, string> = new Map();
  for (let round = 1; round <= mostRounds; round += 1) {
    const { finish, problems, labels, settled } = layout(known);
    if (hasErrors(problems)) return bad(problems);
    if (settled) return good(finish(), problems);
    known = labels;
  }
  return bad([unsettled(origin)]);
}

function unsettled(origin: BlockOrigin): Diagnostic {
  return {
    code: 'layout-unsettled',
    severity: 'error',
    message: `the page numbers have not settled after ${mostRounds} rounds`,
    at: spotOf(origin),
    mend: 'put a page break before the part whose page number changes',
  };
}
