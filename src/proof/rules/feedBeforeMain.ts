import { feedsBoiler } from '../effects/stores';
import { knowsOfAny, of } from '../state';
import { content } from '../values';
import { everyCar, type Rule } from './rule';

export const feedBeforeMain: Rule = {
  id: 'feed-before-main',
  code: 'rule-feed-before-main',
  group: 'water',
  title: 'there is water and a pump that can feed it, standing, before the main burner is lit',
  reason:
    'once there is steam the water goes down, and there must be a way to bring it up again without driving',
  mend: 'open the water tank, and see a pump that works while the car stands move water, before the main burner',
  asks: ['feed-ready', 'feeds-against-pressure'],
  appliesTo: everyCar,
  atStep: ({ model, flows, after, newlyFedMains, newlyLit }) => {
    if (newlyFedMains.length === 0 && !newlyLit.some((id) => model.mains.includes(id))) return undefined;
    if (model.waterTanks.every((tank) => of(after, model.slots.content, tank) === content.empty))
      return 'the main burner is lit and the water tank is empty';
    // a pump with steam of its own cannot be worked before there is any
    const standing = model.feedPumps.filter((id) => {
      const drive = model.car.spec.pumps[id]?.drive;
      return drive !== 'engine' && drive !== 'steam';
    });
    if (standing.length === 0) return undefined;
    if (!standing.some((id) => feedsBoiler(model, flows, after, id)))
      return 'the main burner is lit and no pump that works while the car stands can send water to the boiler as the valves stand';
    return knowsOfAny(model, after, 'feed-ready') || knowsOfAny(model, after, 'feeds-against-pressure')
      ? undefined
      : 'the main burner is lit and no feed pump has been seen to move water';
  },
};
