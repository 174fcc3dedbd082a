/** Where the step brings whoever does it. */
import { no } from '../values';
import { type Act, put } from './act';

/**
 * The one who does the step goes to its place. A driver who goes to a place that is not reached from the seat has left
 * the seat; getting back in is a step of its own. A step that either can do moves nobody for certain.
 */
export function walk(act: Act): void {
  const { model, step } = act;
  const place = step.place === undefined ? undefined : model.car.places.get(step.place);
  if (place === undefined || step.who === 'either') return;
  put(
    act,
    step.who === 'driver' ? model.slots.driverAt : model.slots.helperAt,
    1 + model.places.indexOf(place.id),
  );
  if (step.who === 'driver' && place.reach !== 'seated') put(act, model.slots.seat, no);
}
