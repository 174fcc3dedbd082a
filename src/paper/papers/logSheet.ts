/** The log sheet for a day of steam. Its columns of trips are those the range fit reads. */
import { terrains } from '../../spec/schema/running';
import { partsOfKind } from '../context/controls';
import { identityContext } from '../context/identity';
import { logFields, logVolume } from '../context/logColumns';
import type { Paper, World } from '../paper';
import type { PaperTitle } from '../plans';
import { asBook } from '../ways';

/** Rows for trips: more than a day holds. */
const tripRows = 5;

/** Rows for water and fuel taken on: more stops than most days have. */
const takingRows = 4;

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

function logContext(world: World): Readonly<Record<string, unknown>> {
  const { car, guide, phrases, words } = world;
  const { log } = guide.crew;
  return {
    car: identityContext(car.spec, phrases),
    words,
    before: numbered(log.before),
    times: numbered(log.times),
    after: numbered(log.after),
    tanks: partsOfKind(world, 'tank'),
    gauges: partsOfKind(world, 'gauge'),
    columns: logFields(car.spec.print.units.first),
    volume: logVolume(car.spec.print.units.first),
    takings: Array.from({ length: takingRows }, (_, index) => index + 1),
    trips: Array.from({ length: tripRows }, (_, index) => index + 1),
    terrains: terrains.map((terrain) => words.terrain[terrain]),
    file: car.spec.running.log ?? '',
  };
}

/** Each with its number, which its field is called by. */
function numbered<T extends object>(list: readonly T[]): readonly (T & { readonly number: number })[] {
  return list.map((each, index) => ({ ...each, number: index + 1 }));
}
