/** On the road: feed pumps against use, engine speed against road speed, cylinder oil, blow-down, heat for steam. */
import type { Car } from '../../car/car';
import { quantity } from '../../quantity/quantity';
import type { Figure } from '../figure';
import { engineTurnsPerM, type Gearing, speedsAt } from '../road/speeds';
import { absolutePressurePa, standardAir } from '../steam/atmosphere';
import { steamMaking } from '../steam/evaporation';
import { blowDownLoss } from '../water/blow-down';
import { deliveryPerM, feedBalance } from '../water/feed-pump';
import type { RangeChart } from './rangeChart';

/** Feed water as it comes from the tank, 15 °C. */
const feedK = 288.15;

function gearingOf({ spec }: Car): Gearing {
  return {
    rollingCircumferenceM: spec.running.tyres['rolling-circumference'].si,
    engineTurnsPerWheelTurn: spec.engine['turns-per-wheel-turn'],
  };
}

function gearingInputs({ spec }: Car) {
  return [
    {
      name: 'one turn of the wheel',
      value: spec.running.tyres['rolling-circumference'],
      from: 'running.tyres.rolling-circumference',
    },
    {
      name: 'engine turns for it',
      value: spec.engine['turns-per-wheel-turn'],
      from: 'engine.turns-per-wheel-turn',
    },
  ];
}

/** Share of each mile with the bypasses shut, for each engine-driven feed pump alone and for all together. */
export function feedFigures(car: Car, water: RangeChart | undefined): readonly Figure[] {
  const use = water?.use.byTerrain.level.meanPerM;
  const turns = engineTurnsPerM(gearingOf(car));
  const pumps = Object.entries(car.spec.pumps).flatMap(([id, pump]) => {
    if (pump.moves !== 'water' || pump.drive !== 'engine' || pump['stroke-volume'] === undefined) return [];
    return [
      {
        id,
        name: pump.name,
        pump: {
          strokeM3: pump['stroke-volume'].si,
          strokesPerEngineTurn: pump['strokes-per-engine-turn'] ?? 1,
          delivers: pump.delivers?.si ?? 0.8,
        },
      },
    ];
  });
  return pumps.map(({ id, name, pump }): Figure => {
    const delivery = deliveryPerM(pump, turns);
    const balance = use === undefined ? undefined : feedBalance([pump], turns, use);
    const spec = car.spec.pumps[id];
    return {
      id: `feed-${id}`,
      name: `how much of each mile the bypass of the ${name} stands shut on level road`,
      value:
        balance === undefined
          ? { kind: 'unknown', measure: 'the water used for a distance' }
          : {
              kind: 'words',
              words: balance.keepsUp
                ? `${Math.ceil(balance.shareShut * 100)} in 100`
                : `always, and it still falls short: it delivers ${Math.floor(100 / balance.shareShut)} in 100 of what is used`,
            },
      inputs: [
        { name: 'one stroke', value: spec?.['stroke-volume'] ?? '', from: `pumps.${id}.stroke-volume` },
        {
          name: 'share delivered',
          value: spec?.delivers ?? '80 %, common practice, no source',
          from: `pumps.${id}.delivers`,
        },
        ...gearingInputs(car),
        { name: 'delivered', value: quantity('volumePerDistance', delivery), from: 'worked out' },
        ...(use === undefined
          ? []
          : [{ name: 'used', value: quantity('volumePerDistance', use), from: 'water-use-level' }]),
      ],
      formula: 'used / (stroke × strokes per engine turn × engine turns per distance × share delivered)',
      source: 'arithmetic (common practice, no source)',
      checkedAgainst: 'delivery and use balance to nothing left over',
      doubt: {
        basis: spec?.delivers === undefined || spec.delivers.estimated ? 'estimated' : 'computed',
        words: 'a worn valve or a hot tank lowers the delivery',
      },
    };
  });
}

/** Engine and piston speed at the usual and at the highest speed. */
export function speedFigures(car: Car): readonly Figure[] {
  const { running, engine } = car.spec;
  return (
    [
      ['usual', running['usual-speed']],
      ['most', running['most-speed']],
    ] as const
  ).map(([which, speed]): Figure => {
    const { engineTurnsPerS, pistonMPerS } = speedsAt(gearingOf(car), engine.stroke.si, speed.si);
    return {
      id: `engine-speed-${which}`,
      name: `engine at the ${which === 'usual' ? 'usual' : 'highest'} speed`,
      value: {
        kind: 'words',
        words: `${Math.round(engineTurnsPerS * 60)} turns a minute; mean piston speed ${pistonMPerS.toFixed(1)} m/s (${Math.round((pistonMPerS / 0.3048) * 60)} ft a minute)`,
      },
      inputs: [
        { name: 'speed', value: speed, from: `running.${which}-speed` },
        ...gearingInputs(car),
        { name: 'stroke', value: engine.stroke, from: 'engine.stroke' },
      ],
      formula: 'speed / one turn of the wheel × engine turns for it; piston: 2 × stroke × turns',
      source: 'arithmetic',
      checkedAgainst: 'worked by hand',
      doubt: { basis: 'computed', words: 'tyres roll a little shorter with a load' },
    };
  });
}

/** Distance on a tank of cylinder oil, reserve kept back. */
export function oilFigures({ spec }: Car): readonly Figure[] {
  const { oil } = spec.engine;
  const tank = oil.tank === undefined ? undefined : spec.tanks[oil.tank];
  if (oil.tank === undefined || tank === undefined || oil.use === undefined) return [];
  const usable = Math.max(0, tank.capacity.si - (tank.unusable?.si ?? 0) - (tank.reserve?.si ?? 0));
  return [
    {
      id: 'oil-distance',
      name: `how far on a full ${tank.name}`,
      value: {
        kind: 'quantity',
        quantity: quantity('distance', usable / oil.use.si, oil.use.estimated),
        rounding: 'down',
      },
      inputs: [
        { name: 'capacity', value: tank.capacity, from: `tanks.${oil.tank}.capacity` },
        {
          name: 'kept back',
          value: quantity('volume', tank.capacity.si - usable),
          from: `tanks.${oil.tank}.reserve`,
        },
        { name: 'use', value: oil.use, from: 'engine.oil.use' },
      ],
      formula: '(capacity − cannot be drawn − reserve) / use',
      source: 'arithmetic',
      checkedAgainst: 'worked by hand',
      doubt: {
        basis: oil.use.estimated ? 'estimated' : 'measured',
        words: 'more on hills and with a worn engine',
      },
    },
  ];
}

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

/** Heat that each unit of feed takes to become steam at working pressure. */
export function steamHeatFigures({ spec: { boiler } }: Car): readonly Figure[] {
  const making = steamMaking({
    pressurePa: absolutePressurePa(boiler['working-pressure'].si, standardAir(0).pressurePa),
    feedTemperatureK: feedK,
  });
  return [
    {
      id: 'steam-heat',
      name: 'heat from cold feed to steam at working pressure',
      value: {
        kind: 'quantity',
        quantity: quantity('specificEnergy', making.heatPerKg),
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
