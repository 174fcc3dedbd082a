import type { PartId } from '../../car/car';
import type { Model } from '../model';
import { knows } from '../state';
import { lightsMainOnColdBoiler } from './coldStart';
import type { Rule } from './rule';

function glasses(model: Model): readonly PartId[] {
  return model.car.spec.boiler.level
    .map((way) => way.gauge)
    .filter((id) => model.car.spec.gauges[id]?.kind === 'glass');
}

export const glassTrue: Rule = {
  id: 'glass-true',
  code: 'rule-glass-true',
  group: 'water',
  title: 'the water in the gauge glass was made to move before the main burner is lit on a cold boiler',
  reason: 'a blocked glass shows the same level whether the boiler is full or dry',
  mend: 'blow the glass through, or feed and see it rise, before the main burner',
  asks: ['glass-true'],
  appliesTo: (model) => glasses(model).length > 0,
  atStep: (view) =>
    lightsMainOnColdBoiler(view) &&
    !glasses(view.model).some((id) => knows(view.model, view.before, 'glass-true', id))
      ? 'the main burner is lit and nobody has seen the water in the glass move'
      : undefined,
};
