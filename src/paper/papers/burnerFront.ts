/** The burner-front card: pilot, soak and main burner as the helper sees them. */
import { layoutCard } from '../../layout/card/layout-card';
import { burnerFrontContext } from '../context/burnerFront';
import { identityContext } from '../context/identity';
import { identityLine } from '../heads';
import { leastSizes, mostUsefulPt } from '../legible';
import type { Paper } from '../paper';
import { cardSheet } from '../sheets';

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
  leastPt: (world) => leastSizes(world.fonts, world.car.spec.print.distances.lap.si),
  layOut: (blocks, world, mark) => {
    const sheet = cardSheet(world);
    if (!sheet.ok) return sheet;
    const { lap } = world.car.spec.print.distances;
    return layoutCard(blocks, {
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
