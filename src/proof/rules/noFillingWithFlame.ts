import { nameOf } from '../effects/act';
import { anyFlame, at, flamesIn, knows, of } from '../state';
import { no, steam } from '../values';
import { everyCar, type Rule } from './rule';

export const noFillingWithFlame: Rule = {
  id: 'no-filling-with-flame',
  code: 'rule-no-filling-with-flame',
  group: 'fuel',
  title: 'no fuel tank is opened, filled or drained with any flame lit',
  reason: 'fuel vapour rolls along the ground to a flame many paces away',
  mend: 'put out every flame, and look, before the cap comes off; cap on before anything is lit',
  asks: ['fires-out', 'no-flame-near'],
  appliesTo: everyCar,
  atStep: ({ model, step, before, after, newlyLit }) => {
    const { part, action } = step;
    const tank = part !== undefined && model.fuelTanks.includes(part) ? part : undefined;
    const handles =
      tank !== undefined &&
      (action === 'fill' ||
        action === 'drain' ||
        (of(before, model.slots.cap, tank) !== no && of(after, model.slots.cap, tank) === no));
    if (handles && anyFlame(model, before))
      return `${flamesIn(model, before)
        .map((id) => nameOf(model, id))
        .join(' and ')} burns while ${nameOf(model, tank)} is opened`;
    if (handles && at(before, model.slots.steam) !== steam.none && !knows(model, before, 'fires-out'))
      return `${nameOf(model, tank)} is opened and nobody has looked that every fire of the car is out`;
    if (handles && !knows(model, before, 'no-flame-near'))
      return `${nameOf(model, tank)} is opened and nobody has looked that no flame is near`;
    const openTank =
      newlyLit.length === 0 && anyFlame(model, before) === anyFlame(model, after)
        ? undefined
        : model.fuelTanks.find((id) => of(after, model.slots.cap, id) === no);
    return openTank !== undefined && anyFlame(model, after)
      ? `a flame is lit while the cap of ${nameOf(model, openTank)} is off`
      : undefined;
  },
};
