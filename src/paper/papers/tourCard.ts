/** The card of one way: water and fuel by leg, where to stop, what to have aboard. Read on the lap, in wet and sun. */
import type { CarTour } from '../../calc/figures/tour';
import { identityContext } from '../context/identity';
import { tourContext } from '../context/tour';
import type { Paper } from '../paper';
import type { PaperTitle } from '../plans';
import { asLapSheet } from '../ways';

/** A day's legs; a longer way is better planned day by day. */
const mostFaces = 12;

/** The paper for one way. `name` is what the way is called, and the end of the file's name. */
export function tourCard({ title, what }: PaperTitle, name: string, tour: CarTour): Paper {
  return {
    name: `tour-${name.toLowerCase().replace(/[^a-z0-9]+/g, '-')}`,
    title,
    what,
    template: 'tour-card',
    context: (world) => ({
      car: identityContext(world.car.spec, world.phrases),
      // a face in each system of units that the car prints in
      tours: world.phrases.systems.map((system) => tourContext(name, tour, world, system)),
    }),
    drawings: () => [],
    ...asLapSheet(title, { mostFaces, growTo: 1.5, lies: 'upright' }),
  };
}
