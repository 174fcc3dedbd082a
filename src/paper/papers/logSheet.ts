/** The log sheet for a day of steam. Its columns of trips are those the range fit reads. */
import { logContext } from '../context/logSheet';
import type { Paper } from '../paper';
import type { PaperTitle } from '../plans';
import { asBook } from '../ways';

/** The log sheet. */
export const logSheet = ({ title, what }: PaperTitle): Paper => ({
  name: 'log-sheet',
  title,
  what,
  template: 'log-sheet',
  context: logContext,
  drawings: () => [],
  ...asBook(title, { chaptersOnNewPage: true, chapterTabs: false }),
});
