/** Cars with all their figures: the demo cars, and the tiny car with words of its spec changed. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Figure } from '../../../src/calc/figure';
import { type CarFigures, carFigures } from '../../../src/calc/figures/carFigures';
import { type Liquids, readLiquids } from '../../../src/calc/fuel/liquids';
import { readTripLog, type TripLog } from '../../../src/calc/range/trip-log';
import { readTimeline } from '../../../src/calc/time/timeline';
import { buildCar } from '../../../src/car/build';
import type { Car } from '../../../src/car/car';
import type { Outcome } from '../../../src/diagnostic/diagnostic';
import { loadSpec } from '../../../src/spec/load';
import { spoiled } from '../../helpers/tinySpec';

const root = join(import.meta.dirname, '..', '..', '..');
const textOf = (path: string): string => readFileSync(join(root, path), 'utf8');

/** The value of a good outcome; throws with the problems of a bad one. */
export function soundOf<T>(outcome: Outcome<T>): T {
  if (outcome.ok) return outcome.value;
  throw new Error(outcome.problems.map(({ code, message }) => `${code}: ${message}`).join('\n'));
}

export const liquids: Liquids = soundOf(readLiquids(textOf('shared/liquids.yaml'), 'shared/liquids.yaml'));
export const timeline = soundOf(readTimeline(textOf('shared/timeline.yaml'), 'shared/timeline.yaml'));

/** A car and its figures. */
export interface Figured {
  readonly car: Car;
  readonly figures: CarFigures;
}

/** A car from the text of a spec. */
export function figured(text: string, log?: TripLog): Figured {
  const car = buildCar(soundOf(loadSpec(text, 'car.yaml', [...liquids.keys()])));
  const figures = carFigures(car, {
    liquids,
    timeline,
    face: { name: 'a face of this test', xHeight: 0.52 },
    system: car.spec.print.units.first,
    ...(log === undefined ? {} : { log }),
  });
  return { car, figures };
}

/** The tiny car with words of its spec changed. */
export function tiny(...changes: readonly (readonly [from: string, to: string])[]): Figured {
  return figured(spoiled(...changes));
}

/** The demo cars by the names of their files. */
export const demoNames = readdirSync(join(root, 'cars'))
  .filter((name) => name.endsWith('.yaml'))
  .map((name) => name.replace('.yaml', ''));

/** A demo car, with its log if it names one; words of its spec may be changed. */
export function demoCar(name: string, ...changes: readonly (readonly [from: string, to: string])[]): Figured {
  const text = changes.reduce(
    (spec, [from, to]) => {
      if (!spec.includes(from)) throw new Error(`“${from}” does not stand in ${name}`);
      return spec.replace(from, () => to);
    },
    textOf(`cars/${name}.yaml`),
  );
  const log = /^ {2}log: (.*)$/m.exec(text)?.[1];
  return figured(text, log === undefined ? undefined : soundOf(readTripLog(textOf(`cars/${log}`), log)));
}

/** A car among the fixtures. */
export function fixtureCar(name: string): Figured {
  return figured(textOf(`tests/fixtures/cars/${name}.yaml`));
}

/** A figure by its id. */
export function figureOf({ figures }: Figured, id: string): Figure {
  const found = figures.all.find((figure) => figure.id === id);
  if (found === undefined)
    throw new Error(`there is no figure ${id}; there are ${figures.all.map((each) => each.id).join(', ')}`);
  return found;
}

/** The SI number of a figure that is a quantity. */
export function siOf(car: Figured, id: string): number {
  const { value } = figureOf(car, id);
  if (value.kind !== 'quantity') throw new Error(`${id} is ${value.kind}`);
  return value.quantity.si;
}

/** The words of a figure that is words. */
export function wordsOf(car: Figured, id: string): string {
  const { value } = figureOf(car, id);
  if (value.kind !== 'words') throw new Error(`${id} is ${value.kind}`);
  return value.words;
}

/** What to measure, of a figure that is not known. */
export function measureOf(car: Figured, id: string): string {
  const { value } = figureOf(car, id);
  if (value.kind !== 'unknown') throw new Error(`${id} is ${value.kind}`);
  return value.measure;
}
