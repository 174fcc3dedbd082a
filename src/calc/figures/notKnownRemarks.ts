/** What has to be measured before the range table says anything: worth reading, never an error. */
import type { Car } from '../../car/car';
import type { Diagnostic } from '../../diagnostic/diagnostic';
import type { CarFigures } from './carFigures';

/** The figures of the range table, and what they are told of. */
const ranges = { 'water-range': 'its water', 'fuel-range': 'its main fuel' } as const;

/** Ranges that cannot be worked out and gauges whose marks are not known, each with what to measure. */
export function notKnownRemarks(car: Car, figures: CarFigures): readonly Diagnostic[] {
  return [...rangesNotKnown(car, figures), ...marksNotKnown(car, figures)];
}

function rangesNotKnown(car: Car, figures: CarFigures): readonly Diagnostic[] {
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

/** Tanks that the range is looked up by, read on a gauge of which nobody has said what its marks stand for. */
function marksNotKnown(car: Car, { water, fuel }: CarFigures): readonly Diagnostic[] {
  return [water, fuel].flatMap((chart): Diagnostic[] => {
    const tank = chart && car.spec.tanks[chart.model.id];
    if (tank === undefined || chart === undefined || chart.marks.length > 0) return [];
    if (tank.read !== 'gauge' && tank.read !== 'glass') return [];
    return [
      {
        code: 'figure-marks-unknown',
        severity: 'remark',
        at: car.spotOf(`tanks.${chart.model.id}.read`),
        message: `the ${tank.name} is read on a gauge, but nothing says what is in it at the gauge's marks`,
        found: `\`read: ${tank.read}\` without \`marks\``,
        expected: '`marks`, a mark and a volume each',
        mend: 'fill the empty tank from a measure and write down what went in at each mark; until then the range table goes by what is in the tank, which the gauge does not tell',
      },
    ];
  });
}
