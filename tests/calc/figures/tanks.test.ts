/** Sticks, filling up, water and fuel together. */
import { describe, expect, test } from 'vitest';
import { fillingM3 } from '../../../src/calc/figures/planning';
import { blendOf, mixed } from '../../../src/calc/fuel/blend';
import { mile, usGallon } from '../../../src/quantity/base-units';
import { demoCar, demoNames, figureOf, measureOf, tiny, wordsOf } from './figured';

describe.each(demoNames)('%s', (name) => {
  const car = demoCar(name);

  test('a fuller tank never goes less far, a harder road never farther, and nothing is run on under the reserve', () => {
    for (const chart of [car.figures.water, car.figures.fuel]) {
      if (chart === undefined) throw new Error('both are known');
      let before = { level: 0, rolling: 0, hilly: 0 };
      for (const { rangeM, volumeM3, toRunOnM3 } of chart.rows) {
        expect(volumeM3).toBeLessThanOrEqual(chart.model.fillToM3 * (1 + 1e-9));
        const now = { level: rangeM.level ?? 0, rolling: rangeM.rolling ?? 0, hilly: rangeM.hilly ?? 0 };
        expect(now.level).toBeGreaterThanOrEqual(now.rolling);
        expect(now.rolling).toBeGreaterThanOrEqual(now.hilly);
        for (const terrain of ['level', 'rolling', 'hilly'] as const)
          expect(now[terrain]).toBeGreaterThanOrEqual(before[terrain]);
        if (volumeM3 <= chart.model.unusableM3 + chart.model.reserveM3) expect(now.level).toBe(0);
        expect(now.level * (chart.use.byTerrain.level.planPerM ?? 0)).toBeLessThanOrEqual(toRunOnM3 + 1e-12);
        before = now;
      }
    }
  });

  test('the last row is the tank as full as it may be', () => {
    for (const chart of [car.figures.water, car.figures.fuel])
      expect(chart?.full.volumeM3, chart?.model.name).toBeGreaterThan((chart?.model.fillToM3 ?? 0) * 0.97);
  });

  test('between stops neither tank goes under its reserve; out and home neither', () => {
    const { water, fuel, planning } = car.figures;
    expect(planning.byTerrain).toHaveLength(3);
    for (const { terrain, first, betweenStopsM, turnBackM } of planning.byTerrain)
      for (const chart of [water, fuel]) {
        if (chart === undefined) throw new Error('both are known');
        const perM = chart.use.byTerrain[terrain].planPerM ?? Number.NaN;
        expect(betweenStopsM * perM).toBeLessThanOrEqual(fillingM3(chart) + 1e-12);
        expect(2 * turnBackM * perM).toBeLessThanOrEqual(fillingM3(chart) + 1e-12);
        if (chart.liquid === first) {
          const step = car.car.spec.print.units.first === 'metric' ? 1000 : mile;
          expect((betweenStopsM + step) * perM).toBeGreaterThan(fillingM3(chart));
        }
      }
    expect(wordsOf(car, 'runs-out-first')).toContain('water on level road');
  });
});

describe('a tank that nothing is known of', () => {
  test('has no range, and the figure says what to measure', () => {
    expect(measureOf(tiny(), 'fuel-range')).toMatch(/shape/);
    expect(measureOf(tiny(), 'turn-back')).toMatch(/stick/);
  });
});

describe('filling up by the stick', () => {
  const { figures } = demoCar('marigold');
  const [same, alone] = figures.toppingUp;

  test('what was in and what is added make the right blend, in a tank just full', () => {
    for (const chart of [same, alone]) {
      if (chart === undefined) throw new Error('both charts are there');
      const stick = figures.sticks.find(({ model }) => model.id === chart.tankId);
      const kerosene = chart.wanted[0]?.liquid;
      if (stick === undefined || kerosene === undefined) throw new Error('it is read with a stick');
      const now = chart.holds === 'same' ? chart.wanted : blendOf([{ liquid: kerosene, volume: 1 }]);
      const full = Math.min(stick.model.fillToM3, stick.model.tank.capacityM3);
      for (const { depthM, roomM3, amountsM3 } of chart.rows) {
        if (amountsM3 === undefined) continue;
        const volumeM3 = stick.model.tank.volumeAtDepthM3(depthM);
        const added = amountsM3.reduce((sum, amount) => sum + amount, 0);
        expect(added).toBeCloseTo(roomM3, 9);
        expect(volumeM3 + added).toBeCloseTo(full, 9);
        const poured = blendOf(
          chart.wanted.map(({ liquid }, index) => ({ liquid, volume: amountsM3[index] ?? 0 })),
        );
        const made = mixed({ blend: now, volumeM3 }, { blend: poured, volumeM3: added });
        for (const { liquid, share } of chart.wanted)
          expect(made.find((portion) => portion.liquid.key === liquid.key)?.share).toBeCloseTo(share, 6);
      }
    }
  });

  test('worked by hand: an empty tank that is filled to 16 gallons takes 95 parts of kerosene and 5 of gasoline', () => {
    const [empty] = same?.rows ?? [];
    const [kerosene = 0, gasoline = 0] = empty?.amountsM3 ?? [];
    expect(kerosene / (kerosene + gasoline)).toBeCloseTo(0.95, 9);
    expect((kerosene + gasoline) / usGallon).toBeCloseTo(16, 9);
  });

  test('nearly full of kerosene alone it cannot be made right, and says so', () => {
    const [last] = alone?.rows.slice(-1) ?? [];
    expect(last?.amountsM3).toBeUndefined();
    expect(same?.rows.every(({ amountsM3 }) => amountsM3 !== undefined)).toBe(true);
  });

  test('a car that burns one liquid has no such table', () => {
    expect(demoCar('heron').figures.toppingUp).toEqual([]);
  });

  test('of gasoline rather too little is printed', () => {
    const { value } = figureOf(demoCar('marigold'), 'blend-kerosene-blend');
    expect(value.kind === 'table' ? value.columns.map(({ rounding }) => rounding) : []).toEqual([
      'nearest',
      'nearest',
      'down',
    ]);
  });
});
