/** The index of the manual: every part, where it is, and in which procedures it is worked or read. */
import type { Car, Part } from '../../car/car';
import type { World } from '../paper';
import { placesInOrder } from './controls';
import { firstSteps, stepAnchor } from './stepAnchors';

/** One entry. */
export interface IndexEntry {
  readonly id: string;
  readonly name: string;
  readonly tag: string;
  /** Key of its place, to link to, and its name. */
  readonly place: string;
  readonly placeName: string;
  /** What leads to the step in each procedure that is the first to work or read it. */
  readonly steps: readonly string[];
}

const left: ReadonlySet<Part['kind']> = new Set(['outside']);

/** Entries by name, in the order of the alphabet of the papers. */
export function partIndex({ car, proof }: World): readonly IndexEntry[] {
  const inOrder = byAlphabet(car);
  const headed = new Set(placesInOrder(car).map(({ id }) => id));
  return [...car.parts.values()]
    .filter(({ kind, place }) => !left.has(kind) && place !== undefined && headed.has(place))
    .sort((a, b) => inOrder(a.name, b.name))
    .map(({ id, name, tag, place }) => ({
      id,
      name,
      tag: tag ?? '',
      place: place ?? '',
      placeName: car.places.get(place ?? '')?.name ?? '',
      steps: proof.procedures.flatMap((procedure) => {
        const first = firstSteps(procedure).get(id);
        return first === undefined ? [] : [stepAnchor(procedure, first)];
      }),
    }));
}

/** The order of the alphabet in the language of a car’s papers; numbers in names count as numbers. */
export function byAlphabet(car: Car): (a: string, b: string) => number {
  return new Intl.Collator(car.spec.print.language, { numeric: true }).compare;
}
