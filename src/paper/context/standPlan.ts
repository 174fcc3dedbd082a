/** What the drawing of how far people stand is made from. */
import type { StandPlanInput } from '../../drawing/standPlan';
import type { World } from '../paper';

/** The distances of the docent guide, each about the car, its way or the places of its parts. */
export function standPlanInput({ car, guide, phrases, language }: World): StandPlanInput {
  return {
    name: car.spec.car.name,
    say: language.messages.say,
    lengthM: car.spec.car.length.si,
    widthM: car.spec.car.width.si,
    lines: guide.docent.distances.map(({ from, short, least, around, of }, index) => ({
      number: index + 1,
      distanceM: least.si,
      distance: phrases.paced(least),
      from,
      short,
      around:
        around ??
        (of ?? []).flatMap(({ id }) => {
          const place = car.places.get(car.parts.get(id)?.place ?? '');
          return place === undefined ? [] : [{ backM: place.backM, rightM: place.rightM }];
        }),
    })),
  };
}
