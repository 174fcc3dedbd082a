import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type ChargedTank,
  cushionM3,
  deliveredDownToM3,
  fillForOneChargeM3,
  gaugeAfterChangePa,
  gaugeWhenLeftPa,
} from '../../../src/calc/air/cushion';
import { endurance, strokesToMove, strokesToPumpUp } from '../../../src/calc/air/pumping';

const psi = 6894.757293168361;
const usGallon = 3.785411784e-3;
const litre = 1e-3;
/** A vessel of air alone, in absolute pressures, to state the textbook examples. */
const boyle = (pressure: number, volume: number, newVolume: number): number =>
  gaugeWhenLeftPa(
    { capacityM3: 10 * newVolume, fuelM3: 10 * newVolume - volume, gaugePa: pressure, ambientPa: 0 },
    9 * newVolume,
  );

describe('Boyle’s law, published examples', () => {
  it('CK-12 Chemistry: 387 kPa in 425 mL are 94.0 kPa in 1.75 L', () => {
    expect(Math.abs(boyle(387, 0.425, 1.75) - 94.0)).toBeLessThan(0.1);
  });
  it('worked answer in a chemistry text: 15.0 mL at 13.0 psi are 26 psi in 7.5 mL', () => {
    expect(boyle(13, 15, 7.5)).toBeCloseTo(26, 9);
  });
  it('engineering-science text: 3 m³ at 30 MPa are 18 MPa in 5 m³', () => {
    expect(boyle(30, 3, 5)).toBeCloseTo(18, 9);
  });
});

describe('a tank of 10 US gal with 8 US gal of fuel at 60 psi gauge', () => {
  const tank: ChargedTank = {
    capacityM3: 10 * usGallon,
    fuelM3: 8 * usGallon,
    gaugePa: 60 * psi,
    ambientPa: 14.696 * psi,
  };

  it.each([
    [6, 22.65],
    [4, 10.2],
    [1, 1.9],
  ])('has %d US gal left at %d psi gauge (Boyle, by hand)', (left, gauge) => {
    expect(Math.abs(gaugeWhenLeftPa(tank, left * usGallon) / psi - gauge)).toBeLessThan(0.01);
  });

  it('falls less far at 5,000 ft: 23.89 psi with 6 US gal left (Boyle, by hand)', () => {
    const high = { ...tank, ambientPa: 12.228 * psi };
    expect(Math.abs(gaugeWhenLeftPa(high, 6 * usGallon) / psi - 23.89)).toBeLessThan(0.01);
  });

  it('counts from vacuum: 44 psi gauge pressed from 11.41 L to 10.6 L is 48.49 psi gauge, not 47.36', () => {
    const air: ChargedTank = {
      capacityM3: 11.41 * litre,
      fuelM3: 0,
      gaugePa: 44 * psi,
      ambientPa: 14.696 * psi,
    };
    expect(Math.abs(gaugeWhenLeftPa(air, (11.41 - 10.6) * litre) / psi - 48.49)).toBeLessThan(0.01);
  });

  it('delivers down to a pressure just what would leave it there', () => {
    expect(deliveredDownToM3(tank, gaugeWhenLeftPa(tank, 6 * usGallon))).toBeCloseTo(2 * usGallon, 12);
    expect(deliveredDownToM3(tank, 70 * psi)).toBe(0);
  });

  it('is not a charged tank when brim full', () => {
    expect(() => cushionM3({ capacityM3: 1, fuelM3: 1 })).toThrow(RangeError);
  });
});

describe('temperature and altitude', () => {
  const tank: ChargedTank = { capacityM3: litre, fuelM3: 0.5 * litre, gaugePa: 2e5, ambientPa: 1e5 };
  it('a tenth hotter is a tenth more of the absolute pressure', () => {
    expect(gaugeAfterChangePa(tank, { fromK: 280, toK: 308 })).toBeCloseTo(2.3e5, 6);
  });
  it('thinner air outside shows as more on the gauge', () => {
    expect(gaugeAfterChangePa(tank, { fromK: 280, toK: 280, ambientPa: 0.8e5 })).toBeCloseTo(2.2e5, 6);
  });
});

