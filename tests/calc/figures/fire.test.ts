/** The fire: what the draught lets it be, what it makes of water, and whether the readings of the road go with it. */
import { describe, expect, test } from 'vitest';
import { figureRemarks } from '../../../src/calc/figures/remarks';
import { boilerHorsepower } from '../../../src/calc/steam/evaporation';
import { imperialGallon, usGallon } from '../../../src/quantity/base-units';
import { demoCar, demoNames, figureOf, fixtureCar, measureOf, siOf, tiny } from './figured';

const poundPerHour = 0.45359237 / 3600;
const codes = (car: ReturnType<typeof demoCar>) =>
  figureRemarks(car.car, car.figures).map(({ code }) => code);
const jets =
  '    kind: jets               # two jets of vapour into mixing tubes; the flue only carries off\n';
const standing = '    standing: about 100 %    # blue to the edge at full fire in the shed yard, no wind\n';

/** Marigold with another draught. */
const drawn = (lines: string) => demoCar('marigold', [`${jets}${standing}`, lines]);
const flue = (height: string, area: string) =>
  drawn(`    kind: flue\n    height: ${height}\n    free-area: ${area}\n`);

describe('draught and the time to raise steam', () => {
  const whole = demoCar('marigold');

  test('half the fire takes more than twice as long, since the losses stay', () => {
    const half = drawn('    kind: jets\n    standing: 50 %\n');
    expect(siOf(half, 'fire-standing')).toBe(0.5);
    expect(siOf(half, 'steam-cold-working')).toBeGreaterThan(1.9 * siOf(whole, 'steam-cold-working'));
    expect(codes(half)).toContain('figure-draught-short');
  });

  test('a low flue feeds less than the full fire, a high one all of it; never more', () => {
    const [low, high] = [flue('20 in', '60 in2'), flue('10 ft', '200 in2')];
    expect(siOf(low, 'fire-standing')).toBeGreaterThan(0.1);
    expect(siOf(low, 'fire-standing')).toBeLessThan(0.9);
    expect(siOf(high, 'fire-standing')).toBe(1);
    expect(siOf(low, 'steam-cold-working')).toBeGreaterThan(siOf(high, 'steam-cold-working'));
    expect(siOf(high, 'steam-cold-working')).toBeCloseTo(siOf(whole, 'steam-cold-working'), 6);
    expect(codes(high)).not.toContain('figure-draught-short');
  });

  test('a blower too small for the burner is told', () => {
    const small = demoCar('heron', ['air: about 420 m3/h', 'air: about 120 m3/h']);
    expect(siOf(small, 'fire-standing')).toBeLessThan(0.5);
    expect(codes(small)).toContain('figure-draught-short');
  });

  test('where nobody knows the draught, it is said, and the time is told with more doubt', () => {
    const blank = drawn('    kind: jets\n');
    expect(measureOf(blank, 'fire-standing')).toContain('burns blue');
    const figure = figureOf(blank, 'steam-cold-working');
    expect(figure.doubt.share).toBe(0.5);
    expect(figureOf(whole, 'steam-cold-working').doubt.share).toBe(0.25);
    expect(figure.inputs.find(({ from }) => from === 'fire-standing')?.value).toContain('not known');
    expect(blank.figures.startUp.goodS).toBeGreaterThan(whole.figures.startUp.goodS);
    expect(measureOf(tiny(), 'fire-standing')).toContain('boiler.draught');
  });
});

