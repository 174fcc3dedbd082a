/** Lighting up as the helper at the burner sees it: what is done there, and what to wait for from the driver. */
import type { Car } from '../../car/car';
import type { Step } from '../../procedure/procedure';
import type { World } from '../paper';
import { type Piece, withNamesStrong } from '../pieces';

/** One line of the card. */
export interface BurnerFrontStep {
  readonly say: readonly Piece[];
  readonly result: readonly Piece[];
  /** Done elsewhere by the driver; the helper waits for the call. */
  readonly byDriver: boolean;
}

/** Acts of the driver that the helper must know of; readings at the dash are left out. */
const known: ReadonlySet<Step['action']> = new Set(['open', 'crack', 'shut', 'call', 'set', 'release']);

/** The card of the helper. */
export function burnerFrontContext({ car, guide, procedures }: World): Readonly<Record<string, unknown>> {
  const card = guide.crew['burner-front'];
  const places = burnerPlaces(car);
  return {
    stand: card.stand.map(({ say, sign }) => ({ say, sign: sign ?? '' })),
    signed: card.stand.filter(({ sign }) => sign !== undefined),
    stopAt: card['stop-at'],
    procedures: procedures
      .filter(({ phase }) => card.phases.includes(phase))
      .map(({ title, good, steps }) => ({
        title,
        good,
        steps: steps
          .filter((step) => atBurner(step, places) || step.place === undefined || known.has(step.action))
          .map((step) => lineOf(step, car, places)),
      })),
  };
}

/** Where burners and vaporizers are. */
function burnerPlaces(car: Car): ReadonlySet<string> {
  return new Set(
    [...car.parts.values()].flatMap(({ kind, place }) =>
      (kind === 'burner' || kind === 'vaporizer') && place !== undefined ? [place] : [],
    ),
  );
}

function atBurner(step: Step, places: ReadonlySet<string>): boolean {
  return step.who === 'helper' || (step.place !== undefined && places.has(step.place));
}

function lineOf(step: Step, car: Car, places: ReadonlySet<string>): BurnerFrontStep {
  const part = step.part === undefined ? undefined : car.parts.get(step.part);
  const names = part === undefined ? [] : [part.name, ...(part.tag === undefined ? [] : [part.tag])];
  return {
    say: withNamesStrong(step.say, names),
    result: withNamesStrong(step.result, []),
    byDriver: !atBurner(step, places),
  };
}
