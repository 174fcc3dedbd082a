import { knows } from '../state';
import { lightsMainOnColdBoiler } from './coldStart';
import type { Rule } from './rule';

function ways(model: Parameters<Rule['appliesTo']>[0], when: 'cold' | 'steaming'): number {
  return new Set(
    model.car.spec.boiler.level
      .filter((way) => way.when === when || way.when === 'both')
      .map((way) => way.gauge),
  ).size;
}

export const levelTwice: Rule = {
  id: 'level-twice',
  code: 'rule-level-twice',
  group: 'water',
  title: 'the level has been read in two ways that agree before the main burner is lit on a cold boiler',
  reason: 'a blocked passage shows water that is not there; two ways are not blocked alike',
  mend: 'read the level in a second way before the main burner',
  asks: ['level-twice'],
  appliesTo: (model) => ways(model, 'cold') > 1,
  atStep: (view) =>
    lightsMainOnColdBoiler(view) && !knows(view.model, view.after, 'level-twice')
      ? 'the main burner is lit and the level has been read in one way only'
      : undefined,
};
