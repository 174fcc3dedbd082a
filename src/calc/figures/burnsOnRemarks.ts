/**
 * A time of burning on that such burners do not have, or none where it is wanted: worth reading, never an error. The bounds
 * are common practice, no source.
 */
import type { Car } from '../../car/car';
import type { Diagnostic } from '../../diagnostic/diagnostic';
import type { Quantity } from '../../quantity/quantity';

/** A pot that holds more than this is seldom met; a valve that does not shut is. */
const longS = 15 * 60;
/** Nobody waits for less: it is over while the next valve is shut. */
const shortS = 10;
/** What is left in a hot vaporizer and its jets. */
const jetsS = 60;

/** Times of burning on that are longer or shorter than usual, and burners of which nothing is said that may burn on. */
export function burnsOnRemarks(car: Car): readonly Diagnostic[] {
  return Object.entries(car.spec.burners).flatMap(([id, burner]) => {
    const said = burner['burns-on'];
    const told = said === undefined ? notSaid(car, burner) : oddTime(car, burner, said);
    return told === undefined
      ? []
      : [
          {
            code: 'figure-burns-on' as const,
            severity: 'remark' as const,
            at: car.spotOf(said === undefined ? `burners.${id}` : `burners.${id}.burns-on`),
            ...(said === undefined ? {} : { found: `\`${said.written}\`` }),
            ...told,
            notes: ['Common practice, no source; this car may be otherwise.'],
          },
        ];
  });
}

type Burner = Car['spec']['burners'][string];
type Told = Pick<Diagnostic, 'message' | 'expected' | 'mend'>;

/** Fuel that comes to a burner as a liquid, and is lit there by hand, lies in it. */
function notSaid(car: Car, { name, job, vaporizer, 'lit-by': by }: Burner): Told | undefined {
  if (job !== 'main' || vaporizer !== undefined || car.spec.equipment[by] === undefined) return undefined;
  return {
    message: `nothing says how long the ${name} burns on after its valve is shut`,
    expected: '`burns-on`, as fuel may lie in a burner that has no vaporizer',
    mend: 'time it, and give the longest of three; `burns-on: 0 min` if it goes out at once',
  };
}

function oddTime(car: Car, { name, job }: Burner, { si }: Quantity<'time'>): Told | undefined {
  if (si > longS)
    return {
      message: `the ${name} burns on for very long after its valve is shut`,
      expected: '15 min at the most',
      mend: 'shut the next valve as well and time it again; if it is shorter then, the first does not shut tight, and is mended before any fire',
    };
  if (si > 0 && si < shortS)
    return {
      message: `the ${name} burns on for so short a time that nobody waits for it`,
      expected: '10 s or longer',
      mend: 'write `0 min` if it is out before the next valve is shut',
    };
  if (car.spec.boiler.draught?.kind === 'jets' && job === 'main' && si > jetsS)
    return {
      message: `the ${name} draws its air with jets of vapour, and burns on for long without them`,
      expected: '1 min at the most, of `draught: { kind: jets }`',
      mend: 'look whether its valve shuts tight, and whether fuel lies in it',
    };
  return undefined;
}
