import type { PartId } from '../../car/car';
import { tanksFeeding } from '../../car/flow';
import { nameOf } from '../effects/act';
import type { Model } from '../model';
import { knows, of } from '../state';
import { pressure } from '../values';
import type { Rule } from './rule';

const feeding = new WeakMap<Model, ReadonlyMap<PartId, readonly PartId[]>>();

/** The air-charged tanks each burner is fed from, worked out once for a car. */
function chargedTanksOf(model: Model, burner: PartId): readonly PartId[] {
  const known =
    feeding.get(model) ??
    new Map(
      model.burners.map((id) => [
        id,
        tanksFeeding(model.car, id).filter(
          (tank) => model.chargedTanks.includes(tank) && ownFuel(model, id, tank),
        ),
      ]),
    );
  feeding.set(model, known);
  return known.get(burner) ?? [];
}

/** A tank that only a starting branch leads from is not what a burner runs on. */
function ownFuel(model: Model, burner: PartId, tank: PartId): boolean {
  return model.car.spec.tanks[tank]?.holds === model.car.spec.burners[burner]?.fuel;
}

export const pressureBeforeFlame: Rule = {
  id: 'pressure-before-flame',
  code: 'rule-pressure-before-flame',
  group: 'fuel',
  title: 'the pressure over the fuel is read and in its band before a burner is lit',
  reason: 'too little pressure makes a weak flame that goes out, too much one that blows off',
  mend: 'charge the tank and read its gauge before the burner is lit',
  asks: ['pressure-in-band'],
  appliesTo: (model) => model.chargedTanks.length > 0,
  atStep: ({ model, before, after, newlyLit }) => {
    for (const burner of newlyLit) {
      for (const tank of chargedTanksOf(model, burner)) {
        if (of(after, model.slots.pressure, tank) === pressure.none)
          return `there is no pressure on ${nameOf(model, tank)}`;
        if (!knows(model, before, 'pressure-in-band', tank))
          return `nobody has read the pressure of ${nameOf(model, tank)} since it was last charged, opened or used`;
      }
    }
    return undefined;
  },
};
