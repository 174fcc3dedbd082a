/** Lists of legs: read, or every fault at its place. */
import { describe, expect, test } from 'vitest';
import { readLegs } from '../../../src/calc/stops/legs';
import { climbOf, lengthsBetween } from '../../../src/calc/stops/way';

const problemsOf = (text: string) => {
  const outcome = readLegs(text, 'tour.csv');
  return outcome.ok ? [] : outcome.problems;
};

test('a list is read: places along the way, country by word and by climb, yes and no', () => {
  const outcome = readLegs(
    'place,distance (mi),terrain,climb (ft),water,fuel,note\nMill,10,level,,yes,,"by the weir, left"\nTop,5,rolling,2000,,yes,\n',
    'tour.csv',
  );
  if (!outcome.ok) throw new Error('it is sound');
  const { places, stretches, lengthM } = outcome.value;
  expect(lengthM).toBeCloseTo(15 * 1609.344, 6);
  expect(places).toMatchObject([
    { name: 'Mill', water: true, fuel: false, note: 'by the weir, left' },
    { name: 'Top', water: false, fuel: true },
  ]);
  expect(stretches.map(({ terrain }) => terrain)).toEqual(['level', 'hilly']);
  expect(climbOf(stretches, 0, lengthM)).toBeCloseTo(2000 * 0.3048, 6);
});

test('of the word and the climb the harder counts', () => {
  const outcome = readLegs('place,distance (km),terrain,climb (m)\nA,10,hilly,0\nB,10,level,400', 'tour.csv');
  expect(outcome.ok && outcome.value.stretches.map(({ terrain }) => terrain)).toEqual(['hilly', 'hilly']);
});

describe('faults', () => {
  test.each([
    ['nothing', '', 'tour-form', 1],
    ['only a head', 'place,distance (mi),terrain', 'tour-form', 1],
    ['semicolons', 'place;distance (mi);terrain\nFord;3;level', 'tour-form', 1],
    ['no unit', 'place,distance,terrain\nA,1,level', 'tour-head', 1],
    ['an unknown column', 'place,distance (mi),terrian\nA,1,level', 'tour-head', 1],
    ['neither terrain nor climb as a column', 'place,distance (mi)\nA,1', 'tour-head', 1],
    ['a column twice', 'place,place,distance (mi),terrain\nA,A,1,level', 'tour-head', 1],
    ['neither in a leg', 'place,distance (mi),terrain\nA,1,', 'tour-value', 2],
    ['no distance', 'place,distance (mi),terrain\nA,,level', 'tour-value', 2],
    ['no length', 'place,distance (mi),terrain\nA,0,level', 'tour-value', 2],
    ['no place', 'place,distance (mi),terrain\n,3,level', 'tour-value', 2],
    ['perhaps water', 'place,distance (mi),terrain,water\nA,3,level,perhaps', 'tour-value', 2],
    ['too many cells', 'place,distance (mi),terrain\nA,3,level,x', 'tour-value', 2],
    ['a distance in words', 'place,distance (mi),terrain\nA,three,level', 'log-value', 2],
  ] as const)('%s', (_, text, code, line) => {
    const problems = problemsOf(text);
    expect(problems.map((problem) => problem.code)).toContain(code);
    expect(problems[0]?.at?.line).toBe(line);
    expect(problems.every(({ mend }) => mend !== '')).toBe(true);
  });

  test('all are told at once', () => {
    expect(
      problemsOf('place,distance (mi),terrain,water\nA,0,level,maybe\nB,,steep,no').length,
    ).toBeGreaterThan(3);
  });
});

test('lengths between two places add up, whatever the cut', () => {
  const stretches = [
    { fromM: 0, toM: 10, terrain: 'level' as const, climbM: 0 },
    { fromM: 10, toM: 30, terrain: 'hilly' as const, climbM: 4 },
  ];
  expect(lengthsBetween(stretches, 5, 20)).toEqual({ level: 5, rolling: 0, hilly: 10 });
  expect(climbOf(stretches, 5, 20)).toBe(2);
});
