import type { PartId } from '../../car/car';
import { nameOf } from '../effects/act';
import type { Model } from '../model';
import { of } from '../state';
import { shut } from '../values';
import { everyCar, type Rule } from './rule';

const known = new WeakMap<Model, readonly PartId[]>();

/**
 * Valves that are only opened for a while: those that let something out or in, and those on air lines. Drips are none; nor is
 * the vent of a coil, which is open from filling until the fire is lit, and has to be shut before it steams by a rule of its own.
 */
function passing(model: Model): readonly PartId[] {
  const { car } = model;
  const found =
    known.get(model) ??
    model.valves.filter((id) => {
      if (car.spec.valves[id]?.parked === 'open' || car.spec.engine.drips.includes(id)) return false;
      if (car.spec.boiler.kind === 'monotube' && id === car.spec.boiler['lets-air-out-by']) return false;
      const pipes = [...(car.plant.into.get(id) ?? []), ...(car.plant.out.get(id) ?? [])];
      const outside = pipes.some(
        (pipe) => car.parts.get(pipe.from)?.kind === 'outside' || car.parts.get(pipe.to)?.kind === 'outside',
      );
      return (
        outside ||
        pipes.some((pipe) => pipe.carries === 'air') ||
        id === car.spec.boiler['fill-by'] ||
        Object.values(car.spec.tanks).some((tank) => tank['vent-valve'] === id)
      );
    });
  known.set(model, found);
  return found;
}

export const outletsShut: Rule = {
  id: 'outlets-shut',
  code: 'rule-outlets-shut',
  group: 'completeness',
  title: 'what is opened to drain, vent, fill, charge or read is shut again before the procedure is done',
  reason: 'a tap that is left open is found by what has run out of it',
  mend: 'end with shutting it',
  asks: [],
  tidy: true,
  appliesTo: everyCar,
  atEnd: ({ model, state, procedure }) => {
    if (procedure.phase === 'lay-up' || procedure.phase === 'emergency') return undefined;
    const worked = new Set(procedure.steps.flatMap((step) => (step.part === undefined ? [] : [step.part])));
    const left = passing(model).find((id) => worked.has(id) && of(state, model.slots.valve, id) !== shut);
    return left === undefined ? undefined : `${nameOf(model, left)} is left open`;
  },
};
