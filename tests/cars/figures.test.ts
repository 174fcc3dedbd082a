/**
 * The figures of the demo cars hang together. The bounds are common practice, no source, wide on purpose: they catch a
 * slip of a decimal or of a unit, not a matter of taste.
 */
import { describe, expect, test } from 'vitest';
import { steamMaking } from '../../src/calc/steam/evaporation';
import { saturationAtPressure } from '../../src/calc/steam/saturation';
import { waterAt } from '../../src/calc/steam/water-at';
import type { Car } from '../../src/car/car';
import type { CarSpec } from '../../src/spec/schema/carSpec';
import { demoCar, demoCars, heatPerM3 } from './demo';

const airPa = 101325;
const coldK = 288.15;
const waterKgPerM3 = 998;
/** Steel and copper lie near it (common practice, no source), J/(kg K). */
const metalHeat = 460;

/** Inside volume of a tank with flat ends, by elementary geometry. */
function volumeM3(shape: NonNullable<CarSpec['tanks'][string]['shape']>): number {
  switch (shape.kind) {
    case 'rectangular':
      return shape.length.si * shape.width.si * shape.height.si;
    case 'lying-cylinder':
      return (Math.PI / 4) * shape.diameter.si ** 2 * shape.length.si;
    case 'standing-cylinder':
      return (Math.PI / 4) * shape.diameter.si ** 2 * shape.height.si;
    default:
      throw new Error(`no demo car has a tank of kind ${shape.kind}`);
  }
}

function only<T>(values: readonly (T | undefined)[]): T {
  const [first] = values.filter((value) => value !== undefined);
  if (first === undefined) throw new Error('the spec does not say it');
  return first;
}

function mainBurner(car: Car) {
  return only(Object.values(car.spec.burners).filter((burner) => burner.job === 'main'));
}

/** Heat into the boiler at full fire, W. */
function fullHeatW(car: Car): number {
  const burner = mainBurner(car);
  return only([burner['full-rate']]).si * heatPerM3(car, burner.fuel) * only([car.spec.boiler.efficiency]).si;
}

function useOn(readings: CarSpec['running']['water-use'], terrain: string): number {
  return only((readings ?? []).filter((each) => each.terrain === terrain)).use.si;
}

/** Engine turns for a metre of road. */
function turnsPerM(car: Car): number {
  return car.spec.engine['turns-per-wheel-turn'] / car.spec.running.tyres['rolling-circumference'].si;
}

