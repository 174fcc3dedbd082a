/**
 * A time of burning on that such burners do not have: worth reading, never an error. The bounds are common practice, no source.
 */
import type { Car } from '../../car/car';
import type { Diagnostic } from '../../diagnostic/diagnostic';

/** A pot that holds more than this is seldom met; a valve that does not shut is. */
const longS = 15 * 60;
/** Nobody waits for less: it is over while the next valve is shut. */
const shortS = 10;
/** What is left in a hot vaporizer and its jets. */
const jetsS = 60;

/** Times of burning on that are longer or shorter than usual. */
export function burnsOnRemarks(car: Car): readonly Diagnostic[] {
  const jets = car.spec.boiler.draught?.kind === 'jets';
  return Object.entries(car.spec.burners).flatMap(([id, { name, job, 'burns-on': time }]) => {
    if (time === undefined) return [];
    const told = (message: string, expected: string, mend: string): Diagnostic => ({
      code: 'figure-burns-on',
      severity: 'remark',
      at: car.spotOf(`burners.${id}.burns-on`),
      message,
      found: `\`${time.written}\``,
      expected,
      mend,
      notes: ['Common practice, no source; this car may be otherwise.'],
    });
    if (time.si > longS)
      return [
        told(
          `the ${name} burns on for very long after its valve is shut`,
          '15 min at the most',
          'shut the next valve as well and time it again; if it is shorter then, the first does not shut tight, and is mended before any fire',
        ),
      ];
    if (time.si < shortS)
      return [
        told(
          `the ${name} burns on for so short a time that nobody waits for it`,
          '10 s or longer',
          'leave `burns-on` out if it is out before the next valve is shut',
        ),
      ];
    return jets && job === 'main' && time.si > jetsS
      ? [
          told(
            `the ${name} draws its air with jets of vapour, and burns on for long without them`,
            '1 min at the most, of `draught: { kind: jets }`',
            'look whether its valve shuts tight, and whether fuel lies in it',
          ),
        ]
      : [];
  });
}
