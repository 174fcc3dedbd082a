import { pumpedTanks } from '../../procedure/fuelWay';
import { nameOf } from '../effects/act';
import { knows } from '../state';
import { lightsMainOnColdBoiler } from './coldStart';
import { everyCar, type Rule } from './rule';

export const storesMeasured: Rule = {
  id: 'stores-measured',
  code: 'rule-stores-measured',
  group: 'water',
  title: 'water and fuel are measured before the main burner is lit on a cold boiler',
  reason: 'a fire that outlasts its water burns the boiler, and a car out of fuel stands where it stopped',
  mend: 'measure what is in each tank, and write it down, before the fires are lit',
  asks: ['water-enough', 'fuel-enough'],
  appliesTo: everyCar,
  atStep: (view) => {
    if (!lightsMainOnColdBoiler(view)) return undefined;
    const { model, before } = view;
    const water = model.waterTanks.find((id) => !knows(model, before, 'water-enough', id));
    if (water !== undefined) return `the main burner is lit and nobody has measured ${nameOf(model, water)}`;
    const pumped = pumpedTanks(model.car);
    const fuel = model.fuelTanks.find(
      (id) => !pumped.includes(id) && !knows(model, before, 'fuel-enough', id),
    );
    return fuel === undefined
      ? undefined
      : `the main burner is lit and nobody has measured ${nameOf(model, fuel)}`;
  },
};
