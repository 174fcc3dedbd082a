/** Hand valves by the lines they stand on. */
import type { Car, PartId } from '../../car/car';
import { carrying } from '../../car/flow';
import type { Fluid } from '../../car/plant';
import { unique, valvesOf, without } from './pick';
import { bottomAndTop, feedBypasses, feedValves, glassCocks, glassDrains, levelValves } from './waterParts';

/** Hand valves on lines that carry one of these fluids. */
export function onLines(car: Car, fluids: readonly Fluid[]): readonly PartId[] {
  const use = carrying(...fluids);
  return valvesOf(car, unique(car.plant.pipes.filter(use).flatMap((pipe) => [pipe.from, pipe.to])));
}

/** Hand valves that lead these fluids to the ground or the open air, and have no other duty on the water side. */
export function drainsOf(car: Car, fluids: readonly Fluid[]): readonly PartId[] {
  const use = carrying(...fluids);
  const known = [...feedValves(car), ...feedBypasses(car), ...bottomAndTop(car), ...car.spec.engine.drips];
  const ends = car.plant.pipes
    .filter((pipe) => use(pipe) && (pipe.to === 'ground' || pipe.to === 'open-air'))
    .map((pipe) => pipe.from);
  return without(valvesOf(car, unique(ends)), [
    ...known,
    ...levelValves(car),
    ...glassCocks(car),
    ...glassDrains(car),
  ]);
}
