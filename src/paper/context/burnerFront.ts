/** Lighting up as the helper at the burner sees it: what is done there, and what to wait for from the driver. */
import type { Car } from '../../car/car';
import type { Messages } from '../../language/messages';
import { gravestFirst } from '../../language/signal';
import { duties } from '../../procedure/duties';
import type { Step } from '../../procedure/procedure';
import type { World } from '../paper';
import { type Piece, withNamesStrong } from '../pieces';
import { withPartStrong } from './partBold';
import { callsClear, peopleBack } from './peopleBack';
import { listOfPlaces } from './placeList';
import { type Naming, placesOnCard, taggedParts } from './placesSaid';
import { type CautionContext, cardSteps } from './procedures';
import { criticalKeys } from './proof';
import { standsOn } from './standsOn';

/** One line of the card. */
export interface BurnerFrontStep {
  readonly say: readonly Piece[];
  readonly result: readonly Piece[];
  /** Done elsewhere by the driver; the helper waits for the call, and sees what comes of it if `result` is not empty. */
  readonly byDriver: boolean;
  /** What is warned of before it, where the helper does it. */
  readonly cautions: readonly CautionContext[];
  /** Left out by the helper, nothing later shows it before harm is done. */
  readonly critical: boolean;
}

/** Acts of the driver that the helper must know of; readings at the dash are left out. */
const known: ReadonlySet<Step['action']> = new Set(['open', 'crack', 'shut', 'call', 'set', 'release']);

/** The card of the helper. */
export function burnerFrontContext(world: World) {
  const { car, guide, plans, proof, language } = world;
  const card = guide.crew['burner-front'];
  const said = new Set<string>();
  const places = burnerPlaces(car);
  const critical = criticalKeys({ proof });
  const shown = proof.procedures
    .filter(({ phase }) => card.phases.includes(phase))
    .map((procedure) => {
      const seen = seenAtBurner(procedure.steps, car);
      return {
        procedure,
        steps: cardSteps(procedure, critical)
          .map((step, index) => ({ number: index + 1, step }))
          .filter(({ step }) => concernsHelper(step, places))
          .map(({ number, step }) => ({ number, step: withoutUnseen(step, places, seen) })),
      };
    });
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
  const burning = shown.map(({ procedure }) => procedure);
  return {
    driversCard:
      plans.cards.find((plan) => burning.some((procedure) => standsOn(plan, procedure)))?.title ?? '',
    people: burning.some(callsClear) ? peopleBack(world) : null,
    placed: list.tagged.length + list.named.length > 0,
    places: list,
    marked: shown.some(({ procedure: { id }, steps }) =>
      steps.some(({ step }) => byHelper(step, places) && critical.has(`${id} ${step.id}`)),
    ),
    opened: false,
    stand: card.stand.map(({ say, sign }) => ({ say, sign: sign ?? '' })),
    signed: card.stand.filter(({ sign }) => sign !== undefined),
    stopAt: card['stop-at'],
    procedures: shown.map(({ procedure: { id, title, good }, steps }) => ({
      title,
      good,
      runs: inRuns(
        steps.map(({ number, step }, index) => ({
          number,
          line: {
            ...lineOf(step, { car, places, messages: language.messages }),
            cautions: byHelper(step, places) ? cautionsOf(step, steps[index - 1]?.step, places, said) : [],
            critical: byHelper(step, places) && critical.has(`${id} ${step.id}`),
          },
        })),
      ),
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

/** The cautions of a step of the helper that the line before has not said, in a line each; shorter where the card has said them. */
function cautionsOf(
  step: Step,
  before: Step | undefined,
  places: ReadonlySet<string>,
  said: Set<string>,
): readonly CautionContext[] {
  const saidBefore = before !== undefined && byHelper(before, places) ? before.cautions : [];
  return gravestFirst(step.cautions)
    .filter(({ id }) => !saidBefore.some((each) => each.id === id))
    .map((caution) => {
      const repeated = said.has(caution.id);
      said.add(caution.id);
      return { ...caution, brief: true, repeated };
    });
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

/** Done at the burner by whoever is there; the torch is lit away from the fuel, by whoever holds it after. */
function byHelper(step: Step, places: ReadonlySet<string>): boolean {
  return atBurner(step, places) || step.action === 'light';
}

/** What is proven where the helper stands, whoever does the step. */
const provenThere: readonly string[] = ['burner-aired', 'burner-front-clear', 'flame-good', 'igniter-proven'];

/**
 * The steps of the driver whose result shows at the burner: what is proven there, and from where fuel is let to a flame on, every
 * turn of a fuel valve and every wait.
 */
function seenAtBurner(steps: readonly Step[], car: Car): ReadonlySet<Step> {
  const fuelValves = duties['fuel-valve']?.parts(car) ?? [];
  const lit = steps.findIndex(({ sets }) => sets.lighting !== undefined);
  return new Set(
    steps.filter(
      ({ part, action, proves }, index) =>
        proves.some((each) => provenThere.includes(each)) ||
        (lit >= 0 && index >= lit && (part === undefined ? action === 'wait' : fuelValves.includes(part))),
    ),
  );
}

/** A step of the driver says nothing of its result, unless the helper sees it. */
function withoutUnseen(step: Step, places: ReadonlySet<string>, seen: ReadonlySet<Step>): Step {
  return byHelper(step, places) || seen.has(step) ? step : { ...step, result: '' };
}

/** What a line is told with. */
interface Told {
  readonly car: Car;
  readonly places: ReadonlySet<string>;
  readonly messages: Messages;
}

function lineOf(step: Step, told: Told): Omit<BurnerFrontStep, 'cautions' | 'critical'> {
  const { car, places } = told;
  return {
    say: withPartStrong(step.say, step.part, car),
    result: withNamesStrong(withHands(step, told), []),
    byDriver: !byHelper(step, places),
  };
}

/** The result of a step; where another hand than that of the line works one of its valves, each valve says whose does. */
function withHands(step: Step, { car, places, messages }: Told): string {
  const valves = taggedParts(car)
    .filter(({ id, tag }) => id in car.spec.valves && id !== step.part && step.result.includes(`(${tag})`))
    .map(({ id, tag }) => ({ tag, helper: places.has(car.parts.get(id)?.place ?? '') }));
  if (valves.every(({ helper }) => helper === byHelper(step, places))) return step.result;
  return valves.reduce(
    (words, { tag, helper }) =>
      words.replace(`(${tag})`, `(${messages.say(helper ? 'tag-of-helper' : 'tag-of-driver', { tag })})`),
    step.result,
  );
}
