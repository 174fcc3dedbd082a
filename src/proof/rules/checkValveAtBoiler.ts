import type { PartId } from '../../car/car';
import { nameOf } from '../effects/act';
import type { Model } from '../model';
import { everyCar, type Rule } from './rule';

/** Whether water could come back from the boiler to a part: there is a way on from it with no check valve. */
function open({ car }: Model, from: PartId): boolean {
  const seen = new Set([from]);
  const waiting = [from];
  for (const id of waiting) {
    for (const pipe of car.plant.out.get(id) ?? []) {
      if (pipe.carries !== 'water' || seen.has(pipe.to)) continue;
      if (pipe.to === 'boiler') return true;
      seen.add(pipe.to);
      const holds =
        car.spec.devices[pipe.to]?.kind === 'check-valve' || car.parts.get(pipe.to)?.kind === 'tank';
      if (!holds) waiting.push(pipe.to);
    }
  }
  return false;
}

export const checkValveAtBoiler: Rule = {
  id: 'check-valve-at-boiler',
  code: 'rule-check-valve-at-boiler',
  group: 'water',
  title: 'a check valve stands between every feed pump and the boiler',
  reason: 'without it the boiler empties itself backward through the pump as soon as its own valves leak',
  mend: 'put the check valve in its place on the line, or fit one',
  asks: [],
  appliesTo: everyCar,
  ofCar: (model) => {
    const pump = Object.keys(model.car.spec.pumps).find(
      (id) => model.car.spec.pumps[id]?.moves === 'water' && open(model, id),
    );
    return pump === undefined
      ? undefined
      : `no check valve stands between ${nameOf(model, pump)} and the boiler`;
  },
};
