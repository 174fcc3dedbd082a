/** The burner-front card: pilot, soak and main burner as the helper sees them. */
import { burnerFrontContext } from '../context/burnerFront';
import { identityContext } from '../context/identity';
import type { Paper } from '../paper';
import type { PaperTitle } from '../plans';
import { asCard } from '../ways';

/** More faces than a helper will turn over. */
const mostFaces = 20;

/** The burner-front card, read in the hand. */
export const burnerFront = ({ title, what }: PaperTitle): Paper => ({
  name: 'card-burner-front',
  title,
  what,
  template: 'burner-front',
  context: (world) => ({
    car: identityContext(world.car.spec, world.phrases),
    ...burnerFrontContext(world),
  }),
  drawings: () => [],
  ...asCard(title, 'lap', mostFaces),
});
