/** What blowing down costs, how often the water asks for it, and the heat that steam takes. */
import type { Car } from '../../car/car';
import { quantity } from '../../quantity/quantity';
import type { Figure, FigureInput } from '../figure';
import type { Liquids } from '../fuel/liquids';
import { absolutePressurePa, standardAir } from '../steam/atmosphere';
import { blowDownInterval, blowDownLoss } from '../water/blow-down';
import { efficiencyOf, feedK, fuelHeatPerM3, heatPerKgSteam, mainBurnerOf, usualEfficiency } from './plant';
import type { LiquidUse } from './use';

/** What emptying the whole boiler at its blow-down pressure throws away: water, and the fuel that made it hot. */
export function blowDownFigures(car: Car, liquids: Liquids): readonly Figure[] {
  const { boiler } = car.spec;
  const pressure = boiler['blow-down-pressure'];
  const main = mainBurnerOf(car);
  if (pressure === undefined || main === undefined) return [blowDownNotKnown];
  const loss = blowDownLoss({
    pressurePa: absolutePressurePa(pressure.si, standardAir(0).pressurePa),
    boilerWaterM3: boiler['water-at-working-level'].si,
    feedTemperatureK: feedK,
  });
  const fuelHeat = fuelHeatPerM3(car, main.burner.fuel, liquids) * efficiencyOf(car);
  const inputs: readonly FigureInput[] = [
    { name: 'pressure', value: pressure, from: 'boiler.blow-down-pressure' },
    {
      name: 'water in the boiler',
      value: boiler['water-at-working-level'],
      from: 'boiler.water-at-working-level',
    },
  ];
  const doubt = { basis: 'computed', words: 'less if it is not emptied' } as const;
  return [
    {
      id: 'blow-down-loss',
      name: 'cold water that replaces a full blow-down',
      value: { kind: 'quantity', quantity: quantity('volume', loss.feedM3), rounding: 'up' },
      inputs,
      formula: 'mass of the boiling water / density of the cold feed',
      source: 'IAPWS-IF97',
      checkedAgainst: 'steam tables',
      doubt,
    },
    {
      id: 'blow-down-fuel',
      name: 'fuel that a full blow-down throws away as heat',
      value: { kind: 'quantity', quantity: quantity('volume', loss.heatJ / fuelHeat, true), rounding: 'up' },
      inputs: [
        ...inputs,
        { name: 'heat thrown away', value: quantity('energy', loss.heatJ), from: 'worked out' },
        {
          name: 'efficiency',
          value: boiler.efficiency ?? `${usualEfficiency * 100} %, from memory`,
          from: 'boiler.efficiency',
        },
      ],
      formula:
        'mass of the boiling water × its heat over that of the cold feed / (lower heating value × efficiency)',
      source: 'IAPWS-IF97',
      checkedAgainst: 'Keenan and Keyes, Thermodynamic Properties of Steam (rows from memory)',
      doubt: { ...doubt, basis: 'estimated' },
    },
  ];
}

const blowDownNotKnown: Figure = {
  id: 'blow-down-loss',
  name: 'cold water that replaces a full blow-down',
  value: { kind: 'unknown', measure: 'the pressure at which it is blown down (`boiler.blow-down-pressure`)' },
  inputs: [],
  formula: 'mass of the boiling water / density of the cold feed',
  source: 'IAPWS-IF97',
  checkedAgainst: 'nothing, as nothing is worked out',
  doubt: { basis: 'unknown', words: 'not measured' },
};

/** How much feed may go through between full blow-downs, by the water's hardness, and how far that is on level road. */
export function blowDownIntervalFigure({ spec }: Car, water: LiquidUse): Figure {
  const feed = spec.running['water-hardness'];
  const most = spec.boiler['most-hardness'];
  const amount = spec.boiler['blow-down-amount'];
  const base = {
    id: 'blow-down-interval',
    name:
      amount === undefined
        ? 'feed water from one full blow-down to the next'
        : 'feed water from one blow-down to the next',
    formula:
      'water let go each time × most hardness / hardness of the feed; distance = that / use on level road',
    source:
      'balance of what comes in with the feed and goes out with the blow-down (UFC 3-240-13FN, Industrial Water Treatment Operation and Maintenance, 3-1)',
    checkedAgainst:
      'worked example of UFC 3-240-13FN: 5000 in the boiler on 250 in the feed is 20 cycles and 5 in 100 blown down',
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
    amount === undefined
      ? {
          name: 'water let go each time, all that is in the boiler',
          value: spec.boiler['water-at-working-level'],
          from: 'boiler.water-at-working-level',
        }
      : { name: 'water let go each time', value: amount, from: 'boiler.blow-down-amount' },
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
    shareBlown: amount === undefined ? 1 : amount.si / spec.boiler['water-at-working-level'].si,
    feedHardness: feed.si,
    mostHardness: most.si,
  });
  const estimated = feed.estimated || most.estimated || amount?.estimated === true;
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
      words:
        amount === undefined
          ? 'blowing down less than the whole boiler makes it shorter in proportion'
          : 'letting go more or less each time makes it longer or shorter in proportion',
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
