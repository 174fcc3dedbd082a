/** The log sheet of a day of steam: what is written down, as printed text. The manual lists the same. */
import type { Car, PartId } from '../../car/car';
import { terrains } from '../../spec/schema/running';
import type { World } from '../paper';
import { type PartContext, partsOfKind } from './controls';
import { identityContext } from './identity';
import { logFields, logVolume } from './logColumns';

/** Rows for trips: more than a day holds. */
const tripRows = 5;

/** Rows for water and fuel taken on: more stops than most days have. */
const takingRows = 4;

/** A line to fill in, with the number its field is called by. */
export interface LogLine {
  readonly what: string;
  readonly number: number;
}

/** A gauge to write down. */
export interface LogGauge extends PartContext {
  /** It can be read on the road; a stick in a tank under pressure cannot. */
  readonly underway: boolean;
}

/** What is on the sheet. */
export interface LogSheetContext extends Readonly<Record<string, unknown>> {
  readonly before: readonly LogLine[];
  readonly times: readonly LogLine[];
  readonly after: readonly LogLine[];
  readonly tanks: ReturnType<typeof partsOfKind>;
  readonly gauges: readonly LogGauge[];
  readonly columns: ReturnType<typeof logFields>;
}

/** Everything on the sheet. */
export function logContext(world: World): LogSheetContext {
  const { car, guide, phrases, words } = world;
  const { log } = guide.crew;
  return {
    car: identityContext(car.spec, phrases),
    words,
    before: numbered(log.before),
    times: numbered(log.times),
    after: numbered(log.after.map(({ what, lines = 2 }) => ({ what, lines }))),
    tanks: partsOfKind(world, 'tank'),
    gauges: partsOfKind(world, 'gauge').map((part) => ({ ...part, underway: isReadUnderway(part.id, car) })),
    columns: logFields(car.spec.print.units.first),
    volume: logVolume(car.spec.print.units.first),
    takings: Array.from({ length: takingRows }, (_, index) => index + 1),
    trips: Array.from({ length: tripRows }, (_, index) => index + 1),
    terrains: terrains.map((terrain) => words.terrain[terrain]),
    file: car.spec.running.log ?? '',
  };
}

/** A stick is not put into a tank that is under pressure. */
function isReadUnderway(gauge: PartId, { spec: { gauges, tanks } }: Car): boolean {
  const { kind, of = '' } = gauges[gauge] ?? {};
  return kind !== 'stick' || tanks[of]?.pressure === undefined;
}

/** Each with its number, which its field is called by. */
function numbered<T extends object>(list: readonly T[]): readonly (T & { readonly number: number })[] {
  return list.map((each, index) => ({ ...each, number: index + 1 }));
}
