/** The docent guide: what a museum tells and shows, what stays shut, how a demonstration runs to the minute. */
import { drawPlan } from '../../drawing/plan';
import { layoutPages } from '../../layout/flow/layout-pages';
import { docentContext } from '../context/docent';
import { identityContext } from '../context/identity';
import { planInput } from '../context/plan';
import { footOf, headOf } from '../heads';
import { leastBookSizes } from '../legible';
import type { Paper } from '../paper';
import { pageSheet } from '../sheets';

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
  leastPt: (world) => leastBookSizes(world.fonts),
  layOut: (blocks, world, mark) => {
    const sheet = pageSheet(world);
    if (!sheet.ok) return sheet;
    return layoutPages(blocks, {
      fonts: world.fonts,
      theme: world.theme,
      sheet: sheet.value,
      head: headOf(world, title),
      foot: footOf(world, mark),
      firstPage: { head: false, foot: true },
      chaptersOnNewPage: false,
    });
  },
};
