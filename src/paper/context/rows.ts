/** Acts that most troubles share, in a row: on a card of troubles such a row is one step, once its acts were said in full. */
import type { Step } from '../../procedure/procedure';

/** One step, or several that are said as one. Never empty. */
export type Row = readonly Step[];

/** Every step by itself. */
export function eachAlone(steps: readonly Step[]): readonly Row[] {
  return steps.map((step) => [step]);
}

/** The same for a book: only switches turned off one after the other, and what danger may bar the way to; every other step by itself. */
export function inRowsOfBook(steps: readonly Step[]): readonly Row[] {
  return rowsOf(steps, (one, next) => one.ifSafe || (one.action === 'release' && next.action === 'release'));
}

/** The most acts a row holds: more than four are lost on the way from the card to the valve, as readers of the cards found. */
const mostInRow = 4;

/**
 * Neighbours that are said in a row, done by the same person under the same proviso, together; every other step by itself.
 * More than a row holds are parted into rows as nearly of one length as can be.
 */
export function inRows(steps: readonly Step[]): readonly Row[] {
  return rowsOf(steps, () => true);
}

function rowsOf(steps: readonly Step[], mayJoin: (one: Step, next: Step) => boolean): readonly Row[] {
  const rows: Step[][] = [];
  for (const step of steps) {
    const last = rows.at(-1);
    const before = last?.at(-1);
    if (last !== undefined && before !== undefined && goTogether(before, step) && mayJoin(before, step))
      last.push(step);
    else rows.push([step]);
  }
  return rows.flatMap(parted);
}

function parted(row: Row): readonly Row[] {
  const count = Math.ceil(row.length / mostInRow);
  return Array.from({ length: count }, (_, part) =>
    row.slice(Math.ceil((part * row.length) / count), Math.ceil(((part + 1) * row.length) / count)),
  );
}

function goTogether(one: Step, next: Step): boolean {
  return one.row !== '' && next.row !== '' && one.who === next.who && one.ifSafe === next.ifSafe;
}
