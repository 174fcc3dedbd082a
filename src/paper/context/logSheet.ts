/** The log sheet of a day of steam: what is written down, as printed text. The manual lists the same. */
import type { Car, PartId } from '../../car/car';
import { terrains } from '../../spec/schema/running';
import type { World } from '../paper';
import { type PartContext, partsOfKind } from './controls';
import { identityContext } from './identity';
import { logFields, logVolume } from './logColumns';
import { readingsContext } from './readings';

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
  /** What it shows on the road: of a tank, down to where the reserve begins. */
  readonly road: string;
  /** It can be read on the road; a stick in a tank under pressure cannot. */
  readonly underway: boolean;
}

/** A tank to write down, morning and evening. */
export interface LogTank extends PartContext {
  /** How it is written down: the depth on a stick, the pressure on a gauge, a volume, or nothing of these: the mark it stands at. */
  readonly by: 'stick' | 'pressure' | 'mark' | 'volume';
  /** The unit of what is written down; empty for a mark. */
  readonly unit: string;
  /** The gauge it is read on; empty for a stick. */
  readonly on: string;
}

/** What is on the sheet. */
export interface LogSheetContext extends Readonly<Record<string, unknown>> {
  readonly before: readonly LogLine[];
  readonly times: readonly LogLine[];
  readonly after: readonly LogLine[];
  readonly tanks: readonly LogTank[];
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
    tanks: partsOfKind(world, 'tank').map((part) => ({ ...part, ...readAs(part.id, world) })),
    gauges: readingsContext(world).gauges.map((part) => ({
      ...part,
      underway: isReadUnderway(part.id, car),
    })),
    columns: logFields(car.spec.print.units.first),
    volume: logVolume(car.spec.print.units.first),
    takings: Array.from({ length: takingRows }, (_, index) => index + 1),
    trips: Array.from({ length: tripRows }, (_, index) => index + 1),
    terrains: terrains.map((terrain) => words.terrain[terrain]),
    file: car.spec.running.log ?? '',
  };
}

/** How much is in a tank, as it is written down. */
function readAs(id: PartId, { car, phrases }: World): Pick<LogTank, 'by' | 'unit' | 'on'> {
  const [system = 'metric'] = phrases.systems;
  const tank = car.spec.tanks[id];
  if (tank?.read === 'stick') return { by: 'stick', unit: phrases.unit('length', system), on: '' };
  const gauge = car.spec.gauges[tank?.gauge ?? ''];
  const on = gauge === undefined ? '' : (car.parts.get(tank?.gauge ?? '')?.name ?? '');
  if (gauge?.reads === 'pressure') return { by: 'pressure', unit: phrases.unit('gaugePressure', system), on };
  if (gauge !== undefined) return { by: 'mark', unit: '', on };
  return { by: 'volume', unit: phrases.unit('volume', system), on };
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
