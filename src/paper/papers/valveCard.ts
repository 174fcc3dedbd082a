/** The valve-position card: how every valve stands at the end of each part of the day. */
import { identityContext } from '../context/identity';
import { valveTableContext } from '../context/proof';
import type { Paper } from '../paper';
import type { PaperTitle } from '../plans';
import { asLapSheet } from '../ways';

/** A car with very many valves takes a few faces. */
const mostFaces = 6;

/** The valve-position card, read in the hand. */
export const valveCard = ({ title, what }: PaperTitle): Paper => ({
  name: 'card-valve-positions',
  title,
  what,
  template: 'valve-card',
  context: (world) => ({
    car: identityContext(world.car.spec, world.phrases),
    card: { title },
    table: valveTableContext(world, title, world.plans['valve-card']),
  }),
  drawings: () => [],
  ...asLapSheet(title, { mostFaces, growTo: 1, lies: 'landscape' }),
});
