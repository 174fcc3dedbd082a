/** What has to be measured before the range table says anything: worth reading, never an error. */
import type { Car } from '../../car/car';
import type { Diagnostic } from '../../diagnostic/diagnostic';
import type { CarFigures } from './carFigures';

/** The figures of the range table, and what they are told of. */
const ranges = { 'water-range': 'its water', 'fuel-range': 'its main fuel' } as const;

/** A range that cannot be worked out, with what to measure; nothing where it is known. */
export function notKnownRemarks(car: Car, figures: CarFigures): readonly Diagnostic[] {
  return Object.entries(ranges).flatMap(([id, liquid]): Diagnostic[] => {
    const value = figures.all.find((figure) => figure.id === id)?.value;
    if (value?.kind !== 'unknown') return [];
    return [
      {
        code: 'figure-range-unknown',
        severity: 'remark',
        at: car.spotOf('running'),
        message: `how far the car goes on ${liquid} is not known: range table and trip card have no distance for it`,
        found: `not known: ${value.measure}`,
        expected:
          'what the tank holds at a few depths of a stick or its inside, and under `running` what is used for a distance (`water-use`, `fuel-use`)',
        mend: 'fill up to a mark, drive level road that is measured, fill up to the mark again by measure, and write it down; until then leave those two papers unprinted',
      },
    ];
  });
}
