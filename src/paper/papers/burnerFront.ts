/** The burner-front card: pilot, soak and main burner as the helper sees them. */
import { burnerFrontContext } from '../context/burnerFront';
import { identityContext } from '../context/identity';
import type { Paper } from '../paper';
import { asCard } from '../ways';

const title = 'At the burner front';

/** More faces than a helper will turn over. */
const mostFaces = 20;

/** The burner-front card, read in the hand. */
export const burnerFront: Paper = {
  name: 'card-burner-front',
  title,
  what: 'for the helper: where to stand, what to see while the burners are lit, when to call a stop',
  template: 'burner-front',
  context: (world) => ({
    car: identityContext(world.car.spec, world.phrases),
    ...burnerFrontContext(world),
  }),
  drawings: () => [],
  ...asCard(title, 'lap', mostFaces),
};
