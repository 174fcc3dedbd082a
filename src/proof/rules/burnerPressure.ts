import type { PartId } from '../../car/car';
import { nameOf } from '../effects/act';
import type { Model } from '../model';
import { isLit, knows } from '../state';
import type { Rule } from './rule';

/** Gauges of the pressure of the fuel at a main burner or its vaporizer. */
function gauges(model: Model): readonly PartId[] {
  const near = new Set(model.mains.flatMap((id) => [id, model.car.spec.burners[id]?.vaporizer ?? id]));
  return Object.entries(model.car.spec.gauges).flatMap(([id, gauge]) =>
    gauge.reads === 'pressure' && near.has(gauge.of) ? [id] : [],
  );
}

export const burnerPressure: Rule = {
  id: 'burner-pressure',
  code: 'rule-burner-pressure',
  group: 'fuel',
  title:
    'the pressure of the fuel at the burner is read before the main burner is lit, where the car has a gauge of it',
  reason: 'a spray with too little pressure behind it drips instead of spraying',
  mend: 'read the gauge with the fuel pump running, before the burner’s own valve is opened',
  asks: ['burner-pressure-good'],
  appliesTo: (model) => gauges(model).length > 0,
  atStep: ({ model, before, newlyFedMains }) => {
    if (!newlyFedMains.some((id) => !isLit(model, before, id))) return undefined;
    const unread = gauges(model).find((id) => !knows(model, before, 'burner-pressure-good', id));
    return unread === undefined
      ? undefined
      : `main fuel is let on and nobody has read ${nameOf(model, unread)}`;
  },
};
