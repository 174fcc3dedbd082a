/** The page on figures, from the demo cars as they stand in the repository. */
import { publishedChecks } from '../calc/checks';
import { carFigures } from '../calc/figures/carFigures';
import { figuresReference } from '../calc/figuresReference';
import { readLiquids } from '../calc/fuel/liquids';
import { readTripLog } from '../calc/range/trip-log';
import { readTimeline } from '../calc/time/timeline';
import { buildCar } from '../car/build';
import type { Outcome } from '../diagnostic/diagnostic';
import { loadSpec } from '../spec/load';

const demoCars = ['marigold', 'thimble', 'heron'] as const;

/** The page; `read` reads a file of the repository. Throws if a file of the repository is at fault. */
export function figuresPage(read: (path: string) => string): string {
  const liquids = sound(readLiquids(read('shared/liquids.yaml'), 'shared/liquids.yaml'));
  const timeline = sound(readTimeline(read('shared/timeline.yaml'), 'shared/timeline.yaml'));
  const figures = demoCars.flatMap((name) => {
    const loaded = sound(loadSpec(read(`cars/${name}.yaml`), `cars/${name}.yaml`, [...liquids.keys()]));
    const car = buildCar(loaded);
    const log = car.spec.running.log;
    return carFigures(car, {
      liquids,
      timeline,
      // any face: the page shows methods, not sizes
      face: { name: 'small letters of the text face', xHeight: 0.5 },
      system: car.spec.print.units.first,
      ...(log === undefined ? {} : { log: sound(readTripLog(read(`cars/${log}`), log)) }),
    }).all;
  });
  return figuresReference(read('docs/figures.head.md'), figures, publishedChecks);
}

function sound<T>(outcome: Outcome<T>): T {
  if (outcome.ok) return outcome.value;
  throw new Error(outcome.problems.map(({ message }) => message).join('\n'));
}
