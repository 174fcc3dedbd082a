/** The places of a card's parts as a list in which a tag that a step names is found at once. */
import type { Car, PartId } from '../../car/car';
import { feelOf, handlingOf, sharedPlaces } from './feel';
import { byAlphabet } from './partIndex';
import { type PlaceOnCard, taggedParts } from './placesSaid';

/** One line: parts that are found together, by their tags or their names. */
export interface PlaceRow {
  readonly parts: readonly string[];
  /** Where they are; for a tank that is filled elsewhere, both places. */
  readonly places: readonly string[];
}

/** What has a tag, in the order of the tags; what has none, place by place as it is needed. */
export interface PlaceList {
  readonly tagged: readonly PlaceRow[];
  readonly named: readonly PlaceRow[];
}

/** In so few lines a tag is found whatever stands before it in its line. */
const atAGlance = 8;

/**
 * How a list says how a hand tells a part from its neighbours: `apart`, on a line of its own, with how it is worked; `together`, behind
 * the place that it shares, and nothing where it stands alone.
 */
export type ByFeel = 'apart' | 'together' | 'not';

/**
 * The list of these places; `byFeel`, with how a hand tells each from its neighbours. Tags that share a place share a line, where
 * that makes a short list; in a longer one only those of one letter do, so that a tag stands where its letter leads the eye. `fillerAt`
 * says that a place is where a tank is filled, and not where it stands.
 */
export function listOfPlaces(
  places: readonly PlaceOnCard[],
  car: Car,
  {
    byFeel = 'not',
    fillerAt = (place) => place,
  }: { readonly byFeel?: ByFeel; readonly fillerAt?: (place: string) => string } = {},
): PlaceList {
  const feels = byFeel === 'apart' ? feelByPart(car, handlingOf) : new Map<string, string>();
  const behind = byFeel === 'together' ? withFeels(car) : (row: PlaceRow) => row;
  const covered = byFeel === 'apart' ? coveredValves(car) : new Map<string, string>();
  const placeWords = (place: string, part: string) => {
    const [first, feel] = [covered.get(part), feels.get(part)];
    const found = first === undefined ? place : `${place} (${first})`;
    return feel === undefined ? found : `${found}: ${feel}`;
  };
  const tags = new Set(taggedParts(car).map(({ tag }) => tag));
  const inOrder = byAlphabet(car);
  const placesOf = new Map<string, string[]>();
  for (const { place, filler = false, parts } of places)
    for (const tag of parts.filter((part) => tags.has(part)))
      placesOf.set(tag, [...(placesOf.get(tag) ?? []), placeWords(filler ? fillerAt(place) : place, tag)]);
  const ordered = [...placesOf].sort(([one], [other]) => inOrder(one, other));
  const byPlace = gathered(ordered, () => '').map(behind);
  const named = places.flatMap(({ place, parts }) =>
    gathered(
      parts.filter((part) => !tags.has(part)).map((part) => [part, [placeWords(place, part)]] as const),
      () => '',
    ).map(behind),
  );
  return {
    tagged:
      byPlace.length <= atAGlance
        ? byPlace
        : gathered(ordered, letterOf)
            .flatMap(byFeel === 'apart' ? inNarrowColumn : (row) => [row])
            .map(behind),
    named,
  };
}

/** With more tags in a line than this their column takes the room in which most lines say how a part feels. */
const mostBeside = 2;

/** A line of many tags in several of few. */
function inNarrowColumn({ parts, places }: PlaceRow): readonly PlaceRow[] {
  const lines = Math.ceil(parts.length / mostBeside);
  return Array.from({ length: lines }, (_, at) => ({
    parts: parts.slice(at * mostBeside, (at + 1) * mostBeside),
    places,
  }));
}

/** Puts behind the place of a line, if others are worked there, how each of its parts feels. */
function withFeels(car: Car): (row: PlaceRow) => PlaceRow {
  const feels = feelByPart(car, feelOf);
  const shared = sharedPlaces(car);
  return (row) => {
    const told = row.parts.flatMap((part) => {
      const feel = feels.get(part);
      if (feel === undefined) return [];
      return [row.parts.length === 1 ? feel : `${part}, ${feel}`];
    });
    if (told.length === 0) return row;
    return {
      ...row,
      places: row.places.map((place) => (shared.has(place) ? `${place}: ${told.join('; ')}` : place)),
    };
  };
}

/** What is opened or lifted before a hand gets at a valve, by the valve’s tag. */
function coveredValves({ spec, places }: Car): ReadonlyMap<string, string> {
  return new Map(
    Object.values(spec.valves).flatMap(({ tag, place }) => {
      const how = places.get(place)?.how;
      return how === undefined ? [] : [[tag, how] as const];
    }),
  );
}

/** How parts feel, by the tag or the name that a list has for them; `lockOf` tells of a lock. */
function feelByPart(car: Car, lockOf: (id: PartId, car: Car) => string): ReadonlyMap<string, string> {
  return new Map(
    [...car.parts.values()].flatMap(({ id, tag, name }) => {
      // what nobody finds out by trying: how a lock goes on, or a brake that stays on
      const isSet = id in car.spec.locks || car.spec.controls[id]?.kind === 'parking-brake';
      const feel = isSet ? lockOf(id, car) : feelOf(id, car);
      return feel === '' ? [] : [[tag ?? name, feel] as const];
    }),
  );
}

/** Lines of the tags that agree in place and in what `groupOf` gives, in the order of the first of each. */
function gathered(
  ordered: Iterable<readonly [tag: string, places: readonly string[]]>,
  groupOf: (tag: string) => string,
): readonly PlaceRow[] {
  const rows = new Map<string, { parts: string[]; places: readonly string[] }>();
  for (const [tag, places] of ordered) {
    const key = [groupOf(tag), ...places].join('\n');
    const row = rows.get(key);
    if (row === undefined) rows.set(key, { parts: [tag], places });
    else row.parts.push(tag);
  }
  return [...rows.values()];
}

/** A tag without its number. */
function letterOf(tag: string): string {
  return tag.replace(/\d+$/, '');
}
