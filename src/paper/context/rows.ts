/** Acts that most troubles share, in a row: on a card of troubles such a row is one step, once its acts were said in full. */
import type { Step } from '../../procedure/procedure';

/** One step, or several that are said as one. Never empty. */
export type Row = readonly Step[];

/** Every step by itself. */
export function eachAlone(steps: readonly Step[]): readonly Row[] {
  return steps.map((step) => [step]);
}

/** The same where danger may bar the way alone; every other step by itself. */
export function inRowsIfSafe(steps: readonly Step[]): readonly Row[] {
  return inRows(steps).flatMap((row) => (row.some(({ ifSafe }) => ifSafe) ? [row] : eachAlone(row)));
}

/** Neighbours that are said in a row, done by the same person under the same proviso, together; every other step by itself. */
export function inRows(steps: readonly Step[]): readonly Row[] {
  const rows: Step[][] = [];
  for (const step of steps) {
    const last = rows.at(-1);
    const before = last?.at(-1);
    if (last !== undefined && before !== undefined && goTogether(before, step)) last.push(step);
    else rows.push([step]);
  }
  return rows;
}

function goTogether(one: Step, next: Step): boolean {
  return one.row !== '' && next.row !== '' && one.who === next.who && one.ifSafe === next.ifSafe;
}
