/** What the car uses: from the log, from readings, from a reading elsewhere, from few trips, from physics; never a guess in silence. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { levelLengthM, liquidUse, usedOver } from '../../../src/calc/figures/use';
import { allowance, wildWords } from '../../../src/calc/figures/useFigures';
import { readTripLog } from '../../../src/calc/range/trip-log';
import { mile, usGallon } from '../../../src/quantity/base-units';
import { spoiled } from '../../helpers/tinySpec';
import { demoCar, figured, figureOf, liquids, measureOf, siOf, soundOf, tiny, wordsOf } from './figured';

const gallonPerMile = usGallon / mile;
const readings = (lines: string) => ['running:\n', `running:\n  water-use:\n${lines}`] as const;
const level = '    - { terrain: level, use: 0.8 US gal/mi, where: the river road }\n';
const about = '    - { terrain: level, use: about 0.8 US gal/mi, where: the river road }\n';

describe('readings', () => {
  test('a reading is planned with one part in ten more, and called measured', () => {
    const car = tiny(readings(level));
    expect(siOf(car, 'water-use-level')).toBeCloseTo(0.8 * 1.1 * gallonPerMile, 12);
    expect(figureOf(car, 'water-use-level').doubt).toMatchObject({ basis: 'measured' });
    expect(figureOf(car, 'water-use-level').doubt.share).toBeCloseTo(0.1, 9);
  });

  test('an estimate is planned with a quarter more, and called estimated', () => {
    const car = tiny(readings(about));
    expect(siOf(car, 'water-use-level')).toBeCloseTo(0.8 * 1.25 * gallonPerMile, 12);
    expect(figureOf(car, 'water-use-level').doubt.basis).toBe('estimated');
  });

  test('another terrain follows by the work it takes, is more, and is an estimate', () => {
    const car = tiny(readings(level));
    const { ratios, byTerrain } = car.figures.uses.water;
    expect(byTerrain.rolling.meanPerM).toBeCloseTo(0.8 * gallonPerMile * ratios.rolling, 12);
    expect(byTerrain.rolling.planPerM).toBeCloseTo(
      0.8 * gallonPerMile * ratios.rolling * (1 + allowance.otherTerrain),
      12,
    );
    expect(figureOf(car, 'water-use-hilly').doubt.basis).toBe('estimated');
    expect(siOf(car, 'water-use-hilly')).toBeGreaterThan(siOf(car, 'water-use-rolling'));
  });

  test('of two readings the one on the road most like it is taken', () => {
    const both = `${level}    - { terrain: hilly, use: 1.5 US gal/mi, where: the moor }\n`;
    const car = tiny(readings(both));
    const named = figureOf(car, 'water-use-rolling').inputs.map(({ name }) => name);
    expect(named[0]).toContain('hilly');
  });

  test('a harder road is never planned with less, whatever was read', () => {
    const odd = `${about}    - { terrain: rolling, use: 0.7 US gal/mi, where: down the valley }\n    - { terrain: hilly, use: 0.6 US gal/mi, where: down the pass }\n`;
    const car = tiny(readings(odd));
    expect(siOf(car, 'water-use-rolling')).toBe(siOf(car, 'water-use-level'));
    expect(siOf(car, 'water-use-hilly')).toBe(siOf(car, 'water-use-level'));
  });
});

describe('a short log', () => {
  const logOf = (lines: readonly string[]) =>
    soundOf(
      readTripLog(['date,distance (mi),water used (US gal),terrain', ...lines].join('\n'), 'trips.csv'),
    );

  test('of two trips gives their mean, with a quarter more, as an estimate', () => {
    const log = logOf(['2026-05-01,10,8,level', '2026-05-02,20,17,level']);
    const car = figured(spoiled(['running:\n', 'running:\n  log: trips.csv\n']), log);
    expect(car.figures.uses.water.byTerrain.level.meanPerM).toBeCloseTo((25 / 30) * gallonPerMile, 12);
    expect(figureOf(car, 'water-use-level').doubt).toMatchObject({ basis: 'estimated' });
    expect(figureOf(car, 'water-use-level').doubt.words).toContain('2 trips only');
  });

  test('the fewer the trips, the wider what is planned with', () => {
    const trips = ['2026-05-01,10,8.1,level', '2026-05-02,20,15.8,level', '2026-05-03,15,12.3,level'];
    const more = [
      ...trips,
      ...trips.map((line) => line.replace('-05-', '-06-')),
      ...trips.map((line) => line.replace('-05-', '-07-')),
    ];
    const share = (lines: readonly string[]) =>
      figureOf(
        figured(spoiled(['running:\n', 'running:\n  log: trips.csv\n']), logOf(lines)),
        'water-use-level',
      ).doubt.share ?? 0;
    expect(share(trips)).toBeGreaterThan(share(more) * 1.3);
  });
});

describe('nothing measured', () => {
  test('water and fuel are worked out from physics, and every word of it says so', () => {
    const car = tiny();
    for (const id of ['water-use-level', 'fuel-use-hilly']) {
      const { doubt, source } = figureOf(car, id);
      expect(doubt.basis).toBe('estimated');
      expect(doubt.share).toBeCloseTo(1, 9);
      expect(doubt.words).toContain('nothing was measured');
      expect(source).toContain('from memory');
    }
  });

  test.each(['marigold', 'thimble'])('physics plans %s with no less than was measured on it', (name) => {
    const measured = demoCar(name);
    const { car } = measured;
    const { 'water-use': _, 'fuel-use': __, log: ___, ...running } = car.spec.running;
    const bare = { ...car, spec: { ...car.spec, running } };
    for (const liquid of ['water', 'fuel'] as const) {
      const guess = liquidUse(bare, liquid, undefined, liquids).byTerrain.level;
      const known = measured.figures.uses[liquid].byTerrain.level;
      expect(guess.planPerM, liquid).toBeGreaterThan(known.meanPerM ?? Number.POSITIVE_INFINITY);
    }
  });

  test('the water of a condensing car is not told by physics: not known, with what to measure', () => {
    const car = tiny(['exhaust: open-air', 'exhaust: condenser']);
    expect(measureOf(car, 'water-use-level')).toContain('fill up, drive a marked distance of level road');
    expect(siOf(car, 'fuel-use-level')).toBeGreaterThan(0);
    expect(measureOf(car, 'between-stops')).toContain('water used');
  });
});

describe('use over a way', () => {
  const lengths = fc.record({
    level: fc.double({ min: 0, max: 1e5, noNaN: true }),
    rolling: fc.double({ min: 0, max: 1e5, noNaN: true }),
    hilly: fc.double({ min: 1, max: 1e5, noNaN: true }),
  });

  test.each(['marigold', 'thimble'])(
    '%s: the mean lies between low and high, and a longer way uses more',
    (name) => {
      const use = demoCar(name).figures.uses.water;
      fc.assert(
        fc.property(lengths, (way) => {
          const used = usedOver(use, way);
          const longer = usedOver(use, { ...way, level: way.level + 1000 });
          if (used === undefined || longer === undefined) throw new Error('the use is known');
          expect(used.low).toBeLessThanOrEqual(used.mean);
          expect(used.mean).toBeLessThanOrEqual(used.high);
          expect(longer.mean).toBeGreaterThan(used.mean);
          expect(longer.high).toBeGreaterThan(used.high);
        }),
      );
    },
  );

  test('the scatter of a longer way is less in proportion', () => {
    const use = demoCar('marigold').figures.uses.water;
    const wide = (metres: number) => {
      const used = usedOver(use, { level: metres, rolling: 0, hilly: 0 });
      return used === undefined ? Number.NaN : used.high / used.mean;
    };
    expect(wide(5_000)).toBeGreaterThan(wide(50_000));
  });

  test('level length counts harder road as longer', () => {
    expect(levelLengthM({ level: 1, rolling: 10, hilly: 100 }, { level: 1, rolling: 1.5, hilly: 2 })).toBe(
      216,
    );
  });
});

describe('feed pumps', () => {
  const stroke = [
    'moves: water, drive: engine, bypass',
    'moves: water, drive: engine, stroke-volume: 2 in3, delivers: 80 %, bypass',
  ] as const;

  test('worked by hand: 2 in3 × 80 % × 2.5 turns over 86 in, against 0.8 US gal a mile', () => {
    const car = tiny(readings(level), stroke);
    const deliveredIn3PerMile = (2 * 0.8 * 2.5 * 63_360) / 86;
    const percent = Math.ceil(((0.8 * 231) / deliveredIn3PerMile) * 100);
    expect(wordsOf(car, 'feed-feed-pump')).toBe(`${percent} in 100`);
  });

  test('a pump that cannot keep up says by how much', () => {
    const small = [stroke[0], stroke[1].replace('2 in3', '0.05 in3')] as const;
    expect(wordsOf(tiny(readings(level), small), 'feed-feed-pump')).toMatch(
      /falls short: it delivers 39 in 100/,
    );
  });

  test('without the stroke it is not known', () => {
    expect(measureOf(tiny(), 'feed-feed-pump')).toContain('pumps.feed-pump.stroke-volume');
  });

  test('a condensing car’s pump feeds what the fuel evaporates, not what the tank loses', () => {
    const heron = demoCar('heron');
    const { inputs } = figureOf(heron, 'feed-engine-feed-pump');
    expect(inputs.map(({ from }) => from)).toContain('fuel-use-level');
    const share = Number(/^(\d+) in 100/.exec(wordsOf(heron, 'feed-engine-feed-pump'))?.[1]);
    expect(share).toBeGreaterThan(50);
  });
});

describe('a trip that was left out', () => {
  const trip = { line: 7, date: '2025-07-12', distanceM: 34_000, terrain: 'rolling' } as const;

  test('is told with its line, by how much it stood off, and to which side', () => {
    expect(wildWords({ trip, timesExpected: 2.316 })).toBe(
      '2025-07-12 (line 7), which used 132 in 100 more than the fit says',
    );
    expect(wildWords({ trip, timesExpected: 0.4 })).toBe(
      '2025-07-12 (line 7), which used 60 in 100 less than the fit says',
    );
  });

  test('stands in the workings of the use of each terrain', () => {
    const { figures } = demoCar('heron');
    for (const terrain of ['level', 'rolling', 'hilly'])
      expect(
        figures.all
          .find(({ id }) => id === `water-use-${terrain}`)
          ?.inputs.find(({ name }) => name === 'trips left out as wild')?.value,
      ).toMatch(/^2025-07-12 \(line 7\), which used \d+ in 100 more than the fit says$/);
  });
});
