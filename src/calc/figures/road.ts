/** On the road: engine speed against road speed, cylinder oil. */
import type { Car } from '../../car/car';
import { quantity } from '../../quantity/quantity';
import type { Figure } from '../figure';
import { speedsAt } from '../road/speeds';
import { gearingInputs, gearingOf } from './gearing';

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
  const filled = tank['fill-to'] ?? tank.capacity;
  const usable = Math.max(0, filled.si - (tank.unusable?.si ?? 0) - (tank.reserve?.si ?? 0));
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
        {
          name: 'filled to',
          value: filled,
          from: `tanks.${oil.tank}.${tank['fill-to'] === undefined ? 'capacity' : 'fill-to'}`,
        },
        {
          name: 'cannot be drawn, and reserve',
          value: quantity('volume', filled.si - usable),
          from: `tanks.${oil.tank}.reserve`,
        },
        { name: 'use', value: oil.use, from: 'engine.oil.use' },
      ],
      formula: '(filled to − cannot be drawn − reserve) / use',
      source: 'arithmetic',
      checkedAgainst: 'worked by hand',
      doubt: {
        basis: oil.use.estimated ? 'estimated' : 'measured',
        words: 'more on hills and with a worn engine',
      },
    },
  ];
}
