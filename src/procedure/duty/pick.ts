/** Picking parts out of the spec. */
import type { Car, PartId } from '../../car/car';

type Keyed<T> = Readonly<Record<string, T>> | undefined;

/** Keys of the entries for which `test` holds, in the order of the spec. */
export function keysWhere<T>(entries: Keyed<T>, test: (entry: T, id: PartId) => boolean): readonly PartId[] {
  return Object.entries(entries ?? {}).flatMap(([id, entry]) => (test(entry, id) ? [id] : []));
}

/** The keys that are there, each once. */
export function unique(ids: readonly (PartId | undefined)[]): readonly PartId[] {
  return [...new Set(ids.filter((id) => id !== undefined))];
}

/** `ids` less those in `out`. */
export function without(ids: readonly PartId[], out: readonly PartId[]): readonly PartId[] {
  return ids.filter((id) => !out.includes(id));
}

/** Those of `ids` that are hand valves. */
export function valvesOf(car: Car, ids: readonly PartId[]): readonly PartId[] {
  return ids.filter((id) => id in car.spec.valves);
}
