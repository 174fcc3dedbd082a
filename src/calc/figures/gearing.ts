/** How often the engine turns for a turn of the wheels. */
import type { Car } from '../../car/car';
import type { FigureInput } from '../figure';
import type { Gearing } from '../road/speeds';

/** The gearing as the calculators take it. */
export function gearingOf({ spec }: Car): Gearing {
  return {
    rollingCircumferenceM: spec.running.tyres['rolling-circumference'].si,
    engineTurnsPerWheelTurn: spec.engine['turns-per-wheel-turn'],
  };
}

/** The same as inputs of a figure. */
export function gearingInputs({ spec }: Car): readonly FigureInput[] {
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
