/** Raising steam, the start-up, blowing down, reading sizes. */
import { describe, expect, test } from 'vitest';
import { readTimeline } from '../../../src/calc/time/timeline';
import { usGallon } from '../../../src/quantity/base-units';
import { demoCar, demoNames, figureOf, measureOf, siOf, soundOf, tiny, wordsOf } from './figured';

describe('raising steam', () => {
  test('without the mass of the metal it is not known, and the figure says what to weigh', () => {
    expect(measureOf(tiny(), 'steam-cold-working')).toContain('boiler.steel-mass');
    expect(measureOf(tiny([', full-rate: 3 US gal/h', '']), 'steam-cold-working')).toContain('full-rate');
  });

  test.each(demoNames)('%s: a higher pressure is reached later, a warm boiler sooner', (name) => {
    const { raising } = demoCar(name).figures;
    const [cold, warm] = raising.curves;
    const seconds = (curve: typeof cold) => curve?.checks.map((check) => check.seconds ?? Number.NaN) ?? [];
    expect(seconds(cold)).toEqual([...seconds(cold)].sort((a, b) => a - b));
    for (const [index, time] of seconds(warm).entries()) expect(time).toBeLessThan(seconds(cold)[index] ?? 0);
    expect(seconds(cold).length).toBeGreaterThan(2);
  });

  test('more metal to heat takes longer', () => {
    const heavy = demoCar('marigold', ['steel-mass: about 330 lb', 'steel-mass: about 430 lb']);
    expect(siOf(heavy, 'steam-cold-working')).toBeGreaterThan(
      siOf(demoCar('marigold'), 'steam-cold-working') * 1.02,
    );
  });

  test('every time in the tables is a figure of its own', () => {
    const { figures } = demoCar('marigold');
    const ids = figures.all.map(({ id }) => id);
    for (const { start, checks } of figures.raising.curves)
      for (const { at } of checks) expect(ids).toContain(`steam-${start}-${at}`);
  });
});

describe('the start-up', () => {
  test.each(demoNames)(
    '%s: each part begins when the one before it is over, the last as the car moves',
    (name) => {
      const { startUp } = demoCar(name).figures;
      startUp.parts.forEach((part, index) => {
        const next = startUp.parts[index + 1];
        expect(part.goodS - part.lastsGoodS).toBeCloseTo(next?.goodS ?? 0, 6);
        expect(part.leastS - part.lastsLeastS).toBeCloseTo(next?.leastS ?? 0, 6);
        expect(part.goodS).toBeGreaterThanOrEqual(part.leastS);
      });
      expect(startUp.attendedGoodS).toBeLessThan(startUp.goodS);
      expect(startUp.attendedGoodS).toBe(startUp.parts.find(({ flame }) => flame)?.goodS);
    },
  );

  test('soak and torch are the spec’s; a car lit by a spark has neither', () => {
    const marigold = demoCar('marigold').figures.startUp.parts;
    expect(marigold.find(({ id }) => id === 'soak')).toMatchObject({ lastsLeastS: 900, lastsGoodS: 1500 });
    expect(demoCar('heron').figures.startUp.parts.map(({ id }) => id)).toEqual([
      'look-over',
      'fill',
      'light',
      'raise',
      'prove',
      'warm',
    ]);
  });

  test('where steam raising is not known nothing is promised', () => {
    expect(measureOf(tiny(), 'start-up-good')).toContain('steam raised');
    expect(tiny().figures.startUp.parts).toEqual([]);
  });

  test.each([
    [
      'a part that stands twice',
      'clock: "10:00"\nparts:\n  - { id: a, name: A, takes: soak }\n  - { id: a, name: B, takes: soak }',
      'stands twice',
    ],
    [
      'waiting for what comes later',
      'clock: "10:00"\nparts:\n  - { id: a, name: A, takes: soak, after: [b] }\n  - { id: b, name: B, takes: soak }',
      'waits for `b`',
    ],
    ['no times', 'clock: "10:00"\nparts:\n  - { id: a, name: A, takes: said }', 'says no times'],
    [
      'least above good',
      'clock: "10:00"\nparts:\n  - { id: a, name: A, takes: said, least: 9 min, good: 5 min }',
      'above its good time',
    ],
  ])('a faulty file: %s', (_, text, message) => {
    const outcome = readTimeline(text, 'timeline.yaml');
    expect(outcome.ok ? [] : outcome.problems.map((problem) => problem.message).join()).toContain(message);
    expect(outcome.ok ? undefined : outcome.problems[0]?.at?.line).toBeGreaterThan(1);
  });

  test('a good file', () => {
    const text = 'clock: "09:30"\nparts:\n  - { id: a, name: A, takes: said, least: 5 min, good: 9 min }';
    expect(soundOf(readTimeline(text, 'timeline.yaml')).clockS).toBe(9.5 * 3600);
  });
});

