/** How a hand tells a part from what stands beside it, and what it does there. */
import type { Car, PartId } from '../../car/car';

/** What the spec says of how it feels, of the switch for what has one; empty if it says nothing. */
export function feelOf(id: PartId, { spec }: Car): string {
  const own = spec.pumps[id]?.['switched-by'] ?? id;
  return (spec.valves[own] ?? spec.controls[own] ?? spec.locks[own] ?? spec.pumps[own])?.feel ?? '';
}

/** How it feels and, for a lock or a control, how it is worked; empty if the spec says neither. */
export function handlingOf(id: PartId, car: Car): string {
  const how = (car.spec.locks[id] ?? car.spec.controls[id])?.how ?? '';
  return [feelOf(id, car), how].filter((words) => words !== '').join('; ');
}

/** The names of the places where a hand or a foot finds more than one thing to work. */
export function sharedPlaces({ spec, places }: Car): ReadonlySet<string> {
  const worked = [
    ...Object.values(spec.valves),
    ...Object.values(spec.controls),
    ...Object.values(spec.locks),
    ...Object.values(spec.pumps).filter(({ drive }) => drive === 'hand'),
  ].map(({ place }) => place);
  return new Set(
    worked
      .filter((place, index) => worked.indexOf(place) !== index)
      .flatMap((place) => places.get(place)?.name ?? []),
  );
}
