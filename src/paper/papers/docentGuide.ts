/** The docent guide: what a museum tells and shows, what stays shut, how a demonstration runs to the minute. */
import { drawPlan } from '../../drawing/plan';
import { drawStandPlan } from '../../drawing/standPlan';
import { docentContext } from '../context/docent';
import { identityContext } from '../context/identity';
import { planInput } from '../context/plan';
import { standPlanInput } from '../context/standPlan';
import type { Paper } from '../paper';
import type { PaperTitle } from '../plans';
import { asBook } from '../ways';

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
  }),
  drawings: (world) => [
    drawPlan(planInput(world), world.fonts),
    drawStandPlan(standPlanInput(world), world.fonts),
  ],
  ...asBook(title, { chaptersOnNewPage: false, chapterTabs: false }),
});
