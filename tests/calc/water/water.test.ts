import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { blowDownInterval, blowDownLoss } from '../../../src/calc/water/blow-down';
import { deliveryPerM, feedBalance } from '../../../src/calc/water/feed-pump';
import {
  type BoilerHeating,
  metalSpecificHeat,
  raiseSteam,
  timeToGaugeS,
} from '../../../src/calc/water/raise-steam';

const psi = 6894.757293168361;
const usGallon = 3.785411784e-3;
const kelvin = (degF: number): number => (degF + 459.67) / 1.8;
const relative = (found: number, expected: number): number => Math.abs(found / expected - 1);

const boiler: BoilerHeating = {
  waterM3: 6.5 * usGallon,
  metalKg: 170,
  metalSpecificHeat: metalSpecificHeat.steel,
  heatW: 100e3,
  lossWPerK: 10,
  airTemperatureK: 288.15,
  ambientPa: 101325,
  startTemperatureK: 288.15,
};

describe('raising steam', () => {
  it('engineering reference table (steel 0.49 kJ/(kg K)): 2 kg of steel from 20 to 100 °C take 78.4 kJ', () => {
    const dry = {
      ...boiler,
      waterM3: 0,
      metalKg: 2,
      lossWPerK: 0,
      startTemperatureK: 293.15,
      ambientPa: 101418,
    };
    expect(relative(raiseSteam(dry, 0).heatToMetalJ, 78.4e3)).toBeLessThan(1e-3);
  });

  it('Keenan & Keyes: a pound of water from 60 °F (28.1) to 600 psi absolute (471.6 Btu) takes 443.5 Btu', () => {
    const water = {
      ...boiler,
      waterM3: 0.45359237 / 999.016,
      metalKg: 0,
      startTemperatureK: kelvin(60),
      ambientPa: 14.696 * psi,
    };
    const raising = raiseSteam(water, (600 - 14.696) * psi);
    expect(relative(raising.heatToWaterJ / 1055.05585262, 443.5)).toBeLessThan(1.5e-3);
  });

  it('without leaks the time is the heat over the fire', () => {
    const raising = raiseSteam({ ...boiler, lossWPerK: 0 }, 500 * psi);
    expect(raising.points.at(-1)?.timeS).toBeCloseTo(
      (raising.heatToWaterJ + raising.heatToMetalJ) / boiler.heatW,
      6,
    );
    expect(raising.heatLostJ).toBe(0);
  });

  it('balances: what the fire gave is in the water, in the metal, or lost', () => {
    const raising = raiseSteam(boiler, 500 * psi);
    const given = boiler.heatW * (raising.points.at(-1)?.timeS ?? Number.NaN);
    expect(relative(raising.heatToWaterJ + raising.heatToMetalJ + raising.heatLostJ, given)).toBeLessThan(
      1e-9,
    );
  });

  it('shows no pressure until the water boils, then rises; and says when a pressure comes', () => {
    const raising = raiseSteam(boiler, 500 * psi);
    const boilingPoints = raising.points.filter((point) => point.gaugePa > 0);
    expect(boilingPoints[0]?.temperatureK).toBeGreaterThan(373.1);
    const [at100, at500] = [timeToGaugeS(raising, 100 * psi), timeToGaugeS(raising, 500 * psi)];
    expect(at100).toBeGreaterThan(boilingPoints[0]?.timeS ?? Number.NaN);
    expect(at500).toBeCloseTo(raising.points.at(-1)?.timeS ?? Number.NaN, 6);
    expect(timeToGaugeS(raising, 510 * psi)).toBeUndefined();
    expect(timeToGaugeS(raising, 0)).toBe(0);
  });

  it('says so when the leaks eat the heat', () => {
    const raising = raiseSteam({ ...boiler, heatW: 1000 }, 500 * psi);
    expect(raising.reached).toBe(false);
    expect(raising.points.at(-1)?.temperatureK).toBeLessThan(288.15 + 101);
  });

  it('is sooner from warm, with less water and with more fire', () => {
    const time = (change: Partial<BoilerHeating>): number =>
      raiseSteam({ ...boiler, ...change }, 500 * psi).points.at(-1)?.timeS ?? Number.NaN;
    const part = fc.double({ min: 0.1, max: 0.9, noNaN: true });
    fc.assert(
      fc.property(part, (share) => {
        expect(time({ startTemperatureK: 288.15 + 80 * share })).toBeLessThan(time({}));
        expect(time({ waterM3: boiler.waterM3 * share })).toBeLessThan(time({}));
        expect(time({ heatW: boiler.heatW / share })).toBeLessThan(time({}));
      }),
      { numRuns: 20 },
    );
  });
});

