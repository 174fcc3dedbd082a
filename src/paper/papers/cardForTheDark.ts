/** The card for the dark: light on dark, bold, few words, read at the dash when the lamps are out. */
import { darkContext } from '../context/dark';
import { identityContext } from '../context/identity';
import type { Paper } from '../paper';
import type { PaperTitle } from '../plans';
import { asDarkCard } from '../ways';

/** More faces than anybody turns by feel. */
const mostFaces = 8;

/** The card for the dark. */
export const cardForTheDark = ({ title, what }: PaperTitle): Paper => ({
  name: 'card-for-the-dark',
  title,
  what,
  template: 'card-for-the-dark',
  context: (world) => ({
    car: identityContext(world.car.spec, world.phrases),
    card: { title },
    ...darkContext(world),
  }),
  drawings: () => [],
  lightOnDark: true,
  ...asDarkCard(title, mostFaces),
});
