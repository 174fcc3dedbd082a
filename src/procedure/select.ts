/** Finding the parts a selector means, and whether a condition holds, for one car and the part at hand. */
import type { Car, PartId } from '../car/car';
import { duties } from './duties';
import { allFuelValves, valvesTo } from './fuelWay';
import type { ConditionForm, SelectorForm } from './libraryForm';
import { relations } from './relations';
import { carTraits, partTraits } from './traits';

/** How far a place is from the driver’s seat, nearest first. */
const reachOrder = ['seated', 'standing', 'opened', 'kneeling', 'under'] as const;

/** The parts a selector means, in its order. `it` is the part at hand, inside a group. */
export function select(car: Car, selector: SelectorForm, it?: PartId): readonly PartId[] {
  const excepted = selector.except === undefined ? [] : (duties[selector.except]?.parts(car) ?? []);
  const found = inOrder(car, start(car, selector, it), selector.order).filter(
    (id) =>
      !excepted.includes(id) &&
      (selector.where ?? []).every((trait) => partTraits[trait]?.holds(car, id) === true) &&
      (selector['where-not'] ?? []).every((trait) => partTraits[trait]?.holds(car, id) !== true),
  );
  if (selector.take === 'first') return found.slice(0, 1);
  return selector.take === 'rest' ? found.slice(1) : found;
}

function start(car: Car, selector: SelectorForm, it: PartId | undefined): readonly PartId[] {
  if (selector.duty !== undefined) return duties[selector.duty]?.parts(car) ?? [];
  if (it === undefined) return [];
  return selector.its === undefined ? [it] : (relations[selector.its]?.parts(car, it) ?? []);
}

function inOrder(car: Car, ids: readonly PartId[], order: SelectorForm['order']): readonly PartId[] {
  if (order === undefined || order === 'from-source') return ids;
  if (order === 'from-burner') return [...ids].reverse();
  return byReach(car, ids);
}

/** Kinds of valve that one stroke of the hand shuts. */
const quickKinds: readonly string[] = ['plug', 'ball', 'cock', 'slide', 'lever'];

/**
 * As a seated driver reaches them: nearest place first; of those, the ones that cut the most main burners, then the
 * most burners at all, so that the big fire goes first; of those, valves that one stroke shuts before those that are
 * screwed; then from the burner back.
 */
function byReach(car: Car, ids: readonly PartId[]): readonly PartId[] {
  const flow = allFuelValves(car);
  const burners = Object.entries(car.spec.burners).map(([id, burner]) => ({
    main: burner.job === 'main',
    valves: valvesTo(car, id),
  }));
  const rank = (id: PartId): readonly number[] => {
    const place = car.places.get(car.parts.get(id)?.place ?? '');
    const cut = burners.filter((burner) => burner.valves.includes(id));
    return [
      place === undefined ? reachOrder.length : reachOrder.indexOf(place.reach),
      -cut.filter((burner) => burner.main).length,
      -cut.length,
      quickKinds.includes(car.spec.valves[id]?.kind ?? '') ? 0 : 1,
      -flow.indexOf(id),
    ];
  };
  return [...ids].sort((a, b) => {
    const [left, right] = [rank(a), rank(b)];
    return (
      left.map((value, index) => value - (right[index] ?? 0)).find((difference) => difference !== 0) ?? 0
    );
  });
}

/** Whether a condition holds. A condition without a key always holds. */
export function holds(car: Car, condition: ConditionForm | undefined, it?: PartId): boolean {
  if (condition === undefined) return true;
  if (condition.has !== undefined && select(car, condition.has, it).length === 0) return false;
  if (condition.trait !== undefined && carTraits[condition.trait]?.holds(car) !== true) return false;
  if (
    condition['it-is'] !== undefined &&
    (it === undefined || partTraits[condition['it-is']]?.holds(car, it) !== true)
  )
    return false;
  if (condition.all !== undefined && !condition.all.every((each) => holds(car, each, it))) return false;
  if (condition.any !== undefined && !condition.any.some((each) => holds(car, each, it))) return false;
  return condition.not === undefined || !holds(car, condition.not, it);
}
