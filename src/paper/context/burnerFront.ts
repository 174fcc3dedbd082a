/** Lighting up as the helper at the burner sees it: what is done there, and what to wait for from the driver. */
import type { Car } from '../../car/car';
import type { Step } from '../../procedure/procedure';
import type { World } from '../paper';
import { type Piece, withNamesStrong } from '../pieces';
import { listOfPlaces } from './placeList';
import { type Naming, placesOnCard } from './placesSaid';
import { cardSteps } from './procedures';
import { criticalKeys } from './proof';

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
export function burnerFrontContext({ car, guide, proof }: World) {
  const card = guide.crew['burner-front'];
  const places = burnerPlaces(car);
  const critical = criticalKeys({ proof });
  const shown = proof.procedures
    .filter(({ phase }) => card.phases.includes(phase))
    .map((procedure) => ({
      procedure,
      steps: cardSteps(procedure, critical)
        .map((step, index) => ({ number: index + 1, step }))
        .filter(({ step }) => concernsHelper(step, places)),
    }));
  const list = listOfPlaces(
    placesOnCard(
      [
        ...card.stand.flatMap(({ say }) => namingsIn(say, car)),
        ...shown.flatMap(({ steps }) => steps.map(({ step }) => step)),
      ],
      car,
    ),
    car,
  );
  return {
    placed: list.tagged.length + list.named.length > 0,
    places: list,
    stand: card.stand.map(({ say, sign }) => ({ say, sign: sign ?? '' })),
    signed: card.stand.filter(({ sign }) => sign !== undefined),
    stopAt: card['stop-at'],
    procedures: shown.map(({ procedure: { title, good }, steps }) => ({
      title,
      good,
      runs: inRuns(steps.map(({ number, step }) => ({ number, line: lineOf(step, car, places) }))),
    })),
  };
}

/** What is done at the burner, what the helper must know of, and what is done nowhere in particular. */
function concernsHelper(step: Step, places: ReadonlySet<string>): boolean {
  return (
    atBurner(step, places) || step.place === undefined || known.has(step.action) || step.action === 'light'
  );
}

/** The untagged parts that words outside a procedure name. */
function namingsIn(say: string, car: Car): readonly Naming[] {
  return [...car.parts.values()]
    .filter(({ name, tag }) => tag === undefined && say.includes(name))
    .map(({ id }) => ({ say, result: '', part: id }));
}

/** Steps that follow each other on the driver's card, numbered as there, so that both call a step by one number. */
function inRuns(
  steps: readonly { readonly number: number; readonly line: BurnerFrontStep }[],
): readonly { readonly start: number; readonly steps: readonly BurnerFrontStep[] }[] {
  const runs: { start: number; steps: BurnerFrontStep[] }[] = [];
  for (const { number, line } of steps) {
    const last = runs.at(-1);
    if (last !== undefined && last.start + last.steps.length === number) last.steps.push(line);
    else runs.push({ start: number, steps: [line] });
  }
  return runs;
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
    // the torch is lit away from the fuel, by whoever holds it after
    byDriver: !atBurner(step, places) && step.action !== 'light',
  };
}
