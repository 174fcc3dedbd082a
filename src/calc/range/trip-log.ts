/**
 * The keeper's log of trips: what was driven, over what country, and what it used.
 *
 * A comma-separated table. Its head names the columns and their units once: `date, distance (mi), water used (US gal),
 * fuel used (US gal), terrain, stops, note`. Columns may stand in any order; `stops` and `note` may be left out, and so
 * may one of the two uses; an empty cell means not measured.
 */
import { bad, type Diagnostic, good, hasErrors, type Outcome, type Spot } from '../../diagnostic/diagnostic';
import { nearest } from '../../diagnostic/nearest';
import type { Dimension } from '../../quantity/dimension';
import { readNumber } from '../../quantity/number';
import { findUnit } from '../../quantity/spelling';
import { toSi, type Unit } from '../../quantity/unit';
import { dimensionWords } from '../../quantity/wording';
import { terrains } from '../../spec/schema/running';
import { type Cell, readCsv } from './csv';

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

/** What each column may be; those with a dimension say their unit in the head. */
const columns: Readonly<Record<string, { readonly dimension?: Dimension; readonly needed: boolean }>> = {
  date: { needed: true },
  distance: { dimension: 'distance', needed: true },
  'water used': { dimension: 'volume', needed: false },
  'fuel used': { dimension: 'volume', needed: false },
  terrain: { needed: true },
  stops: { needed: false },
  note: { needed: false },
};

interface Column {
  readonly name: string;
  readonly unit?: Unit;
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

function readHead(
  head: readonly Cell[],
  file: string,
): { found: readonly Column[]; problems: readonly Diagnostic[] } {
  const problems: Diagnostic[] = [];
  const found = head.map((cell) => readColumn(cell, file, problems));
  const names = found.map((column) => column.name);
  const first: Spot = { file, line: head[0]?.line ?? 1, column: 1 };
  for (const [name, { needed }] of Object.entries(columns)) {
    const times = names.filter((each) => each === name).length;
    if (times > 1)
      problems.push(
        problem(
          'log-head',
          first,
          `the column \`${name}\` stands twice`,
          `${times} columns`,
          'one',
          'take one out',
        ),
      );
    if (needed && times === 0)
      problems.push(
        problem(
          'log-head',
          first,
          `the log has no column \`${name}\``,
          names.join(', '),
          `a column \`${name}\``,
          `add the column${columns[name]?.dimension ? ', with its unit in brackets' : ''}`,
        ),
      );
  }
  if (!names.includes('water used') && !names.includes('fuel used')) {
    problems.push(
      problem(
        'log-head',
        first,
        'the log says nothing of what was used',
        names.join(', '),
        '`water used` or `fuel used`',
        'add `water used (US gal)` or `fuel used (US gal)`, in the unit you measured with',
      ),
    );
  }
  return { found, problems };
}

function readColumn(cell: Cell, file: string, problems: Diagnostic[]): Column {
  const [, written = '', unitText] = /^(.*?)(?:\s*\((.*)\))?$/.exec(cell.text.toLowerCase()) ?? [];
  const name = written.trim().replace(/\s+/g, ' ');
  const known = Object.hasOwn(columns, name) ? columns[name] : undefined;
  const at = spot(cell, file);
  if (!known) {
    const near = nearest(name, Object.keys(columns));
    problems.push(
      problem(
        'log-head',
        at,
        `\`${cell.text}\` is not a column of a log`,
        `\`${cell.text}\``,
        Object.keys(columns)
          .map((each) => `\`${each}\``)
          .join(', '),
        near ? `write \`${near}\`` : 'rename it, or call it `note`',
      ),
    );
    return { name };
  }
  if (!known.dimension) return { name };
  const unit = unitText === undefined ? undefined : findUnit(known.dimension, unitText);
  if (unit) return { name, unit };
  const { name: kind, examples } = dimensionWords[known.dimension];
  const sample = examples[0].replace(/^[\d.\s]+/, '');
  problems.push(
    problem(
      'log-head',
      at,
      `the column \`${name}\` does not say its unit`,
      `\`${cell.text}\``,
      `the unit of ${kind} in brackets`,
      `write \`${name} (${sample})\`, or the unit you used`,
    ),
  );
  return { name };
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

function readMeasure(
  cell: Cell,
  column: Column | undefined,
  file: string,
  told: Diagnostic[],
): number | undefined {
  const number = readNumber(cell.text);
  if (number && number.rest === '' && (column?.unit || Number.isInteger(number.value))) {
    return column?.unit ? toSi(number.value, column.unit) : number.value;
  }
  const unitThere = number !== undefined && number.rest.trim() !== '';
  const expected = column?.unit ? `a number of ${column.unit.name}` : 'a whole number';
  told.push(
    problem(
      'log-value',
      spot(cell, file),
      `\`${cell.text}\` cannot be read as ${column?.name ?? 'a number'}`,
      `\`${cell.text}\``,
      expected,
      unitThere
        ? `write only the number; the unit stands in the head`
        : `write ${expected}, or leave the cell empty if it was not measured`,
    ),
  );
  return undefined;
}

function readDate(cell: Cell | undefined, file: string, told: Diagnostic[]): string | undefined {
  if (!cell) return undefined;
  const day = new Date(`${cell.text}T00:00:00Z`);
  const isDay =
    /^\d{4}-\d{2}-\d{2}$/.test(cell.text) &&
    !Number.isNaN(day.getTime()) &&
    day.toISOString().startsWith(cell.text);
  if (isDay) return cell.text;
  told.push(
    problem(
      'log-value',
      spot(cell, file),
      `\`${cell.text}\` is not a date`,
      `\`${cell.text}\``,
      'a date as year-month-day',
      'write it like `2026-03-14`',
    ),
  );
  return undefined;
}

function readTerrain(cell: Cell | undefined, file: string, told: Diagnostic[]): Terrain | undefined {
  if (!cell) return undefined;
  const found = terrains.find((terrain) => terrain === cell.text.toLowerCase());
  if (found) return found;
  told.push(
    problem(
      'log-value',
      spot(cell, file),
      `\`${cell.text}\` is not a kind of terrain`,
      `\`${cell.text}\``,
      terrains.map((terrain) => `\`${terrain}\``).join(', '),
      `write \`${nearest(cell.text, terrains) ?? 'rolling'}\` if that is meant`,
    ),
  );
  return undefined;
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

function spot(cell: Cell, file: string): Spot {
  return { file, line: cell.line, column: cell.column };
}

function problem(
  code: Diagnostic['code'],
  at: Spot,
  message: string,
  found: string,
  expected: string,
  mend: string,
): Diagnostic {
  return { code, severity: 'error', at, message, found, expected, mend };
}
