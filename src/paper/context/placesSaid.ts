/**
 * Where the parts are that a card names: listed once on the card, by place; and in trouble, where nobody turns a card
 * over, beside the name of whatever is not reached from the seat: `the pilot tank valve (P1, left running board)`.
 */
import type { Car, PartId, Place } from '../../car/car';
import type { Procedure, Step } from '../../procedure/procedure';
import { mentions } from '../pieces';
import type { OtherCards } from './cardsSaid';

/** What a card has said already, so that it need not say it again. */
export interface SaidOnCard {
  /** Keys of cautions that were said in their dozen words. */
  readonly cautions: Set<string>;
  /** Parts whose place was told or is not to be told beside their names; left out where no place is. */
  readonly places?: Set<PartId>;
  /** What other cards hold; left out where nothing is told of them. */
  readonly cards?: OtherCards;
}

/** A card that has said nothing yet, and has a list of places. */
export function nothingSaid(): SaidOnCard {
  return { cautions: new Set() };
}

/** A card for trouble that has said nothing yet: it tells the places that are not reached from the seat. */
export function nothingSaidInTrouble(car: Car): SaidOnCard {
  return { cautions: new Set(), places: new Set([...car.parts.keys()].filter((id) => isSeated(id, car))) };
}

function isSeated(id: PartId, car: Car): boolean {
  return car.places.get(workedAt(id, car) ?? '')?.reach === 'seated';
}

/** Where a hand goes to work a part: to the switch of a pump or a blower that has one, else to the part. */
function workedAt(id: PartId, car: Car): string | undefined {
  return car.parts.get(car.spec.pumps[id]?.['switched-by'] ?? id)?.place;
}

/** One place and the parts there that a card names, by their tags or, without one, by their names. */
export interface PlaceOnCard {
  readonly place: string;
  /** It is where tanks are filled that stand elsewhere. */
  readonly filler?: boolean;
  /** How it is reached. */
  readonly reach: Place['reach'];
  readonly parts: readonly string[];
}

/** Words that name parts: a step, or a rule for standing by. */
export type Naming = Pick<Step, 'say' | 'result' | 'part' | 'place'>;

/** What stands over the steps of a procedure on its card: by what it is known, and what is never done. */
export function namingAbove({ seen, never }: Pick<Procedure, 'seen' | 'never'>): Naming {
  return { say: [seen, ...never].join(' '), result: '' };
}

/** The places of all parts that these steps name, in the order in which they are needed. */
export function placesOnCard(steps: readonly Naming[], car: Car): readonly PlaceOnCard[] {
  const namedIn = taggedNamed(car);
  const at = new Map<
    string,
    { readonly key: string; readonly filler: boolean; readonly parts: Set<string> }
  >();
  for (const step of steps) {
    const words = `${step.say} ${step.result}`;
    const named = namedIn(words);
    const beside = namedUntagged(words, car).filter((id) => id !== step.part);
    for (const id of [...(step.part === undefined ? [] : [step.part]), ...named, ...beside]) {
      const part = car.parts.get(id);
      const key = placeKey(id, step, car);
      if (part === undefined || key === undefined || !(named.includes(id) || words.includes(part.name)))
        continue;
      // nobody looks for the boiler, and the place it is told by is that of what sits on it
      if (part.kind === 'boiler') continue;
      const filler = key !== workedAt(id, car);
      const row = at.get(`${filler} ${key}`) ?? { key, filler, parts: new Set() };
      at.set(`${filler} ${key}`, row);
      row.parts.add(part.tag ?? part.name);
    }
  }
  return [...at.values()].flatMap(({ key, filler, parts }) => {
    const place = car.places.get(key);
    return place === undefined ? [] : [{ place: place.name, filler, reach: place.reach, parts: [...parts] }];
  });
}

/**
 * The parts with tags that a text names: by the tag, or by a whole name that no other part has, as what a trouble is known by does
 * (“the steam gauge above 600 psi”).
 */
function taggedNamed(car: Car): (words: string) => readonly PartId[] {
  const names = [...car.parts.values()].map(({ name }) => name);
  const own = new Set(
    names.filter((name, index) => names.indexOf(name) === index && names.lastIndexOf(name) === index),
  );
  const tagged = taggedParts(car).map(({ id, tag }) => ({ id, tag, name: car.parts.get(id)?.name ?? '' }));
  return (words) => {
    const whole = new Set(mentions(words, names).map(({ name }) => name));
    return tagged
      .filter(({ tag, name }) => words.includes(`(${tag})`) || (own.has(name) && whole.has(name)))
      .map(({ id }) => id);
  };
}

/** What is kept or worked without a tag and named in a text, such as gloves beside the extinguisher of a step. */
function namedUntagged(words: string, car: Car): readonly PartId[] {
  const found = [...car.parts.values()].filter(
    ({ kind, tag, name }) =>
      (kind === 'equipment' || kind === 'control') && tag === undefined && words.includes(name),
  );
  // a name within a longer one that is named is not named itself
  return found
    .filter(({ name }) => !found.some((other) => other.name !== name && other.name.includes(name)))
    .map(({ id }) => id);
}

/** A text of a step with the places of the parts that it is the first to name. They are noted in `told`. */
export function withPlaces(text: string, step: Step, car: Car, told: Set<PartId>): string {
  const tagged = taggedParts(car).reduce((words, { id, tag }) => {
    const place = placeOf(id, step, car);
    if (place === undefined || told.has(id) || !words.includes(`(${tag})`)) return words;
    told.add(id);
    return words.replace(`(${tag})`, `(${tag}, ${place})`);
  }, text);
  const part = car.parts.get(step.part ?? '');
  if (part === undefined || part.tag !== undefined || told.has(part.id)) return tagged;
  const place = placeOf(part.id, step, car);
  const at = nameEndsAt(tagged, part.name);
  if (place === undefined || at === undefined) return tagged;
  told.add(part.id);
  return `${tagged.slice(0, at)} (${place})${tagged.slice(at)}`;
}

/** The parts of a car that have tags. */
export function taggedParts(car: Car): readonly { readonly id: PartId; readonly tag: string }[] {
  return [...car.parts.values()].flatMap(({ id, tag }) => (tag === undefined ? [] : [{ id, tag }]));
}

/** Where a hand goes for a part in this step: to the filler of a tank, if it is done there, else where the part is worked. */
function placeKey(id: PartId, step: Naming, car: Car): string | undefined {
  const filler = id === step.part ? car.spec.tanks[id]?.filler.place : undefined;
  return filler !== undefined && step.place === filler ? filler : workedAt(id, car);
}

function placeOf(id: PartId, step: Step, car: Car): string | undefined {
  return car.places.get(placeKey(id, step, car) ?? '')?.name;
}

/** Where the first whole mention of a name ends; not one that is the owner of something, or goes on as a longer word. */
function nameEndsAt(text: string, name: string): number | undefined {
  for (let at = text.indexOf(name); at >= 0; at = text.indexOf(name, at + 1)) {
    const end = at + name.length;
    if (!/[\p{L}\p{N}]/u.test(text[at - 1] ?? ' ') && !/[\p{L}\p{N}’']/u.test(text[end] ?? ' ')) return end;
  }
  return undefined;
}
