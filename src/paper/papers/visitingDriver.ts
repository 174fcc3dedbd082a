/** The visiting driver’s page: what is different about this car, on one side of one sheet; the start from warm on the other. */
import { layoutSheet } from '../../layout/card/layout-card';
import { identityContext } from '../context/identity';
import { visitingContext } from '../context/visiting';
import { identityLine } from '../heads';
import { leastBookSizes, leastSizes } from '../legible';
import type { Paper } from '../paper';
import { lapSheet } from '../sheets';

const title = 'For a visiting driver';

/** One sheet has two sides. */
const mostFaces = 2;

/** The visiting driver’s page. */
export const visitingDriver: Paper = {
  name: 'visiting-driver',
  title,
  what: 'one sheet for a driver who does not know this car: what is different, controls, what hurts, whom to ask; the start from warm',
  template: 'visiting-driver',
  context: (world) => ({
    car: identityContext(world.car.spec, world.phrases),
    words: world.words,
    ...visitingContext(world),
  }),
  drawings: () => [],
  leastPt: (world) => leastBookSizes(world.fonts),
  layOut: (blocks, world, mark) => {
    const sheet = lapSheet(world);
    if (!sheet.ok) return sheet;
    return layoutSheet(blocks, {
      fonts: world.fonts,
      theme: world.theme,
      sheet: sheet.value,
      title,
      leastPt: leastBookSizes(world.fonts),
      mostPt: leastSizes(world.fonts, world.car.spec.print.distances.lap.si).text,
      foot: [world.car.spec.car.name, title, identityLine(world, mark)],
      mostFaces,
    });
  },
};
