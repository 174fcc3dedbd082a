/**
 * The keeper's log of trips: what was driven, over what country, and what it used.
 *
 * A comma-separated table. Its head names the columns and their units once: `date, distance (mi), water used (US gal),
 * fuel used (US gal), terrain, stops, note`. Columns may stand in any order; `stops` and `note` may be left out, and so
 * may one of the two uses; an empty cell means not measured.
 */
import { bad, type Diagnostic, good, hasErrors, type Outcome, type Spot } from '../../diagnostic/diagnostic';
import type { terrains } from '../../spec/schema/running';
import { type Cell, readCsv } from './csv';
import { readDate, readMeasure, readTerrain } from './trip-log-cells';
import { type Column, readHead } from './trip-log-head';
import { problem, spot } from './trip-log-problem';

/** A kind of country driven through. */
export type Terrain = (typeof terrains)[number];

/** One line of the log. */
export interface Trip {
  /** Line in the file, for naming it. */
  readonly line: number;
  /** Year-month-day. */
  readonly date: string;
  readonly distanceM: number;
  readonly waterM3?: number;
  readonly fuelM3?: number;
  readonly terrain: Terrain;
  readonly stops?: number;
  readonly note?: string;
}

/** A log that was read. */
export interface TripLog {
  readonly file: string;
  readonly trips: readonly Trip[];
}

/** Read a log. Every fault is reported at its place; lines that are merely hard to believe come as remarks. */
export function readTripLog(text: string, file: string): Outcome<TripLog> {
  const table = readCsv(text);
  if (!table.ok) {
    const at = { file, line: table.line, column: table.column };
    return bad([
      problem(
        'log-form',
        at,
        'the log is not a well-formed table',
        table.why,
        'cells parted by commas',
        'close the quotes',
      ),
    ]);
  }
  const [head, ...rows] = table.rows;
  if (!head) {
    const at = { file, line: 1, column: 1 };
    return bad([
      problem(
        'log-form',
        at,
        'the log is empty',
        'nothing',
        'a head and a line for each trip',
        'give it a head such as `date, distance (mi), water used (US gal), fuel used (US gal), terrain, stops`',
      ),
    ]);
  }
  const { found, problems } = readHead(head, file);
  if (problems.length > 0) return bad(problems);
  const told: Diagnostic[] = [];
  const trips = rows.map((row) => readTrip(row, found, file, told)).filter((trip) => trip !== undefined);
  told.push(...doubts(trips, file));
  return hasErrors(told) ? bad(told) : good({ file, trips }, told);
}

function readTrip(
  row: readonly Cell[],
  head: readonly Column[],
  file: string,
  told: Diagnostic[],
): Trip | undefined {
  const before = told.length;
  const first = row[0];
  const extra = row[head.length];
  if (extra && row.slice(head.length).some((cell) => cell.text !== '')) {
    told.push(
      problem(
        'log-form',
        spot(extra, file),
        'the line has more cells than the head',
        `\`${extra.text}\``,
        `${head.length} cells`,
        'put quotes around a cell that has a comma in it',
      ),
    );
  }
  const cell = (name: string): Cell | undefined => {
    const index = head.findIndex((column) => column.name === name);
    const there = row[index];
    return there && there.text !== '' ? there : undefined;
  };
  const measured = (name: string): number | undefined => {
    const there = cell(name);
    return (
      there &&
      readMeasure(
        there,
        head.find((column) => column.name === name),
        file,
        told,
      )
    );
  };
  const at: Spot = first ? spot(first, file) : { file, line: 1, column: 1 };
  const needed = <T>(name: string, value: T | undefined): T | undefined => {
    if (value === undefined && !cell(name))
      told.push(
        problem(
          'log-value',
          at,
          `the line says no ${name}`,
          'nothing',
          `a ${name}`,
          'fill it in, or take the line out',
        ),
      );
    return value;
  };
  const date = needed('date', readDate(cell('date'), file, told));
  const distanceM = needed('distance', measured('distance'));
  const terrain = needed('terrain', readTerrain(cell('terrain'), file, told));
  if (distanceM === 0)
    told.push(
      problem(
        'log-value',
        at,
        'the trip has no length',
        '`0`',
        'more than nothing',
        'correct the distance, or take the line out',
      ),
    );
  const [waterM3, fuelM3, stops, note] = [
    measured('water used'),
    measured('fuel used'),
    measured('stops'),
    cell('note')?.text,
  ];
  if (told.length > before || date === undefined || distanceM === undefined || terrain === undefined)
    return undefined;
  return {
    line: at.line,
    date,
    distanceM,
    terrain,
    ...(waterM3 === undefined ? {} : { waterM3 }),
    ...(fuelM3 === undefined ? {} : { fuelM3 }),
    ...(stops === undefined ? {} : { stops }),
    ...(note === undefined ? {} : { note }),
  };
}

function doubts(trips: readonly Trip[], file: string): readonly Diagnostic[] {
  const seen = new Map<string, number>();
  return trips.flatMap((trip) => {
    const { line, ...said } = trip;
    const same = seen.get(JSON.stringify(said));
    seen.set(JSON.stringify(said), line);
    if (same === undefined) return [];
    const told = problem(
      'log-doubtful',
      { file, line, column: 1 },
      `the trip is the same as that of line ${same}`,
      'the same trip twice',
      'each trip once',
      'take one out if it was written twice',
    );
    return [{ ...told, severity: 'remark' as const }];
  });
}
