/** What keeps a car where it stands. */
import type { PartId } from '../car/car';
import type { Model } from './model';
import { at, of, type State } from './state';
import { no } from './values';

/** Parking brakes of a car. */
export function parkingBrakes({ car }: Model): readonly PartId[] {
  return Object.entries(car.spec.controls).flatMap(([id, { kind }]) =>
    kind === 'parking-brake' ? [id] : [],
  );
}

/** The parking brake that is set, if one is. */
export function setBrake(model: Model, state: State): PartId | undefined {
  return parkingBrakes(model).find((id) => of(state, model.slots.control, id) !== no);
}

/** Whether a parking brake is set or the wheels are chocked. */
export function isHeld(model: Model, state: State): boolean {
  return at(state, model.slots.chocked) !== no || setBrake(model, state) !== undefined;
}
