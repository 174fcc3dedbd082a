/** Answers about a car that are worked out once and remembered, since the same questions are asked for every step. */
import type { Car, PartId } from '../car/car';

/** `work`, done once for each car. A car never changes, so neither does the answer. */
export function oncePerCar<T>(work: (car: Car) => T): (car: Car) => T {
  const known = new WeakMap<Car, { readonly answer: T }>();
  return (car) => {
    const found = known.get(car) ?? { answer: work(car) };
    known.set(car, found);
    return found.answer;
  };
}

/** `work`, done once for each part of each car. */
export function oncePerPart<T>(work: (car: Car, part: PartId) => T): (car: Car, part: PartId) => T {
  const known = oncePerCar(() => new Map<PartId, { readonly answer: T }>());
  return (car, part) => {
    const found = known(car).get(part) ?? { answer: work(car, part) };
    known(car).set(part, found);
    return found.answer;
  };
}
