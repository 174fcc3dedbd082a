/** The run sheet of a demonstration, to the minute: counted from lighting the main burner, backward and forward. */
import { burnsOnOf } from '../../spec/burnsOn';
import type { World } from '../paper';

type Row = World['guide']['docent']['run-sheet'][number];

/** One line of the run sheet. */
export interface RunSheetRow {
  /** Minutes from lighting the main burner, such as `−62` or `+4`; empty if it is not known. */
  readonly minute: string;
  readonly who: string;
  readonly act: string;
  readonly tell: string;
  readonly gate: boolean;
  readonly fire: boolean;
}

/** A row of the run sheet with its time. */
export interface TimedRow {
  readonly who: string;
  readonly gate: boolean;
  readonly fire: boolean;
  /** Minutes from lighting the main burner; nothing if it is not known. */
  readonly minute: number | undefined;
  /** Minutes it lasts by itself. */
  readonly lasts: number | undefined;
}

/** Every line with its minute. */
export function runSheetContext(world: World): readonly RunSheetRow[] {
  const timed = timedRows(world);
  return world.guide.docent['run-sheet'].map((row, index) => ({
    minute: minuteWords(timed[index]?.minute),
    who: row.who,
    act: row.do,
    tell: row.tell ?? '',
    gate: row.gate === true,
    fire: row.fire === true,
  }));
}

/** The rows with their times: what the start-up of the car plans with in good time, and what the guide allows for the rest. */
export function timedRows(world: World): readonly TimedRow[] {
  const { curves, doubt } = world.figures.raising;
  const cold = curves.find(({ start }) => start === 'cold');
  const reached = (until: Row['until']) => {
    const seconds = cold?.checks.find(({ at }) => at === until)?.seconds;
    return seconds === undefined ? undefined : wholeMinutes(seconds * (1 + doubt));
  };
  const rows = world.guide.docent['run-sheet'];
  const starts = startMinutes(rows, (row) => lasts(row, world), reached);
  return rows.map((row, index) => ({
    who: row.who,
    gate: row.gate === true,
    fire: row.fire === true,
    minute: starts[index],
    lasts: lasts(row, world),
  }));
}

/** Minutes a row lasts; nothing if it is not known. */
function lasts({ plans, waits, takes }: Row, { car, figures }: World): number | undefined {
  if (plans !== undefined) {
    const seconds = figures.startUp.lastsGoodS.get(plans);
    return seconds === undefined ? undefined : wholeMinutes(seconds);
  }
  if (waits === undefined) return takes ?? 0;
  const seconds = Object.values(car.spec.burners)
    .map(burnsOnOf)
    .flatMap((time) => (time === undefined ? [] : [time.si]));
  return seconds.length === 0 ? undefined : wholeMinutes(Math.max(...seconds));
}

/** Begun minutes are whole ones, but what was worked out to a hair over one is not. */
function wholeMinutes(seconds: number): number {
  return Math.ceil(seconds / 60 - 1e-9);
}

/** When each row starts, in minutes from the row in which the main burner is lit. */
export function startMinutes(
  rows: readonly Row[],
  lastsOf: (row: Row) => number | undefined,
  reached: (until: Row['until']) => number | undefined,
): readonly (number | undefined)[] {
  const fireAt = Math.max(
    0,
    rows.findIndex((row) => row.fire === true),
  );
  const before: (number | undefined)[] = [];
  let start: number | undefined = 0;
  for (const row of rows.slice(0, fireAt).reverse()) {
    const length = lastsOf(row);
    start = start === undefined || length === undefined ? undefined : start - length;
    before.unshift(start);
  }
  const after: (number | undefined)[] = [];
  let next: number | undefined = 0;
  for (const row of rows.slice(fireAt)) {
    const due: number | undefined = row.until === undefined ? next : latest(next, reached(row.until));
    const length = lastsOf(row);
    after.push(due);
    next = due === undefined || length === undefined ? undefined : due + length;
  }
  return [...before, ...after];
}

function latest(a: number | undefined, b: number | undefined): number | undefined {
  return a === undefined || b === undefined ? undefined : Math.max(a, b);
}

/** A minute counted from lighting the main burner, as the run sheet prints it; empty if it is not known. */
export function minuteWords(minute: number | undefined): string {
  if (minute === undefined) return '';
  if (minute === 0) return '0';
  return minute < 0 ? `−${-minute}` : `+${minute}`;
}
