/** The inspection sheet: what is looked at, by whom, with what result. The inspector of the place decides. */
import { identityContext } from '../context/identity';
import { upkeepContext } from '../context/upkeep';
import type { Paper } from '../paper';
import { asBook } from '../ways';

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
  ...asBook(title, { chaptersOnNewPage: true, chapterTabs: false }),
};
