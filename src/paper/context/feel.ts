/** How a hand tells a part from what stands beside it. */
import type { Car, PartId } from '../../car/car';

/** What the spec says of how it feels; empty if it says nothing. */
export function feelOf(id: PartId, { spec }: Car): string {
  return (spec.valves[id] ?? spec.controls[id] ?? spec.locks[id])?.feel ?? '';
}
