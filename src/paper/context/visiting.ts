/** One sheet for a driver who knows steam cars and not this one. */
import { duties } from '../../procedure/duties';
import type { Caution, Procedure } from '../../procedure/procedure';
import type { World } from '../paper';
import type { Phrases } from '../phrase';
import { cardsBeside } from './cardsSaid';
import { type PartContext, partContext } from './controls';
import { feelOf, sharedPlaces } from './feel';
import { peopleBack } from './peopleBack';
import { nothingSaid, nothingSaidInTrouble, placesOnCard } from './placesSaid';
import { cardProcedure, cardSteps } from './procedures';
import { criticalKeys } from './proof';
import { standsOn } from './standsOn';

/** The procedure in which the glass is blown through. */
const blownIn = 'raising-steam';

/** How many hazards stand on the sheet. */
const hurtsPrinted = 5;

/** One thing the driver works or reads from the seat. */
export type Handled = PartContext & {
  readonly placeName: string;
  /** It is not reached or read from the seat. */
  readonly elsewhere: boolean;
  /** For what the boiler's level is read on: the lowest at which a fire may burn. */
  readonly lowest: string;
  /** How a hand tells a valve from what is worked beside it; empty for one that stands alone. */
  readonly feel: string;
};

/** What the sheet says of the car. */
export function visitingContext(world: World): Readonly<Record<string, unknown>> {
  const { car, guide, plans, proof } = world;
  const { procedures } = proof;
  const { throttle, drips } = car.spec.engine;
  const { boiler } = car.spec;
  const driving = [throttle, ...drips];
  const { hurts, start, stop } = guide.crew.visiting;
  const cautions = cautionsById(world);
  const critical = criticalKeys({ proof });
  const isHere = ({ id }: Procedure) => [...start, stop].includes(id);
  const said = { ...nothingSaid(), cards: { ...cardsBeside(isHere, world), told: new Set<string>() } };
  const asOnCards = (procedure: Procedure) => cardProcedure(procedure, car, critical, said);
  const chosen = (ids: readonly string[]) =>
    ids.flatMap((id) => procedures.filter((procedure) => procedure.id === id));
  return {
    driven: [
      ...handledFromSeat(
        world,
        ({ kind, id }) => kind === 'control' || kind === 'lock' || driving.includes(id),
      ),
      ...handledFromSeat(world, ({ drive }) => drive === 'hand'),
    ],
    valves: handledFromSeat(world, ({ kind, id }) => kind === 'valve' && !driving.includes(id)),
    // the level is told wherever it is read: nobody drives without it
    gauges: handledFromSeat(
      world,
      (part) => part.kind === 'gauge',
      car.spec.boiler.level.flatMap(({ gauge, when }) => (when === 'cold' ? [] : [gauge])),
    ),
    extinguishers: Object.values(car.spec.equipment).flatMap(({ kind, name, place }) =>
      kind === 'extinguisher' ? [{ name, placeName: car.places.get(place)?.name ?? '' }] : [],
    ),
    // a boiler with a level, and what is known of it cold
    coldest: boiler['working-level-cold'] ?? boiler['working-level'],
    highestCold: boiler['highest-level-cold'] ?? '',
    blownGlass: blownGlass(world.car),
    blownBy: procedures.find(({ id }) => id === blownIn)?.title ?? '',
    blownOn:
      plans.cards.find((card) =>
        procedures.some((procedure) => procedure.id === blownIn && standsOn(card, procedure)),
      )?.title ?? '',
    firstCard: plans.cards[0]?.title ?? '',
    hurts: hurts.flatMap((id) => cautions.get(id) ?? []).slice(0, hurtsPrinted),
    stop: chosen([stop]).map((procedure) =>
      cardProcedure(procedure, car, critical, nothingSaidInTrouble(car)),
    ),
    people: peopleBack(world),
    start: chosen(start).map(asOnCards),
    // what is reached from the seat is told on side one
    places: placesOnCard(
      chosen(start).flatMap((procedure) => cardSteps(procedure, critical)),
      car,
    ).filter(({ reach }) => reach !== 'seated'),
  };
}

/** The glass of the level, if it can be blown through: whoever takes a car over warm has not seen that done. */
function blownGlass(car: World['car']): string {
  const [glass = ''] = duties['level-glass']?.parts(car) ?? [];
  return duties['glass-drain']?.parts(car).length === 0 ? '' : (car.parts.get(glass)?.name ?? '');
}

/** Every caution that the papers of this car hold. */
function cautionsById({ front, proof }: World): ReadonlyMap<string, Caution> {
  const all = [
    ...front.cautions,
    ...proof.procedures.flatMap(({ cautions, steps }) => [
      ...cautions,
      ...steps.flatMap((step) => step.cautions),
    ]),
  ];
  return new Map(all.map((caution) => [caution.id, caution]));
}

/** Parts at places reached from the seat, and some wherever they are, in the order of the spec. */
function handledFromSeat(
  { car, phrases: both }: World,
  wanted: (part: PartContext) => boolean,
  anywhere: readonly string[] = [],
): readonly Handled[] {
  // room is scarce on one sheet, so that the first units have to do
  const phrases: Phrases = { ...both, both: both.first };
  const levels = new Set(car.spec.boiler.level.map(({ gauge }) => gauge));
  const shared = sharedPlaces(car);
  return [...car.parts.values()].flatMap((part) => {
    const place = car.places.get(part.place ?? '');
    const elsewhere = place?.reach !== 'seated';
    if (place === undefined || (elsewhere && !anywhere.includes(part.id))) return [];
    const context = partContext(part, car, phrases);
    const lowest = context.reads === 'level' && levels.has(part.id) ? car.spec.boiler['lowest-level'] : '';
    const feel = part.kind === 'valve' && shared.has(place.name) ? feelOf(part.id, car) : '';
    return wanted(context) ? [{ ...context, placeName: place.name, elsewhere, lowest, feel }] : [];
  });
}
