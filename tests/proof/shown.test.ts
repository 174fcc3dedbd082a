/** What is handed from the thread that proves to one that makes papers: nothing is lost, and it is plain data. */
import { describe, expect, test } from 'vitest';
import { prove } from '../../src/proof/prove';
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
  const findings = findingsOf(proof);
  expect(structuredClone(findings)).toEqual(findings);
  expect(findings.tables).toEqual({
    valves: proof.tables.valves,
    isolation: proof.tables.isolation,
    critical: proof.tables.critical,
  });
  expect(findings.tables.critical.length).toBeGreaterThan(0);
  expect(findings.statistics).toEqual(proof.statistics);
});
