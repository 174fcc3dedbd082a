import { describe, expect, test } from 'vitest';
import { coldLevelRemarks, swell } from '../../../src/calc/figures/coldLevel';
import { carFrom, demo, goodOf, specText } from '../../whole/made';

/** Standard atmosphere, Pa (ISO 2533). */
const airPa = 101325;

describe('how far water swells', () => {
  // specific volume of boiling water, dm³/kg, by pressure, Pa: saturation tables of IAPWS-IF97 (NIST/ASME steam tables), from memory;
  // a kilogram of water at 15 °C and 101325 Pa takes 1.0009 dm³ (999.10 kg/m³, CIPM 2001)
  test.each([
    [1e6, 1.1272],
    [2e6, 1.1767],
    [5e6, 1.2864],
  ])('at %d Pa', (pressurePa, volume) => {
    expect(swell(pressurePa - airPa)).toBeCloseTo(volume * 0.9991 - 1, 3);
  });

  test('more, the higher the pressure', () => {
    const pressures = [0, 1e5, 5e5, 1e6, 2e6, 4e6].map(swell);
    expect([...pressures].sort((a, b) => a - b)).toEqual(pressures);
  });
});

describe('a spec that does not say where the level stands cold', () => {
  const said = async (text: string) => coldLevelRemarks(goodOf(await carFrom(text)).car);

  test('is told so, with what the water of this car does', async () => {
    const [one] = await said(specText('thimble').replace(/^ +(working|highest)-level-cold:.*\n/gm, ''));
    expect(one).toMatchObject({ code: 'figure-cold-level', severity: 'remark' });
    // 180 psi gauge: boiling water takes 1.143 dm³/kg (the same tables)
    expect(one?.notes?.[0]).toContain('swells by 14 in 100');
  });

  test('the demo cars say it, and a coil is not asked', async () => {
    for (const name of ['marigold', 'thimble', 'heron'])
      expect(coldLevelRemarks((await demo(name)).car)).toEqual([]);
  });
});
