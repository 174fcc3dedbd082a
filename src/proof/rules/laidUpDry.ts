import type { PartId } from '../../car/car';
import { duties } from '../../procedure/duties';
import { nameOf } from '../effects/act';
import type { Model } from '../model';
import { at, knows, of } from '../state';
import { content, level, shut } from '../values';
import { everyCar, type Rule } from './rule';

/** Duties of the pumps that water goes through. */
const pumpDuties = ['feed-engine-pump', 'standing-pump', 'transfer-pump'];

/** Pumps in which water stands that nobody has let out. */
function pumps(model: Model): readonly PartId[] {
  return pumpDuties.flatMap((duty) => duties[duty]?.parts(model.car) ?? []);
}

export const laidUpDry: Rule = {
  id: 'laid-up-dry',
  code: 'rule-laid-up-dry',
  group: 'water',
  title:
    'a car that is laid up with its water out has boiler, tanks, pumps and pipes empty and every drain open',
  reason: 'one low pocket of water freezes and breaks the pump or the tube it stands in',
  mend: 'empty every pump and pipe, open every drain, and leave it open until the car comes out of lay-up',
  asks: ['water-out', 'pump-empty', 'water-pipes-empty'],
  appliesTo: everyCar,
  atEnd: ({ model, state, procedure, parked }) => {
    if (procedure.phase !== 'lay-up' || parked) return undefined;
    if (!knows(model, state, 'water-out'))
      return 'nobody has seen to it that no water is left where frost can reach it';
    if (at(state, model.slots.level) !== level.empty) return 'there is still water in the boiler';
    const tank = model.waterTanks.find((id) => of(state, model.slots.content, id) !== content.empty);
    if (tank !== undefined) return `there is still water in ${nameOf(model, tank)}`;
    const pump = pumps(model).find((id) => !knows(model, state, 'pump-empty', id));
    if (pump !== undefined) return `nobody has emptied ${nameOf(model, pump)}`;
    if (!knows(model, state, 'water-pipes-empty')) return 'nobody has emptied the water pipes';
    const valve = (duties['open-when-drained']?.parts(model.car) ?? []).find(
      (id) => of(state, model.slots.valve, id) === shut,
    );
    return valve === undefined
      ? undefined
      : `${nameOf(model, valve)} is shut, so that water may stand behind it`;
  },
};