describe('blowing down', () => {
  it('Keenan & Keyes, 100 psi absolute (298.4 Btu/lb) against feed at 60 °F (28.1): 270.3 Btu for each pound', () => {
    const loss = blowDownLoss({
      pressurePa: 100 * psi,
      boilerWaterM3: usGallon,
      feedTemperatureK: kelvin(60),
    });
    expect(relative(loss.heatJ / loss.massKg / 2326, 298.4 - 28.1)).toBeLessThan(2e-3);
    expect(loss.feedM3).toBeLessThan(usGallon);
  });

  // UFC 3-240-13FN, Industrial Water Treatment Operation and Maintenance, 3-1: 5000 in the boiler, 250 in the feed are 20 cycles
  // of concentration; 5 in 100 of the feed is blown down, and of 5.0 kg/s evaporated 0.26 kg/s
  it('the worked example of UFC 3-240-13FN: 20 cycles, 5 in 100 blown down', () => {
    const { feedM3, timesFeed } = blowDownInterval({
      boilerWaterM3: 1,
      shareBlown: 1,
      feedHardness: 250,
      mostHardness: 5000,
    });
    expect(timesFeed).toBe(20);
    expect(1 / feedM3).toBeCloseTo(0.05, 12);
    expect(5 / (timesFeed - 1)).toBeCloseTo(0.26, 2);
    expect((5 * 1) / (feedM3 - 1)).toBeCloseTo(0.26, 2);
  });

  it('the trade’s cycles of concentration: at 5 cycles the blow-down is a quarter of the evaporation', () => {
    const interval = blowDownInterval({
      boilerWaterM3: 0.025,
      shareBlown: 0.5,
      feedHardness: 100,
      mostHardness: 500,
    });
    const blown = 0.025 * 0.5;
    expect(interval.timesFeed).toBe(5);
    expect(blown / (interval.feedM3 - blown)).toBeCloseTo(1 / 4, 12);
  });

  it('cannot help where the feed is as hard as the limit', () => {
    expect(() =>
      blowDownInterval({ boilerWaterM3: 1, shareBlown: 1, feedHardness: 500, mostHardness: 500 }),
    ).toThrow(RangeError);
  });
});

describe('feed pumps', () => {
  const pump = { strokeM3: 30e-6, strokesPerEngineTurn: 1, delivers: 0.8 };

  it('two pumps of 30 mL at 0.5 turns a metre deliver 24 mL a metre; a use of 6 needs the bypass shut a quarter of the way', () => {
    const balance = feedBalance([pump, pump], 0.5, 6e-6);
    expect(deliveryPerM(pump, 0.5)).toBeCloseTo(12e-6, 15);
    expect(balance.deliveryPerM).toBeCloseTo(24e-6, 15);
    expect(balance.shareShut).toBeCloseTo(0.25, 12);
    expect(balance.keepsUp).toBe(true);
  });

  it('says when they cannot keep up, and when there are none', () => {
    expect(feedBalance([pump], 0.5, 15e-6).keepsUp).toBe(false);
    expect(feedBalance([], 0.5, 1e-6)).toMatchObject({ shareShut: Number.POSITIVE_INFINITY, keepsUp: false });
  });
});
