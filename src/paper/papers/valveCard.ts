/** The valve-position card: how every valve stands at the end of each part of the day. */
import { identityContext } from '../context/identity';
import { byAlphabet } from '../context/partIndex';
import { listOfPlaces } from '../context/placeList';
import type { PlaceOnCard } from '../context/placesSaid';
import { type ValveTableContext, valveTableContext } from '../context/proof';
import type { Paper, World } from '../paper';
import type { PaperTitle } from '../plans';
import { asLapSheet } from '../ways';

/** A car with very many valves takes a few faces. */
const mostFaces = 6;

/** The valve-position card, read in the hand. */
export const valveCard = ({ title, what }: PaperTitle): Paper => ({
  name: 'card-valve-positions',
  title,
  what,
  template: 'valve-card',
  context: (world) => ({
    car: identityContext(world.car.spec, world.phrases),
    card: { title },
    table: inOrderOfTags(valveTableContext(world, title, world.plans['valve-card']), world),
    where: { placed: true, places: listOfPlaces(placesOfValves(world), world.car, { byFeel: 'together' }) },
  }),
  drawings: () => [],
  ...asLapSheet(title, { mostFaces, growTo: 1, lies: 'landscape' }),
});

/** The rows in the order of the list of places below them, so that a tag stands at the same height in both. */
function inOrderOfTags(table: ValveTableContext, { car }: World): ValveTableContext {
  const inOrder = byAlphabet(car);
  // what has no tag comes last, in the order of the car
  const key = ({ tag }: ValveTableContext['rows'][number]) => (tag === '' ? '\uffff' : tag);
  return { ...table, rows: [...table.rows].sort((one, other) => inOrder(key(one), key(other))) };
}

/** Every place where a valve is, with the valves there. */
function placesOfValves({ car }: World): readonly PlaceOnCard[] {
  const valves = [...car.parts.values()].filter(({ kind }) => kind === 'valve');
  return [...car.places].flatMap(([key, { name, reach }]) => {
    const there = valves.filter(({ place }) => place === key);
    return there.length === 0
      ? []
      : [{ place: name, reach, parts: there.map((valve) => valve.tag ?? valve.name) }];
  });
}
