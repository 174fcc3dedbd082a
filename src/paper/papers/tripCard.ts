/** The trip and water card: blank, for a pencil, with this car’s rules of thumb. Read and written on the lap. */
import { identityContext } from '../context/identity';
import { tripCardContext } from '../context/tripCard';
import type { Paper } from '../paper';
import type { PaperTitle } from '../plans';
import { asLapSheet } from '../ways';

/** One side for each system of units. */
const mostFaces = 2;

/** The trip and water card. */
export const tripCard = ({ title, what }: PaperTitle): Paper => ({
  name: 'trip-card',
  title,
  what,
  template: 'trip-card',
  context: (world) => ({
    car: identityContext(world.car.spec, world.phrases),
    ...tripCardContext(world),
  }),
  drawings: () => [],
  ...asLapSheet(title, { mostFaces, growTo: 1, lies: 'landscape' }),
});
