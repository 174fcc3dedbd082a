/** The docent guide: what a museum tells and shows, what stays shut, how a demonstration runs to the minute. */
import { drawPlan } from '../../drawing/plan';
import { docentContext } from '../context/docent';
import { identityContext } from '../context/identity';
import { planInput } from '../context/plan';
import type { Paper } from '../paper';
import { asBook } from '../ways';

const title = 'Docent guide';

/** The docent guide. */
export const docentGuide: Paper = {
  name: 'docent-guide',
  title,
  what: 'for a museum: what to tell and show, what nobody touches, proof that the car is cold, a demonstration to the minute',
  template: 'docent-guide',
  context: (world) => ({
    car: identityContext(world.car.spec, world.phrases),
    words: world.words,
    cautions: world.front.cautions.map((caution) => ({ ...caution, brief: true })),
    ...docentContext(world),
  }),
  drawings: (world) => [drawPlan(planInput(world), world.fonts)],
  ...asBook(title, { chaptersOnNewPage: false, chapterTabs: false }),
};