describe('blowing down', () => {
  const hard = ['running:\n', 'running:\n  water-hardness: 100 mg/L\n'] as const;
  const most = ['draws-full: not-known', 'most-hardness: 500 mg/L\n  draws-full: not-known'] as const;

  test('5 gallons, water of 100 mg/L, at most 500: 25 gallons of feed between blow-downs', () => {
    expect(siOf(tiny(hard, most), 'blow-down-interval') / usGallon).toBeCloseTo(25, 9);
  });

  test('the first demo car’s invented water shows the whole way: 60 over 3 grains, 3.4 gallons blown each time', () => {
    const { figures } = demoCar('marigold');
    const { value, inputs } = figures.blowDownInterval;
    expect(value.kind === 'quantity' ? value.quantity.si / usGallon : 0).toBeCloseTo(68, 6);
    expect(inputs.map(({ from }) => from)).toEqual([
      'running.water-hardness',
      'boiler.most-hardness',
      'boiler.blow-down-amount',
      'water-use-level',
    ]);
  });

  test('only what is let go each time counts: 2 of the 5 gallons make 10 of feed', () => {
    const part = ['draws-full: not-known', `blow-down-amount: 2 US gal\n  ${most[1]}`] as const;
    expect(siOf(tiny(hard, part), 'blow-down-interval') / usGallon).toBeCloseTo(10, 9);
  });

  // UFC 3-240-13FN, 3-1: 250 in the feed, 5000 in the boiler: 5 in 100 of the feed is blown down
  test('the worked example of UFC 3-240-13FN, a part let go each time', () => {
    const feed = [hard[0], hard[1].replace('100 mg/L', '250 mg/L')] as const;
    const part = [
      'draws-full: not-known',
      `blow-down-amount: 1 US gal\n  ${most[1].replace('500 mg/L', '5000 mg/L')}`,
    ] as const;
    expect(usGallon / siOf(tiny(feed, part), 'blow-down-interval')).toBeCloseTo(0.05, 9);
  });

  test('without the hardness it is not known, first of the water and then of the boiler', () => {
    expect(measureOf(tiny(), 'blow-down-interval')).toContain('running.water-hardness');
    expect(measureOf(tiny(hard), 'blow-down-interval')).toContain('boiler.most-hardness');
  });

  test('water already as hard as the boiler’s may be', () => {
    const soft = [most[0], most[1].replace('500', '100')] as const;
    expect(wordsOf(tiny(hard, soft), 'blow-down-interval')).toContain('soften it');
  });
});

describe('reading sizes', () => {
  test('28 in at 16 minutes of arc and an x-height of 0.52: 18.1 pt by hand, rounded up', () => {
    const heightPt = 2 * 28 * 72 * Math.tan(((16 / 60) * Math.PI) / 360);
    expect(heightPt / 0.52).toBeCloseTo(18.04, 1);
    expect(wordsOf(tiny(), 'type-dash-least')).toBe('18.1 pt');
  });

  test('the preferred size is larger, and so is that for reading from farther off', () => {
    const pt = (id: string) => Number.parseFloat(wordsOf(tiny(), id));
    expect(pt('type-dash-preferred')).toBeGreaterThan(pt('type-dash-least'));
    expect(pt('type-wall-least')).toBeGreaterThan(pt('type-dash-least'));
    expect(figureOf(tiny(), 'type-lap-least').source).toContain('ISO 9241-303');
  });
});