describe('what the boiler makes', () => {
  test('Marigold by hand: 3 US gal/h, 95 to 5, at 70 %', () => {
    const marigold = demoCar('marigold');
    const perM3 = 0.95 * 807 * 43.8e6 + 0.05 * 744.7 * 43.438e6;
    const heatW = ((3 * usGallon) / 3600) * perM3 * 0.7;
    const perKg = siOf(marigold, 'steam-heat');
    expect(siOf(marigold, 'heat-kerosene-blend')).toBeCloseTo(perM3, -4);
    expect(siOf(marigold, 'density-kerosene-blend')).toBeCloseTo(0.95 * 807 + 0.05 * 744.7, 6);
    expect(siOf(marigold, 'steam-full-fire') / poundPerHour).toBeCloseTo(heatW / perKg / poundPerHour, 3);
    const horsepower = figureOf(marigold, 'boiler-horsepower').value;
    expect(horsepower.kind === 'number' && horsepower.number).toBe(Math.floor((heatW / 9809.5) * 10) / 10);
    expect(boilerHorsepower(34.5 * poundPerHour)).toBeCloseTo(1, 12);
  });

  test('water that a burner boils away after its valve is shut, by hand from the steam tables (Keenan & Keyes: 857.1 Btu/lb at 150 psi gauge, from memory)', () => {
    const lapwing = fixtureCar('lapwing');
    expect(lapwing.car.spec.burners['pot-burner']?.['burns-on']?.si).toBe(360);
    const heatJ = 0.1 * 1.2 * imperialGallon * 807 * 43.8e6 * 0.55;
    const boiledKg = heatJ / (857.1 * 2326);
    expect(siOf(lapwing, 'burning-on-water') * 999.1).toBeCloseTo(boiledKg, 1);
    expect(demoCar('marigold').figures.all.map(({ id }) => id)).not.toContain('burning-on-water');
  });

  test.each(demoNames)('%s: the surface of the boiler is one that such boilers have', (name) => {
    const squareFeet = siOf(demoCar(name), 'surface-per-horsepower') / 0.3048 ** 2;
    const [least, most] = name === 'heron' ? [2, 8] : [6, 16];
    expect(squareFeet).toBeGreaterThan(least);
    expect(squareFeet).toBeLessThan(most);
  });

  test('a blow-down throws away fuel, by hand from the steam tables (Keenan & Keyes: 338.5 Btu/lb at 366 °F, from memory)', () => {
    const marigold = demoCar('marigold');
    const pounds = (7.5 * usGallon * 881) / 0.45359237;
    const heat = pounds * (338.5 - 27) * 1055.06;
    const fuel = heat / (siOf(marigold, 'heat-kerosene-blend') * 0.7);
    expect(siOf(marigold, 'blow-down-fuel') / fuel).toBeCloseTo(1, 1);
  });
});

describe('water and fuel used go together', () => {
  test.each(['marigold', 'thimble'])(
    '%s: what the road shows lies near the efficiency that the spec says',
    (name) => {
      const car = demoCar(name);
      const stated = car.car.spec.boiler.efficiency?.si ?? Number.NaN;
      expect(Math.abs(siOf(car, 'heat-found-in-steam') / stated - 1)).toBeLessThan(0.15);
    },
  );

  test('a reading in the wrong gallons or ten times off is remarked on, never refused', () => {
    const spec = demoCar('thimble').car.spec.running['fuel-use']?.[0]?.use.written ?? '';
    expect(spec).not.toBe('');
    const wrong = demoCar('thimble', ['  log: thimble-trips.csv\n', ''], [spec, '1.2 mi/US gal']);
    expect(codes(wrong)).toContain('figure-heat-balance');
    expect(codes(demoCar('thimble'))).not.toContain('figure-heat-balance');
  });

  test('a car that brings its steam back tells nothing by it', () => {
    expect(demoCar('heron').figures.heatFound).toBeUndefined();
  });
});

describe('engine and pumps against road speed', () => {
  test('Marigold at 20 mph by hand: 110 in a turn of the wheel, 1.5 of the engine, 0.34 in³ at 85 %', () => {
    const { value } = figureOf(demoCar('marigold'), 'road-speeds');
    if (value.kind !== 'table') throw new Error('it is a table');
    const column = (heading: string) => value.columns.findIndex((each) => each.heading === heading);
    const row = value.rows[3] ?? [];
    const turnsPerMinute = ((20 * 63_360) / 60 / 110) * 1.5;
    expect((row[column('turns of the engine')] ?? 0) * 60).toBeCloseTo(turnsPerMinute, 6);
    const gallonsPerHour = (turnsPerMinute * 60 * 0.34 * 0.85) / 231;
    expect(((row[column('moved by the left feed pump')] ?? 0) * 3600) / usGallon).toBeCloseTo(
      gallonsPerHour,
      6,
    );
  });

  test('ends at the highest speed, and leaves out pumps of which nobody knows the strokes', () => {
    for (const name of demoNames) {
      const car = demoCar(name);
      const { value } = figureOf(car, 'road-speeds');
      if (value.kind !== 'table') throw new Error('it is a table');
      expect(value.rows.at(-1)?.[0]).toBeCloseTo(car.car.spec.running['most-speed'].si, 9);
      for (const [index, row] of value.rows.entries())
        expect(row[0]).toBeGreaterThan(value.rows[index - 1]?.[0] ?? 0);
      expect(value.columns.map(({ heading }) => heading)).not.toContain('strokes of the cylinder oil pump');
    }
  });
});