describe.each(demoCars)('%s', (name) => {
  const car = demoCar(name);
  const { spec } = car;

  test('tanks hold what their shape holds, within two parts in a hundred', () => {
    const shaped = Object.values(spec.tanks).filter((tank) => tank.shape !== undefined);
    expect(shaped.length).toBeGreaterThan(0);
    for (const tank of shaped) {
      expect(Math.abs(volumeM3(only([tank.shape])) / tank.capacity.si - 1), tank.name).toBeLessThan(0.02);
    }
  });

  test('steam is up in a time such a boiler takes', () => {
    const pressurePa = spec.boiler['working-pressure'].si + airPa;
    const hot = saturationAtPressure(pressurePa);
    const waterKg = spec.boiler['water-at-working-level'].si * waterKgPerM3;
    const heatJ =
      waterKg * (hot.liquid.enthalpy - waterAt(pressurePa, coldK).enthalpy) +
      only([spec.boiler['steel-mass']]).si * metalHeat * (hot.temperatureK - coldK);
    const minutes = heatJ / fullHeatW(car) / 60;
    const [least, most] = spec.boiler.kind === 'monotube' ? [1, 4] : [7, 13];
    expect(minutes).toBeGreaterThan(least);
    expect(minutes).toBeLessThan(most);
  });

  test('the fire can make the steam that the road takes at the usual speed', () => {
    const making = steamMaking({
      pressurePa: spec.boiler['working-pressure'].si + airPa,
      feedTemperatureK: coldK,
    });
    const fuelW =
      useOn(spec.running['fuel-use'], 'level') *
      spec.running['usual-speed'].si *
      heatPerM3(car, mainBurner(car).fuel);
    const share = (fuelW * only([spec.boiler.efficiency]).si) / fullHeatW(car);
    expect(share).toBeGreaterThan(0.2);
    expect(share).toBeLessThan(0.95);
    if (spec.engine.exhaust === 'condenser') return;
    const steamW =
      useOn(spec.running['water-use'], 'level') *
      spec.running['usual-speed'].si *
      waterKgPerM3 *
      making.heatPerKg;
    expect(steamW / fuelW, 'share of the fuel’s heat found in the steam').toBeGreaterThan(0.5);
    expect(steamW / fuelW).toBeLessThan(0.85);
  });

  test('water and fuel go as far as such cars go', () => {
    const reach = (holds: (held: string) => boolean, use: number) => {
      const tank = only(
        Object.values(spec.tanks).filter((each) => holds(each.holds) && each.reserve !== undefined),
      );
      const usable =
        (tank['fill-to'] ?? tank.capacity).si - (tank.unusable?.si ?? 0) - (tank.reserve?.si ?? 0);
      return usable / use / 1609.344;
    };
    const water = reach((held) => held === 'water', useOn(spec.running['water-use'], 'level'));
    const fuel = reach((held) => held === mainBurner(car).fuel, useOn(spec.running['fuel-use'], 'level'));
    const [least, most] = spec.engine.exhaust === 'condenser' ? [150, 400] : [15, 40];
    expect(water).toBeGreaterThan(least);
    expect(water).toBeLessThan(most);
    expect(fuel).toBeGreaterThan(water);
  });

  test('the pumps of the engine can feed the hilliest road', () => {
    const pumps = Object.values(spec.pumps).filter(
      (pump) => pump.moves === 'water' && pump.drive === 'engine',
    );
    expect(pumps.length).toBeGreaterThan(0);
    const fedPerM = pumps.reduce(
      (sum, pump) =>
        sum +
        only([pump['stroke-volume']]).si *
          only([pump['strokes-per-engine-turn']]) *
          only([pump.delivers]).si *
          turnsPerM(car),
      0,
    );
    const use = spec.running[spec.engine.exhaust === 'condenser' ? 'fuel-use' : 'water-use'];
    // A condensing car's tank loses little of what is fed; what the boiler takes follows from the fuel burnt.
    const heatPerKg = steamMaking({
      pressurePa: spec.boiler['working-pressure'].si + airPa,
      feedTemperatureK: 333.15,
      superheatK: 130,
    }).heatPerKg;
    const takenPerM =
      spec.engine.exhaust === 'condenser'
        ? (useOn(use, 'hilly') * heatPerM3(car, mainBurner(car).fuel) * only([spec.boiler.efficiency]).si) /
          heatPerKg /
          waterKgPerM3
        : useOn(use, 'hilly');
    expect(fedPerM / takenPerM).toBeGreaterThan(1);
    expect(fedPerM / takenPerM).toBeLessThan(3);
  });

  test('wheels stand on the car, and no seat is higher than the hood', () => {
    expect(spec.car['front-axle-back'].si + spec.car.wheelbase.si).toBeLessThan(spec.car.length.si);
    const height = only([spec.car.height]).si;
    for (const place of car.places.values()) expect(only([place.upM]), place.name).toBeLessThan(height);
  });

  test('marks what was guessed, so that papers can show the doubt', () => {
    expect(only([spec.boiler.efficiency]).estimated).toBe(true);
    expect(useOn(spec.running['water-use'], 'level')).toBeGreaterThan(0);
    const levels = (spec.running['water-use'] ?? []).filter((each) => each.terrain === 'level');
    expect(levels.map((each) => each.use.estimated)).toEqual([false]);
    const hills = (spec.running['water-use'] ?? []).filter((each) => each.terrain === 'hilly');
    expect(hills.map((each) => each.use.estimated)).toEqual([true]);
  });
});
