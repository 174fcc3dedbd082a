/**
 * The cells of a log of trips: measures, dates, kinds of terrain. A cell that cannot be read is told and left out.
 */
import type { Diagnostic } from '../../diagnostic/diagnostic';
import { nearest } from '../../diagnostic/nearest';
import { readNumber } from '../../quantity/number';
import { toSi } from '../../quantity/unit';
import { terrains } from '../../spec/schema/running';
import type { Cell } from './csv';
import type { Terrain } from './trip-log';
import type { Column } from './trip-log-head';
import { problem, spot } from './trip-log-problem';

/** A number in the unit of its column, as SI; a whole number where the column has no unit. */
export function readMeasure(
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

/** A date as year-month-day. */
export function readDate(cell: Cell | undefined, file: string, told: Diagnostic[]): string | undefined {
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

/** A kind of terrain. */
export function readTerrain(cell: Cell | undefined, file: string, told: Diagnostic[]): Terrain | undefined {
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
