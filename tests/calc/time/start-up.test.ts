import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clockBefore, type Phase, startUp } from '../../../src/calc/time/start-up';

const minutes = (least: number, good: number) => ({ leastS: least * 60, goodS: good * 60 });

describe('start-up worked backwards', () => {
  const phases: Phase[] = [
    { name: 'walk-round', ...minutes(10, 20) },
    { name: 'water', ...minutes(5, 10), after: ['walk-round'] },
    { name: 'pilot', ...minutes(5, 5), after: ['walk-round'] },
    { name: 'soak', ...minutes(15, 30), after: ['pilot'] },
    { name: 'steam', ...minutes(20, 25), after: ['soak', 'water'] },
  ];

  it('counts back from moving off along what waits for what (by hand)', () => {
    const plan = startUp(phases);
    const start = Object.fromEntries(
      plan.phases.map(({ name, good, least }) => [name, [good.startS / 60, least.startS / 60]]),
    );
    expect(start).toEqual({
      'walk-round': [80, 50],
      water: [35, 25],
      pilot: [60, 40],
      soak: [55, 35],
      steam: [25, 20],
    });
    expect([plan.goodS / 60, plan.leastS / 60]).toEqual([80, 50]);
    expect(plan.critical).toEqual(['walk-round', 'pilot', 'soak', 'steam']);
  });

  it('without a word on waiting, each follows the one before', () => {
    const plan = startUp([
      { name: 'a', ...minutes(1, 2) },
      { name: 'b', ...minutes(3, 4) },
    ]);
    expect(plan.phases.map(({ good }) => [good.startS / 60, good.endS / 60])).toEqual([
      [6, 4],
      [4, 0],
    ]);
  });

  it('refuses rings, strangers and doubles', () => {
    const one = minutes(1, 1);
    expect(() =>
      startUp([
        { name: 'a', ...one, after: ['b'] },
        { name: 'b', ...one, after: ['a'] },
      ]),
    ).toThrow(/wait for each other/);
    expect(() => startUp([{ name: 'a', ...one, after: ['z'] }])).toThrow(/does not exist/);
    expect(() =>
      startUp([
        { name: 'a', ...one },
        { name: 'a', ...one },
      ]),
    ).toThrow(/same name/);
    expect(startUp([])).toEqual({ phases: [], goodS: 0, leastS: 0, critical: [] });
  });

  it('nothing begins before what it waits for is over, and the least plan never begins sooner than the good', () => {
    const list = fc
      .array(
        fc.record({ least: fc.nat(30), more: fc.nat(30), waits: fc.array(fc.nat(9), { maxLength: 3 }) }),
        { minLength: 1, maxLength: 10 },
      )
      .map((raw): Phase[] =>
        raw.map(({ least, more, waits }, i) => ({
          name: `p${i}`,
          ...minutes(least, least + more),
          after: [...new Set(waits.filter((w) => w < i))].map((w) => `p${w}`),
        })),
      );
    fc.assert(
      fc.property(list, (many) => {
        const plan = startUp(many);
        const times = new Map(plan.phases.map((each) => [each.name, each]));
        for (const phase of many) {
          const mine = times.get(phase.name);
          expect(mine?.least.startS ?? 0).toBeLessThanOrEqual(mine?.good.startS ?? 0);
          for (const name of phase.after ?? [])
            expect(times.get(name)?.good.endS ?? 0).toBeGreaterThanOrEqual(mine?.good.startS ?? 0);
        }
      }),
    );
  });
});

describe('time on the clock', () => {
  it('goes back over midnight', () => {
    expect(clockBefore(9 * 3600, 80 * 60)).toEqual({ day: 0, secondOfDay: 7 * 3600 + 40 * 60 });
    expect(clockBefore(1800, 3600)).toEqual({ day: -1, secondOfDay: 23.5 * 3600 });
  });
});
