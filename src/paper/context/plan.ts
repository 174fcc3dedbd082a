/** What the plan of the car is drawn from. */
import type { PlanInput } from '../../drawing/plan';
import type { World } from '../paper';
import { placesInOrder } from './controls';

/** The plan view: outline, wheels, seats and steering, and every place with the parts that are there. */
export function planInput({ car, language }: World): PlanInput {
  const { spec } = car;
  return {
    name: spec.car.name,
    say: language.messages.say,
    lengthM: spec.car.length.si,
    widthM: spec.car.width.si,
    wheelbaseM: spec.car.wheelbase.si,
    frontAxleBackM: spec.car['front-axle-back'].si,
    seats: spec.car.seats,
    driverSide: spec.car['driver-side'],
    steering: spec.car.steering,
    outline: spec.car.outline ?? 'open',
    singleWheel: spec.car['single-wheel'],
    places: placesInOrder(car).map((place, index) => ({
      id: place.id,
      number: index + 1,
      name: place.name,
      backM: place.backM,
      rightM: place.rightM,
      items: place.parts.flatMap((id) => {
        const part = car.parts.get(id);
        return part?.tag === undefined ? [] : [{ tag: part.tag, name: part.name }];
      }),
    })),
  };
}
