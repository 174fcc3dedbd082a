/**
 * How long all figures of one car take, and a way of fifty places.
 */
import { readFileSync } from 'node:fs';
import { bench, describe } from 'vitest';
import { carFigures } from '../src/calc/figures/carFigures';
import { carTour } from '../src/calc/figures/tour';
import { readLiquids } from '../src/calc/fuel/liquids';
import { readTripLog } from '../src/calc/range/trip-log';
import type { Way } from '../src/calc/stops/way';
import { readTimeline } from '../src/calc/time/timeline';
import { buildCar } from '../src/car/build';
import type { Outcome } from '../src/diagnostic/diagnostic';
import { loadSpec } from '../src/spec/load';

const textOf = (path: string): string => readFileSync(new URL(`../${path}`, import.meta.url), 'utf8');

function soundOf<T>(outcome: Outcome<T>): T {
  if (outcome.ok) return outcome.value;
  throw new Error(outcome.problems.map(({ message }) => message).join('\n'));
}

const liquids = soundOf(readLiquids(textOf('shared/liquids.yaml'), 'liquids.yaml'));
const timeline = soundOf(readTimeline(textOf('shared/timeline.yaml'), 'timeline.yaml'));
const log = soundOf(readTripLog(textOf('cars/marigold-trips.csv'), 'marigold-trips.csv'));
const car = buildCar(soundOf(loadSpec(textOf('cars/marigold.yaml'), 'marigold.yaml', [...liquids.keys()])));
const sources = { liquids, timeline, log, system: 'us', face: { name: 'a face', xHeight: 0.52 } } as const;
const figures = carFigures(car, sources);

const stepM = 6000;
const way: Way = {
  lengthM: 50 * stepM,
  stretches: Array.from({ length: 50 }, (_, i) => ({
    fromM: i * stepM,
    toM: (i + 1) * stepM,
    terrain: (['level', 'rolling', 'hilly'] as const)[i % 3] ?? 'level',
    climbM: 0,
  })),
  places: Array.from({ length: 50 }, (_, i) => ({
    name: `place ${i + 1}`,
    atM: (i + 1) * stepM,
    water: true,
    fuel: i % 5 === 0,
    note: '',
  })),
  heights: { kind: 'said' },
};

describe('one car', () => {
  bench('all its figures', () => {
    carFigures(car, sources);
  });
  bench('a way of fifty places planned', () => {
    carTour(car, figures, way);
  });
});
