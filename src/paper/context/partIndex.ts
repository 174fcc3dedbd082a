/** The index of the manual: every part, where it is, and in which procedures it is worked or read. */
import type { Car, Part } from '../../car/car';
import type { World } from '../paper';
import { placesContext, placesInOrder } from './controls';
import { firstSteps, stepAnchor } from './stepAnchors';

/** One entry. */
export interface IndexEntry {
  readonly id: string;
  readonly name: string;
  readonly tag: string;
  /** What leads to where the book tells of it: its line in the table of places, its data, or else the place. */
  readonly link: string;
  readonly placeName: string;
  /** What leads to the step in each procedure that is the first to work or read it. */
  readonly steps: readonly string[];
}

const left: ReadonlySet<Part['kind']> = new Set(['outside']);

/** Kinds of which the data tell more than the table of places, by the heading there. */
const toldInData: Readonly<Partial<Record<Part['kind'], string>>> = {
  boiler: 'data-boiler',
  engine: 'data-engine',
};

/** Entries by name, in the order of the alphabet of the papers. */
export function partIndex({ car, proof, phrases }: World): readonly IndexEntry[] {
  const inOrder = byAlphabet(car);
  const inTable = new Set(placesContext(car, phrases).flatMap(({ parts }) => parts.map(({ id }) => id)));
  const linkTo = ({ id, kind, place }: Part) =>
    toldInData[kind] ?? (inTable.has(id) ? `part-${id}` : `place-${place}`);
  const headed = new Set(placesInOrder(car).map(({ id }) => id));
  return [...car.parts.values()]
    .filter(({ kind, place }) => !left.has(kind) && place !== undefined && headed.has(place))
    .sort((a, b) => inOrder(a.name, b.name))
    .map((part) => ({
      id: part.id,
      name: part.name,
      tag: part.tag ?? '',
      link: linkTo(part),
      placeName: car.places.get(part.place ?? '')?.name ?? '',
      steps: proof.procedures.flatMap((procedure) => {
        const first = firstSteps(procedure).get(part.id);
        return first === undefined ? [] : [stepAnchor(procedure, first)];
      }),
    }));
}

/** The order of the alphabet in the language of a car’s papers; numbers in names count as numbers. */
export function byAlphabet(car: Car): (a: string, b: string) => number {
  return new Intl.Collator(car.spec.print.language, { numeric: true }).compare;
}
