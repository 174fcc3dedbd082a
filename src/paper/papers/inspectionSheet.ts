/** The inspection sheet: what is looked at, by whom, with what result. The inspector of the place decides. */
import { identityContext } from '../context/identity';
import { upkeepContext } from '../context/upkeep';
import type { Paper } from '../paper';
import type { PaperTitle } from '../plans';
import { asBook } from '../ways';

/** The inspection sheet. */
export const inspectionSheet = ({ title, what }: PaperTitle): Paper => ({
  name: 'inspection-sheet',
  title,
  what,
  template: 'inspection-sheet',
  context: (world) => ({
    car: identityContext(world.car.spec, world.phrases),
    words: world.words,
    ...upkeepContext(world),
  }),
  drawings: () => [],
  ...asBook(title, { chaptersOnNewPage: true, chapterTabs: false }),
});
