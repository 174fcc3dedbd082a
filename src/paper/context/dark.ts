/** The card for the dark: what is shut from the seat, in order, and how that feels; what must be found; what is looked at. */
import type { Car, PartId } from '../../car/car';
import type { Step } from '../../procedure/procedure';
import { seatedSteps } from '../../proof/escape';
import type { World } from '../paper';
import { type Piece, withNamesStrong } from '../pieces';
import { feelOf, handlingOf } from './feel';
import { withPartStrong } from './partBold';

/** One thing to do by feel. */
export interface DarkStep {
  readonly say: readonly Piece[];
  /** How the hand tells it from its neighbours, and which way a valve goes; empty where neither is to be said. */
  readonly how: string;
}

/** Neighbouring steps at one place, numbered on from those before. */
export interface DarkPlace {
  /** Empty where no place matters. */
  readonly place: string;
  readonly start: number;
  readonly steps: readonly DarkStep[];
}

/** What is shut from the seat, and what after it beside the car; what must be found, and what is looked at. */
export interface DarkContext {
  readonly places: readonly DarkPlace[];
  readonly rest: readonly DarkPlace[];
  /** What is said before anything is touched. */
  readonly before: readonly { readonly say: string }[];
  readonly find: readonly { readonly name: string; readonly place: string; readonly feel: string }[];
  readonly look: World['guide']['crew']['dark']['look'];
}

/** Everything the card says. */
export function darkContext(world: World): DarkContext {
  const { car, guide, proof } = world;
  const { shut, before, find, look } = guide.crew.dark;
  const wayOut = proof.procedures.find(({ id }) => id === shut);
  const steps = (wayOut?.steps ?? []).filter(({ onCard }) => onCard);
  const seated = wayOut === undefined ? [] : seatedSteps(car, wayOut);
  // nobody is sent back to the car: what comes after the first act beside it comes after it here too
  const beside = steps.findIndex((step) => !seated.includes(step));
  const [first, rest] = beside < 0 ? [steps, []] : [steps.slice(0, beside), steps.slice(beside)];
  return {
    places: byPlace(first, world),
    rest: byPlace(rest, world, first.length + 1),
    before,
    find: find.flatMap(({ of }) => of.map(({ id, name, place }) => ({ name, place, feel: feelOf(id, car) }))),
    look,
  };
}

function byPlace(steps: readonly Step[], world: World, first = 1): readonly DarkPlace[] {
  const places: { place: string; start: number; steps: DarkStep[] }[] = [];
  for (const [index, step] of steps.entries()) {
    const place = world.car.places.get(step.place ?? '')?.name ?? '';
    const last = places.at(-1);
    if (last === undefined || last.place !== place)
      places.push({ place, start: first + index, steps: [stepOf(step, world)] });
    else last.steps.push(stepOf(step, world));
  }
  return places;
}

/**
 * A valve is said by its name and the way it is shut; anything else in the words of its step, with how a hand works it. What
 * people are told to do has its measure: how far, and until what is smelt; the rest has nothing to see, for it is dark.
 */
function stepOf(step: Step, { car, language }: World): DarkStep {
  const { part: id, say, action } = step;
  const part = id === undefined ? undefined : car.parts.get(id);
  const valve = part?.kind === 'valve' ? car.spec.valves[part.id] : undefined;
  if (part === undefined || valve === undefined || action !== 'shut')
    return {
      say: withPartStrong(say, id, car),
      how: part === undefined ? withoutPart(step, car) : handOn(part.id, car),
    };
  const named = part.tag === undefined ? part.name : `${part.name} ${part.tag}`;
  return {
    say: withNamesStrong(named, [named]),
    how: [
      car.places.get(valve.place)?.how ?? '',
      feelOf(part.id, car),
      valve.quickly ?? language.ways[valve.opens]?.shut ?? '',
    ]
      .filter((words) => words !== '')
      .join('; '),
  };
}

/** How a hand finds a part; of a brake that stays on, also how it is set, which the first clause of the spec says. */
function handOn(id: PartId, car: Car): string {
  const control = car.spec.controls[id];
  const set = control?.kind === 'parking-brake' ? (control.how?.split(';')[0] ?? '') : '';
  return [feelOf(id, car), set].filter((words) => words !== '').join('; ');
}

/**
 * How the brake is worked that brings the car to a stand; of anybody sent or going back, how far and what turns him round, which
 * the first clause of the result says.
 */
function withoutPart({ action, place, result }: Step, car: Car): string {
  if (action === 'call' || action === 'stand') return result.split(';')[0] ?? '';
  const brake = Object.entries(car.spec.controls).find(
    ([, each]) => each.kind === 'brake' && each.place === place,
  );
  return action === 'stop' && brake !== undefined ? `${brake[1].name}: ${handlingOf(brake[0], car)}` : '';
}
