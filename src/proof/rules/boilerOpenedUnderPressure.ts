import type { PartId } from '../../car/car';
import type { Model } from '../model';
import { at, knows } from '../state';
import { steam } from '../values';
import { everyCar, type Rule } from './rule';

/** Valves through which the boiler is filled cold, and those on which its level is read only cold. A vent is not one: air is let out through it as steam is raised. */
function coldOnly(model: Model): readonly PartId[] {
  const { boiler } = model.car.spec;
  const steaming = new Set(boiler.level.filter((way) => way.when !== 'cold').map((way) => way.gauge));
  return [boiler['fill-by'], ...boiler.level.map((way) => way.gauge)].flatMap((id) => (id !== undefined && !steaming.has(id) ? [id] : []));
}

export const boilerOpenedUnderPressure: Rule = {
  id: 'boiler-opened-under-pressure', code: 'rule-boiler-opened-under-pressure', group: 'water',
  title: 'the boiler is opened or filled by hose only at no pressure',
  reason: 'hot water flashes to steam where it comes out, and a hose joint is blown off',
  mend: 'wait until the steam gauge rests at zero, and look, before anything on the boiler is opened',
  appliesTo: everyCar,
  atStep: ({ model, step, before }) => {
    const { action, part } = step;
    const fills = action === 'fill' && part === 'boiler';
    const opens = (action === 'open' || action === 'crack' || action === 'remove') && part !== undefined && coldOnly(model).includes(part);
    if (!fills && !opens) return undefined;
    if (at(before, model.slots.steam) !== steam.none) return 'there is pressure in the boiler';
    return knows(model, before, 'boiler-at-zero') ? undefined : 'nobody has seen that the boiler is at no pressure';
  },
};
