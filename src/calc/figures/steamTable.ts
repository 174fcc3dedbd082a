/** How hot water and steam are at the pressures that matter on this car. */
import type { Car } from '../../car/car';
import { type Quantity, quantity } from '../../quantity/quantity';
import type { Figure } from '../figure';
import { absolutePressurePa, standardAir } from '../steam/atmosphere';
import { saturationTemperatureK } from '../steam/saturation';

/** One pressure with its boiling temperature. */
export interface SteamRow {
  /** Which of the car's pressures it is. */
  readonly at: 'blown-down' | 'least-to-move' | 'working' | 'cuts-out' | 'safety' | 'allowed';
  readonly pressure: Quantity<'gaugePressure'>;
  readonly temperature: Quantity<'temperature'>;
  readonly figure: Figure;
}

/** A row for each pressure the spec gives, from the lowest up. */
export function steamTable({ spec }: Car): readonly SteamRow[] {
  const { boiler, devices } = spec;
  const safety = boiler['safety-valve'];
  const pressures: readonly (readonly [SteamRow['at'], Quantity<'gaugePressure'> | undefined, string])[] = [
    ['blown-down', boiler['blow-down-pressure'], 'boiler.blow-down-pressure'],
    ['least-to-move', boiler['least-to-move'], 'boiler.least-to-move'],
    ['working', boiler['working-pressure'], 'boiler.working-pressure'],
    ['cuts-out', boiler['burner-cuts-out'], 'boiler.burner-cuts-out'],
    ['safety', devices[safety]?.set, `devices.${safety}.set`],
    ['allowed', boiler['allowed-pressure'], 'boiler.allowed-pressure'],
  ];
  return pressures
    .flatMap(([at, pressure, from]) => (pressure === undefined ? [] : [rowFor(at, pressure, from)]))
    .sort((a, b) => a.pressure.si - b.pressure.si);
}

function rowFor(at: SteamRow['at'], pressure: Quantity<'gaugePressure'>, from: string): SteamRow {
  const ambientPa = standardAir(0).pressurePa;
  const temperature = quantity(
    'temperature',
    saturationTemperatureK(absolutePressurePa(pressure.si, ambientPa)),
    pressure.estimated,
  );
  return {
    at,
    pressure,
    temperature,
    figure: {
      id: `boiling-${at}`,
      name: `temperature of the boiler’s water (${at.replaceAll('-', ' ')})`,
      value: { kind: 'quantity', quantity: temperature, rounding: 'up' },
      inputs: [
        { name: 'pressure', value: pressure, from },
        {
          name: 'air pressure at sea level',
          value: quantity('absolutePressure', ambientPa),
          from: 'US Standard Atmosphere 1976',
        },
      ],
      formula: 'saturation temperature at gauge pressure + air pressure (IAPWS-IF97, region 4)',
      source: 'IAPWS R7-97(2012)',
      checkedAgainst: 'IAPWS R7-97(2012) Table 36; Keenan and Keyes, Thermodynamic Properties of Steam',
      doubt: {
        basis: pressure.estimated ? 'estimated' : 'computed',
        words: 'as good as the gauge; at an altitude the water is a little cooler',
      },
    },
  };
}
