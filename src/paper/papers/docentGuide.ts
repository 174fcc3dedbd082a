/** The docent guide: what a museum tells and shows, what stays shut, how a demonstration runs to the minute. */
import { drawGlass } from '../../drawing/glass';
import { drawPlan } from '../../drawing/plan';
import { drawStandPlan } from '../../drawing/standPlan';
import { docentContext } from '../context/docent';
import { glassInputs } from '../context/drawingGlass';
import { identityContext } from '../context/identity';
import { planInput } from '../context/plan';
import { standPlanInput } from '../context/standPlan';
import type { Paper, World } from '../paper';
import type { PaperTitle } from '../plans';
import { asBook } from '../ways';

/** The words of the cold glass, in points, and how wide it is with them: read in the hand, beside its table. */
const glass = { sizePt: 11, widthPt: 260, seenPt: 100 };

/** The docent guide. */
export const docentGuide = ({ title, what }: PaperTitle): Paper => ({
  name: 'docent-guide',
  title,
  what,
  template: 'docent-guide',
  context: (world) => ({
    car: identityContext(world.car.spec, world.phrases),
    words: world.words,
    cautions: world.front.cautions.map((caution) => ({ ...caution, brief: true, repeated: false })),
    ...docentContext(world),
    coldGlass: coldGlass(world).length > 0 ? 'glass' : '',
  }),
  drawings: (world) => [
    drawPlan(planInput(world), world.fonts),
    drawStandPlan(standPlanInput(world), world.fonts),
    ...coldGlass(world).map((input) => drawGlass(input, world.fonts)),
  ],
  ...asBook(title, { chaptersOnNewPage: false, chapterTabs: false }),
});

/** The glass of a cold boiler with the most that may stand in it, where that is known. */
function coldGlass(world: World) {
  return glassInputs(world, glass.sizePt, glass.widthPt, 'cold').map((input) => ({
    ...input,
    leastSeenPt: glass.seenPt,
  }));
}
