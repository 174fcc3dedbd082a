/** On the road: engine speed against road speed, cylinder oil. */
import type { Car } from '../../car/car';
import type { UnitSystem } from '../../quantity/dimension';
import { quantity } from '../../quantity/quantity';
import { findUnit } from '../../quantity/spelling';
import { fromSi, toSi } from '../../quantity/unit';
import { type Figure, type FigureInput, notKnownFigure } from '../figure';
import { engineTurnsPerM, speedsAt } from '../road/speeds';
import { usualDelivery } from './feed';
import { gearingInputs, gearingOf } from './gearing';

type SpecPump = Car['spec']['pumps'][string];

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

/** Speeds that the table is made for: steps in the keeper's own units. */
const speedSteps: Readonly<Record<UnitSystem, { readonly unit: string; readonly step: number }>> = {
  us: { unit: 'mph', step: 5 },
  imperial: { unit: 'mph', step: 5 },
  metric: { unit: 'km/h', step: 10 },
};

/** Every so many of the keeper's units up to the highest speed, that one too, m/s. */
function tabledSpeeds(mostMPerS: number, system: UnitSystem): readonly number[] {
  const { unit: name, step } = speedSteps[system];
  const unit = findUnit('speed', name);
  if (unit === undefined) throw new RangeError(`\`${name}\` is not a unit of speed`);
  const count = Math.ceil(fromSi(mostMPerS, unit) / step - 1e-9) - 1;
  const whole = Array.from({ length: Math.max(0, count) }, (_, index) => toSi((index + 1) * step, unit));
  return [...whole, mostMPerS];
}

/** Turns of the engine, strokes of the pumps it drives (where the spec says how many in a turn) and what they move, against road speed. */
export function roadSpeedTable(car: Car, system: UnitSystem): Figure {
  const { running, pumps } = car.spec;
  const driven = Object.entries(pumps).flatMap(([id, pump]) => {
    const strokes = pump['strokes-per-engine-turn'];
    return pump.drive === 'engine' && strokes !== undefined ? [{ id, pump, strokes }] : [];
  });
  const speeds = tabledSpeeds(running['most-speed'].si, system);
  const turnsPerM = engineTurnsPerM(gearingOf(car));
  const moved = ({ 'stroke-volume': stroke, delivers }: SpecPump): number | undefined =>
    stroke === undefined ? undefined : stroke.si * (delivers?.si ?? usualDelivery);
  const columns = driven.flatMap(({ pump, strokes: perTurn }) => {
    const each = moved(pump);
    const strokes = {
      heading: `strokes of the ${pump.name}`,
      dimension: 'frequency' as const,
      rounding: 'nearest' as const,
      of: (turns: number) => turns * perTurn,
    };
    if (each === undefined) return [strokes];
    return [
      strokes,
      {
        heading: `moved by the ${pump.name}`,
        dimension: 'volumeFlow' as const,
        rounding: 'down' as const,
        of: (turns: number) => turns * perTurn * each,
      },
    ];
  });
  return {
    id: 'road-speeds',
    name: driven.length === 0 ? 'engine against road speed' : 'engine and pumps against road speed',
    value: {
      kind: 'table',
      columns: [
        { heading: 'road speed', dimension: 'speed', rounding: 'nearest', decimals: 0 },
        { heading: 'turns of the engine', dimension: 'frequency', rounding: 'nearest' },
        ...columns.map(({ of: _, ...column }) => column),
      ],
      rows: speeds.map((speed) => [
        speed,
        speed * turnsPerM,
        ...columns.map((column) => column.of(speed * turnsPerM)),
      ]),
    },
    inputs: [
      { name: 'highest speed', value: running['most-speed'], from: 'running.most-speed' },
      ...gearingInputs(car),
      ...driven.flatMap(({ id, pump, strokes }): readonly FigureInput[] => [
        {
          name: `strokes of the ${pump.name} in a turn`,
          value: strokes,
          from: `pumps.${id}.strokes-per-engine-turn`,
        },
        {
          name: `stroke of the ${pump.name}`,
          value: pump['stroke-volume'] ?? 'not known, so that what it moves is not told',
          from: `pumps.${id}.stroke-volume`,
        },
        {
          name: `share delivered by the ${pump.name}`,
          value: pump.delivers ?? `${usualDelivery * 100} %, common practice, no source`,
          from: `pumps.${id}.delivers`,
        },
      ]),
    ],
    formula:
      'speed / one turn of the wheel × engine turns for it; × strokes in a turn × stroke × share delivered',
    source: 'arithmetic',
    checkedAgainst: 'worked by hand',
    doubt: {
      basis: driven.some(({ pump: { delivers } }) => delivers === undefined) ? 'estimated' : 'computed',
      words:
        driven.length === 0
          ? 'without slip of the wheels'
          : 'with the bypasses shut; a hot tank or a worn valve makes what is moved less',
    },
  };
}

/** Distance on a tank of cylinder oil, reserve kept back. */
export function oilFigures({ spec }: Car): readonly Figure[] {
  const { oil } = spec.engine;
  const tank = oil.tank === undefined ? undefined : spec.tanks[oil.tank];
  if (oil.tank === undefined || tank === undefined || oil.use === undefined)
    return [
      notKnownFigure(
        {
          id: 'oil-distance',
          name: 'how far on a full tank of cylinder oil',
          formula: '(filled to − cannot be drawn − reserve) / use',
          source: 'arithmetic',
        },
        oil.use === undefined
          ? 'the cylinder oil used over a day’s distance (`engine.oil.use`)'
          : 'which tank holds the cylinder oil (`engine.oil.tank`)',
      ),
    ];
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
