import type { PartId } from '../../car/car';
import { nameOf } from '../effects/act';
import type { Model } from '../model';
import { at, burnsOn, knows } from '../state';
import { steam } from '../values';
import { everyCar, type Rule } from './rule';

/** Valves through which the boiler is filled cold, and those on which its level is read only cold. */
function coldOnly(model: Model): readonly PartId[] {
  const { boiler } = model.car.spec;
  const steaming = waysUnderSteam(model);
  return [boiler['fill-by'], ...boiler.level.map((way) => way.gauge)].flatMap((id) =>
    id !== undefined && !steaming.has(id) ? [id] : [],
  );
}

function waysUnderSteam(model: Model): ReadonlySet<PartId> {
  return new Set(model.car.spec.boiler.level.flatMap((way) => (way.when === 'cold' ? [] : [way.gauge])));
}

/** The way for the air, unless it is a cock made to be opened under steam. It may be open while steam forms, and not be opened after. */
function airWay(model: Model): PartId | undefined {
  const by = model.car.spec.boiler['lets-air-out-by'];
  return by === undefined || waysUnderSteam(model).has(by) ? undefined : by;
}

export const boilerOpenedUnderPressure: Rule = {
  id: 'boiler-opened-under-pressure',
  code: 'rule-boiler-opened-under-pressure',
  group: 'water',
  title: 'the boiler is opened or filled by hose only at no pressure',
  reason: 'hot water flashes to steam where it comes out, and a hose joint is blown off',
  mend: 'wait until the steam gauge rests at zero, and look, before anything on the boiler is opened',
  asks: ['boiler-at-zero'],
  appliesTo: everyCar,
  atStep: ({ model, step, before }) => {
    const { action, part } = step;
    const fills = action === 'fill' && part === 'boiler';
    const opens =
      (action === 'open' || action === 'crack' || action === 'remove') &&
      part !== undefined &&
      coldOnly(model).includes(part);
    const airs = (action === 'open' || action === 'crack') && part !== undefined && part === airWay(model);
    if (airs && at(before, model.slots.steam) !== steam.none) return 'there is pressure in the boiler';
    if (!fills && !opens) return undefined;
    const burning = model.burners.find((id) => burnsOn(model, before, id));
    if (burning !== undefined) return `${nameOf(model, burning)} still burns under the boiler`;
    if (at(before, model.slots.steam) !== steam.none) return 'there is pressure in the boiler';
    return knows(model, before, 'boiler-at-zero')
      ? undefined
      : 'nobody has seen that the boiler is at no pressure';
  },
};
