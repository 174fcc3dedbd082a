import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { loadSpec } from '../../src/spec/load';
import { spoiled } from '../helpers/tinySpec';
import { told } from './told';

const root = join(import.meta.dirname, '..', '..');
const thimble = readFileSync(join(root, 'cars', 'thimble.yaml'), 'utf8');
const marigold = readFileSync(join(root, 'cars', 'marigold.yaml'), 'utf8');
const heron = readFileSync(join(root, 'cars', 'heron.yaml'), 'utf8');

/** What is said of the heights of a spec with some of its lines changed. */
function said(text: string, ...changes: readonly (readonly [from: string, to: string])[]) {
  const changed = changes.reduce((before, [from, to]) => {
    if (!before.includes(from)) throw new Error(`no ${from}`);
    return before.replace(from, to);
  }, text);
  const outcome = loadSpec(changed, 'car.yaml', ['kerosene', 'gasoline', 'naphtha']);
  const all = outcome.ok ? outcome.remarks : outcome.problems;
  return all
    .filter(({ code }) => code === 'spec-level-heights')
    .map(({ severity, message }) => `${severity}: ${message}`);
}

test('the demo cars’ heights are in order, and a car need not have them', () => {
  expect(said(thimble)).toEqual([]);
  expect(said(marigold)).toEqual([]);
  expect(said(heron)).toEqual([]);
});

describe('heights in an order that cannot be', () => {
  test.each([
    [
      'the lowest water seen in the glass under the lowest safe level',
      'bottom: 4 in',
      'bottom: 3 in',
      'the lowest safe level (3 1/2 in) is above the bottom of the glass (3 in)',
    ],
    [
      'the lowest level with a fire under the lowest safe level',
      'lowest-level: 6 in',
      'lowest-level: 3 in',
      'the lowest safe level (3 1/2 in) is above the lowest level with a fire (3 in)',
    ],
    [
      'the lowest level out of sight under the glass',
      'lowest-level: 6 in',
      'lowest-level: 3 3/4 in',
      'the bottom of the glass (4 in) is above the lowest level with a fire (3 3/4 in)',
    ],
    [
      'the working level under the lowest',
      'working-level: 7 in',
      'working-level: 5 in',
      'the lowest level with a fire (6 in) is not below the working level (5 in)',
    ],
    [
      'the working level over the glass',
      '10 in }',
      '6 1/2 in }',
      'the working level (7 in) is not below the top of the glass (6 1/2 in)',
    ],
    [
      'water carried over at the working level',
      'highest-level: 9 1/4 in',
      'highest-level: 7 in',
      'the working level (7 in) is not below the highest level (7 in)',
    ],
    [
      'the glass over the top of the boiler',
      'top: 13 in',
      'top: 9 1/2 in',
      'the top of the glass (10 in) is above the top of the boiler (9 1/2 in)',
    ],
    [
      'the lowest cock under the lowest safe level',
      'lower-try-cock, at: 6 in',
      'lower-try-cock, at: 3 in',
      'the lowest safe level (3 1/2 in) is above lower try cock (3 in)',
    ],
    [
      'the cocks changed about',
      'upper-try-cock, at: 8 in',
      'upper-try-cock, at: 5 in',
      'lower try cock (6 in) is not below upper try cock (5 in)',
    ],
  ])('%s', (_, from, to, message) => {
    expect(said(thimble, [from, to])).toContain(`error: ${message}`);
  });

  test.each([
    [
      'the cut-off under the lowest safe level',
      'low-water-cut: 5 5/16 in',
      'low-water-cut: 3 in',
      'the lowest safe level (3 1/2 in) is above where the low-water cut-off acts (3 in)',
    ],
    [
      'the cut-off at the working level',
      'low-water-cut: 5 5/16 in',
      'low-water-cut: 6 7/8 in',
      'where the low-water cut-off acts (6 7/8 in) is not below the working level (6 7/8 in)',
    ],
    [
      'feeding begun too late',
      'feed-from: 6 1/4 in',
      'feed-from: 5 in',
      'the lowest level with a fire (5 5/16 in) is above where feeding begins (5 in)',
    ],
    [
      'feeding ended before it begins',
      'feed-to: 7 1/2 in',
      'feed-to: 6 in',
      'where feeding begins (6 1/4 in) is not below where feeding ends (6 in)',
    ],
  ])('%s', (_, from, to, message) => {
    expect(said(marigold, [from, to])).toEqual([`error: ${message}`]);
  });
});

test('where it stands, and why it matters, are told', () => {
  const heights =
    'heights: { from: foot, top: 13 in, least-safe: 5 in, lowest-level: 6 in, working-level: 7 in, glass: { bottom: 4 in, top: 9 in } }';
  expect(told(spoiled(['  blow-down:', `  ${heights}\n  blow-down:`]))).toMatchInlineSnapshot(`
    "110:50 error spec-level-heights at “5 in, lowest-level: 6 in”
      the lowest safe level (5 in) is above the bottom of the glass (4 in)
      found: \`5 in\`
      expected: at most \`4 in\`
      mend: correct one of the two; the bottom of the glass stands in line 110
      note: Water that is out of sight in the glass must still cover what the fire heats."
  `);
});
