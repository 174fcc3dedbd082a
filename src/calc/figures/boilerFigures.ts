/** What blowing down costs, how often the water asks for it, and the heat that steam takes. */
import type { Car } from '../../car/car';
import { quantity } from '../../quantity/quantity';
import type { Figure } from '../figure';
import { absolutePressurePa, standardAir } from '../steam/atmosphere';
import { blowDownInterval, blowDownLoss } from '../water/blow-down';
import { feedK, heatPerKgSteam } from './plant';
import type { LiquidUse } from './use';

/** What emptying the whole boiler at its blow-down pressure throws away. */
export function blowDownFigures({ spec: { boiler } }: Car): readonly Figure[] {
  const pressure = boiler['blow-down-pressure'];
  if (pressure === undefined) return [];
  const loss = blowDownLoss({
    pressurePa: absolutePressurePa(pressure.si, standardAir(0).pressurePa),
    boilerWaterM3: boiler['water-at-working-level'].si,
    feedTemperatureK: feedK,
  });
  return [
    {
      id: 'blow-down-loss',
      name: 'cold water that replaces a full blow-down',
      value: { kind: 'quantity', quantity: quantity('volume', loss.feedM3), rounding: 'up' },
      inputs: [
        { name: 'pressure', value: pressure, from: 'boiler.blow-down-pressure' },
        {
          name: 'water in the boiler',
          value: boiler['water-at-working-level'],
          from: 'boiler.water-at-working-level',
        },
      ],
      formula: 'mass of the boiling water / density of the cold feed',
      source: 'IAPWS-IF97',
      checkedAgainst: 'steam tables',
      doubt: { basis: 'computed', words: 'less if it is not emptied' },
    },
  ];
}

/** How much feed may go through between full blow-downs, by the water's hardness, and how far that is on level road. */
export function blowDownIntervalFigure({ spec }: Car, water: LiquidUse): Figure {
  const feed = spec.running['water-hardness'];
  const most = spec.boiler['most-hardness'];
  const base = {
    id: 'blow-down-interval',
    name: 'feed water from one full blow-down to the next',
    formula:
      'water in the boiler × most hardness / hardness of the feed; distance = that / use on level road',
    source: 'balance of what comes in with the feed and goes out with the blow-down',
    checkedAgainst: 'cycles of concentration: blow-down = evaporation / (cycles − 1)',
  };
  if (feed === undefined || most === undefined) {
    const measure =
      feed === undefined
        ? 'the hardness of the water it is filled with (`running.water-hardness`), by a test strip or from the waterworks'
        : 'ask the inspector or whoever treats the water how hard the boiler’s water may become (`boiler.most-hardness`)';
    return {
      ...base,
      value: { kind: 'unknown', measure },
      inputs: [],
      doubt: { basis: 'unknown', words: 'not measured' },
    };
  }
  const inputs = [
    { name: 'hardness of the feed', value: feed, from: 'running.water-hardness' },
    { name: 'most in the boiler', value: most, from: 'boiler.most-hardness' },
    {
      name: 'water in the boiler',
      value: spec.boiler['water-at-working-level'],
      from: 'boiler.water-at-working-level',
    },
  ];
  if (most.si <= feed.si) {
    return {
      ...base,
      value: {
        kind: 'words',
        words: 'none: the water is as hard as the boiler’s may become; soften it or find other',
      },
      inputs,
      doubt: { basis: 'measured', words: 'as good as the test of the water' },
    };
  }
  const { feedM3 } = blowDownInterval({
    boilerWaterM3: spec.boiler['water-at-working-level'].si,
    shareBlown: 1,
    feedHardness: feed.si,
    mostHardness: most.si,
  });
  const estimated = feed.estimated || most.estimated;
  return {
    ...base,
    value: { kind: 'quantity', quantity: quantity('volume', feedM3, estimated), rounding: 'down' },
    inputs: [
      ...inputs,
      ...(water.byTerrain.level.planPerM === undefined
        ? []
        : [
            {
              name: 'that is on level road',
              value: quantity('distance', feedM3 / water.byTerrain.level.planPerM, true),
              from: 'water-use-level',
            },
          ]),
    ],
    doubt: {
      basis: estimated ? 'estimated' : 'computed',
      words: 'blowing down less than the whole boiler makes it shorter in proportion',
    },
  };
}

/** Heat that each unit of feed takes to become steam at working pressure. */
export function steamHeatFigures(car: Car): readonly Figure[] {
  const { boiler } = car.spec;
  return [
    {
      id: 'steam-heat',
      name: 'heat from cold feed to steam at working pressure',
      value: {
        kind: 'quantity',
        quantity: quantity('specificEnergy', heatPerKgSteam(car)),
        rounding: 'nearest',
      },
      inputs: [
        { name: 'pressure', value: boiler['working-pressure'], from: 'boiler.working-pressure' },
        { name: 'feed', value: quantity('temperature', feedK), from: 'taken' },
      ],
      formula: 'enthalpy of dry saturated steam − enthalpy of the feed',
      source: 'IAPWS-IF97',
      checkedAgainst: 'Cyclopedia of Mechanical Engineering vol. 4, factors of evaporation',
      doubt: { basis: 'computed', words: 'superheat comes on top' },
    },
  ];
}
