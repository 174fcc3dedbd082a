/** The visiting driver’s page: what is different about this car, on one side of one sheet; the start from warm on the other. */
import { identityContext } from '../context/identity';
import { visitingContext } from '../context/visiting';
import { leastSizes } from '../legible';
import type { Paper } from '../paper';
import type { PaperTitle } from '../plans';
import { lapSheet } from '../sheets';
import { asFilledSheet } from '../ways';

/** One sheet has two sides. */
const mostFaces = 2;

/** The visiting driver’s page. */
export const visitingDriver = ({ title, what }: PaperTitle): Paper => ({
  name: 'visiting-driver',
  title,
  what,
  template: 'visiting-driver',
  context: (world) => ({
    car: identityContext(world.car.spec, world.phrases),
    words: world.words,
    ...visitingContext(world),
  }),
  drawings: () => [],
  ...asFilledSheet(
    title,
    mostFaces,
    lapSheet,
    (world) => leastSizes(world.fonts, world.car.spec.print.distances.lap.si).text,
  ),
});