describe('pumping and endurance', () => {
  const tank: ChargedTank = { capacityM3: 4 * litre, fuelM3: 3 * litre, gaugePa: 1e5, ambientPa: 1e5 };

  it('a litre of cushion from 1 to 2 bar takes a litre of free air: 20 strokes of 50 mL, 25 if a fifth is lost', () => {
    expect(strokesToPumpUp(tank, 2e5, { strokeM3: 0.05 * litre, delivers: 1 })).toBe(20);
    expect(strokesToPumpUp(tank, 2e5, { strokeM3: 0.05 * litre, delivers: 0.8 })).toBe(25);
    expect(strokesToPumpUp(tank, 1e5, { strokeM3: 0.05 * litre, delivers: 1 })).toBe(0);
    expect(strokesToMove(litre, { strokeM3: 0.3 * litre, delivers: 1 })).toBe(4);
  });

  it('lasts until the floor of its band, and until it is empty', () => {
    const result = endurance(
      { ...tank, gaugePa: 2e5 },
      { floorGaugePa: 1.5e5, useM3PerS: 1e-7, unusableM3: 0.1 * litre },
    );
    expect(result.untilPumpingS).toBeCloseTo((litre * 0.2) / 1e-7, 6);
    expect(result.untilEmptyS).toBeCloseTo((litre * 2.9) / 1e-7, 6);
    expect(() => endurance(tank, { floorGaugePa: 0, useM3PerS: 0 })).toThrow(RangeError);
  });

  it('filled for one charge, it is empty just as the pressure comes to the floor', () => {
    const band = { capacityM3: 4 * litre, topGaugePa: 1.4e5, floorGaugePa: 1e5, ambientPa: 1e5 };
    const fuelM3 = fillForOneChargeM3(band);
    const charged = {
      capacityM3: band.capacityM3,
      fuelM3,
      gaugePa: band.topGaugePa,
      ambientPa: band.ambientPa,
    };
    expect(gaugeWhenLeftPa(charged, 0)).toBeCloseTo(band.floorGaugePa, 6);
  });
});

describe('invariants', () => {
  const share = fc.double({ min: 0, max: 1, noNaN: true });
  const charged = fc
    .record({
      fuel: fc.double({ min: 0.05, max: 0.95, noNaN: true }),
      gaugePa: fc.double({ min: 1e3, max: 1e6, noNaN: true }),
      ambientPa: fc.double({ min: 7e4, max: 1.02e5, noNaN: true }),
    })
    .map(({ fuel, ...rest }): ChargedTank => ({ capacityM3: litre, fuelM3: fuel * litre, ...rest }));

  it('pressure never rises as fuel leaves', () => {
    fc.assert(
      fc.property(charged, share, share, (tank, a, b) => {
        const [less, more] = [Math.min(a, b) * tank.fuelM3, Math.max(a, b) * tank.fuelM3];
        expect(gaugeWhenLeftPa(tank, less)).toBeLessThanOrEqual(gaugeWhenLeftPa(tank, more) + 1e-6);
        expect(gaugeWhenLeftPa(tank, more)).toBeLessThanOrEqual(tank.gaugePa + 1e-6);
      }),
    );
  });

  it('never delivers more fuel than there is, nor more for a higher floor', () => {
    fc.assert(
      fc.property(charged, share, share, (tank, a, b) => {
        const [low, high] = [Math.min(a, b) * tank.gaugePa, Math.max(a, b) * tank.gaugePa];
        expect(deliveredDownToM3(tank, low)).toBeLessThanOrEqual(tank.fuelM3);
        expect(deliveredDownToM3(tank, high)).toBeLessThanOrEqual(deliveredDownToM3(tank, low) + 1e-15);
      }),
    );
  });
});
