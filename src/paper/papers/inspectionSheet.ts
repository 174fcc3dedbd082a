/** The inspection sheet: what is looked at, by whom, with what result. The inspector of the place decides. */
import { layoutPages } from '../../layout/flow/layout-pages';
import { identityContext } from '../context/identity';
import { upkeepContext } from '../context/upkeep';
import { footOf, headOf } from '../heads';
import { leastBookSizes } from '../legible';
import type { Paper } from '../paper';
import { pageSheet } from '../sheets';

const title = 'Inspection sheet';

/** The inspection sheet. */
export const inspectionSheet: Paper = {
  name: 'inspection-sheet',
  title,
  what: 'what is looked at before a season, by whom, and what was found; the inspector decides',
  template: 'inspection-sheet',
  context: (world) => ({
    car: identityContext(world.car.spec, world.phrases),
    words: world.words,
    ...upkeepContext(world),
  }),
  drawings: () => [],
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
      chaptersOnNewPage: true,
    });
  },
};
