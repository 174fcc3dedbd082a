/** The valve-position card: how every valve stands at the end of each part of the day. */
import { layoutSheet } from '../../layout/card/layout-card';
import { identityContext } from '../context/identity';
import { valveTableContext } from '../context/proof';
import { identityLine } from '../heads';
import { leastSizes, mostUsefulPt } from '../legible';
import type { Paper } from '../paper';
import { lapSheet } from '../sheets';

const title = 'Valve positions';

/** A car with very many valves takes a few faces. */
const mostFaces = 6;

/** The valve-position card, read in the hand. */
export const valveCard: Paper = {
  name: 'card-valve-positions',
  title,
  what: 'how every valve stands at the end of each part of the day, from the model of the car',
  template: 'valve-card',
  context: (world) => ({
    car: identityContext(world.car.spec, world.phrases),
    card: { title },
    table: valveTableContext(world, title, world.plans['valve-card']),
  }),
  drawings: () => [],
  leastPt: (world) => leastSizes(world.fonts, world.car.spec.print.distances.lap.si),
  layOut: (blocks, world, mark) => {
    const sheet = lapSheet(world, 'landscape');
    if (!sheet.ok) return sheet;
    const { lap } = world.car.spec.print.distances;
    return layoutSheet(blocks, {
      fonts: world.fonts,
      theme: world.theme,
      sheet: sheet.value,
      title,
      leastPt: leastSizes(world.fonts, lap.si),
      mostPt: mostUsefulPt(world.fonts, lap.si),
      foot: [world.car.spec.car.name, title, identityLine(world, mark)],
      mostFaces,
    });
  },
};
