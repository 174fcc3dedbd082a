/** What is handed from the thread that proves to one that makes papers: nothing is lost, and it is plain data. */
import { describe, expect, test } from 'vitest';
import { leaksOf } from '../../src/proof/leaks';
import { modelOf } from '../../src/proof/model';
import { inOrder, prove, walkThrough } from '../../src/proof/prove';
import { findingsOf, orderOf, putInOrder } from '../../src/proof/shown';
import { demo, theDay } from './library';

const { car, procedures: given } = demo('marigold');
const proof = prove(car, given, { day: theDay() });

describe('the order of the steps', () => {
  test('put on the procedures of another reading of the car, gives what the proof gives', () => {
    const order = structuredClone(orderOf(given, proof.procedures));
    expect(putInOrder(given, order)).toEqual(proof.procedures);
    expect(proof.procedures).not.toEqual(given);
  });

  test('is refused by procedures it is not the order of', () => {
    const order = orderOf(given, proof.procedures);
    expect(() => putInOrder(given, order.slice(1))).toThrow(RangeError);
    expect(() => putInOrder(given, [[], ...order.slice(1)])).toThrow(RangeError);
    expect(() =>
      putInOrder(
        given,
        order.map((places) => places.map((place) => place + 1000)),
      ),
    ).toThrow(RangeError);
  });
});

test('the findings come through a copy whole', () => {
  // what is handed over, before it is known whether all is right
  const findings = findingsOf(walkThrough(inOrder(car, given, { day: theDay() })));
  expect(structuredClone(findings)).toEqual(findings);
  expect(findings.tables).toEqual({
    valves: proof.tables.valves,
    critical: proof.tables.critical,
  });
  expect(findings.tables.critical.length).toBeGreaterThan(0);
  // leaks need no proof, and are handed over by themselves
  const { table, count } = leaksOf(modelOf(demo('marigold').car));
  expect(table).toEqual(proof.tables.isolation);
  expect(table.length).toBeGreaterThan(20);
  expect({ ...findings.statistics, ...count }).toEqual(proof.statistics);
});
