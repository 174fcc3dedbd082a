/** What a burner that burns on goes on boiling away after its fuel is shut. */
import type { Car } from '../../car/car';
import { quantity } from '../../quantity/quantity';
import { burnsOnOf } from '../../spec/burnsOn';
import { type Figure, notKnownFigure } from '../figure';
import type { Liquids } from '../fuel/liquids';
import { absolutePressurePa, standardAir } from '../steam/atmosphere';
import { saturationAtPressure } from '../steam/saturation';
import { waterDensity } from '../steam/water-at';
import { efficiencyOf, feedK, fuelHeatPerM3, usualEfficiency } from './plant';

const common = {
  id: 'burning-on-water',
  name: 'water boiled away, at the most, after the main burner’s fuel is shut',
  formula: 'time × full fire × lower heating value × efficiency / heat of boiling / density of cold water',
  source: 'IAPWS-IF97; arithmetic',
} as const;

/**
 * Water that the main burners boil away while they burn on, as if each went on at full fire to its end: more than it can be, since the
 * fire grows smaller. Nothing of a car whose burners go out at once.
 */
export function burningOnFigures(car: Car, library: Liquids): readonly Figure[] {
  const fires = Object.entries(car.spec.burners).flatMap(([id, burner]) => {
    const time = burnsOnOf(burner);
    return burner.job !== 'main' || time === undefined
      ? []
      : [{ id, time, fuel: burner.fuel, rate: burner['full-rate'] }];
  });
  if (fires.length === 0) return [];
  const heats = fires.map(({ time, fuel, rate }) =>
    rate === undefined ? Number.NaN : time.si * rate.si * fuelHeatPerM3(car, fuel, library),
  );
  const heatJ = heats.reduce((sum, each) => sum + each, 0) * efficiencyOf(car);
  if (Number.isNaN(heatJ))
    return [notKnownFigure(common, 'the fuel burnt at full fire (`full-rate` of the main burner)')];
  const { boiler } = car.spec;
  const { latentHeat } = saturationAtPressure(
    absolutePressurePa(boiler['working-pressure'].si, standardAir(0).pressurePa),
  );
  return [
    {
      ...common,
      value: {
        kind: 'quantity',
        quantity: quantity('volume', heatJ / latentHeat / waterDensity(feedK), true),
        rounding: 'up',
      },
      inputs: [
        ...fires.flatMap(({ id, time, fuel, rate }) => [
          { name: 'burns on', value: time, from: `burners.${id}.burns-on` },
          ...(rate === undefined
            ? []
            : [{ name: 'full fire', value: rate, from: `burners.${id}.full-rate` }]),
          {
            name: 'lower heating value',
            value: quantity('energyDensity', fuelHeatPerM3(car, fuel, library)),
            from: `heat-${fuel}`,
          },
        ]),
        {
          name: 'efficiency',
          value: boiler.efficiency ?? `${usualEfficiency * 100} %, from memory`,
          from: 'boiler.efficiency',
        },
        { name: 'working pressure', value: boiler['working-pressure'], from: 'boiler.working-pressure' },
      ],
      checkedAgainst: 'worked by hand',
      doubt: {
        basis: 'estimated',
        words: 'as if it burnt at full fire to its end; it dies down, so that it is less',
      },
    },
  ];
}
