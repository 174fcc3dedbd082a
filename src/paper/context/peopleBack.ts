/** How far people stand from a car that is being lit: the docent guide’s distances, for whoever calls them clear. */
import type { Procedure } from '../../procedure/procedure';
import type { World } from '../paper';

/** Distances as they are paced out; empty where the guide gives none. */
export interface PeopleBack {
  readonly sides: string;
  /** From the burner front and the flue. */
  readonly burner: string;
  /** Where these two are; empty where the spec does not say. */
  readonly burnerAt: string;
  readonly flueAt: string;
}

/** The distances; nothing where the guide gives neither. */
export function peopleBack({ car, guide, phrases }: World): PeopleBack | null {
  const { distances } = guide.docent;
  const isMain = (id: string) => car.spec.burners[id]?.job === 'main';
  const main = Object.values(car.spec.burners).find(({ job }) => job === 'main');
  const sides = distances.find(({ around }) => around === 'car');
  const burner = distances.find(({ of = [] }) => of.some(({ id }) => isMain(id)));
  if (sides === undefined && burner === undefined) return null;
  return {
    sides: sides === undefined ? '' : phrases.paced(sides.least),
    burner: burner === undefined ? '' : phrases.paced(burner.least),
    burnerAt: car.places.get(main?.place ?? '')?.name ?? '',
    flueAt: car.spec.boiler['flue-mouth'] ?? '',
  };
}

/** Whether people are called clear of the burner in this procedure, with no trouble to run from. */
export function callsClear({ phase, steps }: Procedure): boolean {
  return phase !== 'emergency' && steps.some(({ proves }) => proves.includes('burner-front-clear'));
}
