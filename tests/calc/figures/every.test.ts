/** What holds for every figure of every car, whatever it is about. */
import { describe, expect, test } from 'vitest';
import { parseQuantity } from '../../../src/quantity/parse';
import { printQuantity } from '../../../src/quantity/print';
import { quantity } from '../../../src/quantity/quantity';
import { demoCar, demoNames, tiny } from './figured';

const cars = [...demoNames.map((name) => [name, demoCar(name)] as const), ['the tiny car', tiny()] as const];

describe.each(cars)('%s', (_, car) => {
  const { all } = car.figures;

  test('ids are words joined by hyphens, each once', () => {
    const ids = all.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) expect(id).toMatch(/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/);
  });

  test('says method, source, what it was tested on, and how sure', () => {
    for (const { id, name, formula, source, checkedAgainst, doubt } of all)
      for (const said of [name, formula, source, checkedAgainst, doubt.words])
        expect(said.trim(), id).not.toBe('');
  });

  test('what is made from an estimate is an estimate, and printed as one', () => {
    for (const { id, inputs, doubt, value } of all) {
      const guessed = inputs.some((input) => typeof input.value === 'object' && input.value.estimated);
      if (guessed) expect(['estimated', 'unknown'], id).toContain(doubt.basis);
      if (guessed && value.kind === 'quantity') expect(value.quantity.estimated, id).toBe(true);
    }
  });

  test('what is not known says what to measure, and nothing else is called unknown', () => {
    for (const { id, value, doubt } of all) {
      expect(doubt.basis === 'unknown', id).toBe(value.kind === 'unknown');
      if (value.kind === 'unknown') expect(value.measure.length, id).toBeGreaterThan(10);
    }
  });

  test('every number is one', () => {
    for (const { id, value } of all) {
      const numbers =
        value.kind === 'quantity'
          ? [value.quantity.si]
          : value.kind === 'number'
            ? [value.number]
            : value.kind === 'table'
              ? value.rows.flat()
              : [];
      expect(numbers.every(Number.isFinite), id).toBe(true);
      if (value.kind === 'table')
        for (const row of value.rows) expect(row, id).toHaveLength(value.columns.length);
    }
  });

  test('inputs that name a line of the spec or another figure name one there is', () => {
    const ids = new Set(all.map(({ id }) => id));
    for (const { id, inputs } of all)
      for (const { from } of inputs) {
        const [section = ''] = from.split('.');
        if (section in car.car.spec && from.includes('.'))
          expect(car.car.spotOf(from).line, `${id}: ${from}`).toBeGreaterThan(0);
        else if (/^[a-z0-9-]+$/.test(from) && from.includes('-') && !from.endsWith('.csv'))
          expect(ids.has(from), `${id}: ${from}`).toBe(true);
      }
  });

  test('so does every cell of a table', () => {
    for (const { id, value } of all) {
      if (value.kind !== 'table') continue;
      for (const row of value.rows)
        row.forEach((number, index) => {
          const column = value.columns[index];
          if (column === undefined || column.rounding === 'nearest') return;
          const { dimension, rounding } = column;
          for (const system of ['us', 'imperial', 'metric'] as const) {
            const printed = printQuantity(quantity(dimension, number), { system, rounding, inFull: true });
            const read = parseQuantity(printed.replaceAll('\u00a0', ' ').replace('−', '-'), dimension);
            const si = read.ok ? read.quantity.si : Number.NaN;
            const noise = Math.abs(number) * 1e-9 + 1e-12;
            if (rounding === 'down') expect(si, `${id}: ${printed}`).toBeLessThanOrEqual(number + noise);
            else expect(si, `${id}: ${printed}`).toBeGreaterThanOrEqual(number - noise);
          }
        });
    }
  });

  test('printed, a figure lies on the side it is rounded to, in every system of units', () => {
    for (const { id, value } of all) {
      if (value.kind !== 'quantity' || value.rounding === 'nearest') continue;
      for (const system of ['us', 'imperial', 'metric'] as const) {
        const printed = printQuantity(value.quantity, { system, rounding: value.rounding, inFull: true });
        const read = parseQuantity(
          printed.replaceAll('\u00a0', ' ').replace('−', '-'),
          value.quantity.dimension,
        );
        expect(read.ok, `${id}: ${printed}`).toBe(true);
        const si = read.ok ? read.quantity.si : Number.NaN;
        const noise = Math.abs(value.quantity.si) * 1e-9;
        if (value.rounding === 'down')
          expect(si, `${id}: ${printed}`).toBeLessThanOrEqual(value.quantity.si + noise);
        else expect(si, `${id}: ${printed}`).toBeGreaterThanOrEqual(value.quantity.si - noise);
      }
    }
  });
});
