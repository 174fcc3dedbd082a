/** What is handled and read, by place. Templates say it in words; this gives them the facts, each under its own name. */
import type { Car, Part, PartId, Place } from '../../car/car';
import { burnsOnOf } from '../../spec/burnsOn';
import type { World } from '../paper';
import type { Phrases } from '../phrase';

/** One thing at a place. Every field is there; what does not apply is empty. */
export interface PartContext {
  readonly id: PartId;
  readonly kind: Part['kind'];
  readonly tag: string;
  readonly name: string;
  /** What it does, as the keeper says it. */
  readonly does: string;
  /** Anything to know about it. */
  readonly note: string;
  /** For a valve: the word for which way it opens, turns, how it is parked. */
  readonly opens: string;
  readonly turns: string;
  readonly parked: string;
  /** For a device: where it acts, and how one sees that it works. */
  readonly set: string;
  readonly test: string;
  /** For a gauge: what it reads, of what, and its band. */
  readonly reads: string;
  readonly of: string;
  readonly from: string;
  readonly to: string;
  readonly redLine: string;
  readonly shouldRead: string;
  /** For a lock: what it locks. For a lock or a control: how it is worked. */
  readonly locks: string;
  readonly how: string;
  /** For a tank: what it holds, how much, how it is read, where it is filled. */
  readonly holds: string;
  readonly capacity: string;
  readonly read: string;
  /** For a pump: what it moves and what drives it. */
  readonly moves: string;
  readonly drive: string;
  /** For a burner: main or pilot, and its good flame. */
  readonly job: string;
  readonly goodFlame: string;
}

/** One place with what is there. */
export interface PlaceContext {
  readonly id: string;
  /** Its number on the plan of the car. */
  readonly number: number;
  readonly name: string;
  readonly reach: Place['reach'];
  /** What has to be opened or lifted first; empty if nothing. */
  readonly how: string;
  readonly parts: readonly PartContext[];
  /** What is there too, of which there is nothing to say here: what only stands there, and what is only carried. */
  readonly also: readonly PartContext[];
}

const nothing: Omit<PartContext, 'id' | 'kind' | 'name' | 'tag'> = {
  does: '',
  note: '',
  opens: '',
  turns: '',
  parked: '',
  set: '',
  test: '',
  reads: '',
  of: '',
  from: '',
  to: '',
  redLine: '',
  shouldRead: '',
  locks: '',
  how: '',
  holds: '',
  capacity: '',
  read: '',
  moves: '',
  drive: '',
  job: '',
  goodFlame: '',
};

/** Every place that has something to work, read or fill, numbered from the front of the car to the back. */
export function placesContext(car: Car, phrases: Phrases): readonly PlaceContext[] {
  return placesInOrder(car).map((place, index) => {
    const all = place.parts.flatMap((id) => {
      const part = car.parts.get(id);
      return part === undefined ? [] : [partContext(part, car, phrases)];
    });
    return {
      id: place.id,
      number: index + 1,
      name: place.name,
      reach: place.reach,
      how: place.how ?? '',
      parts: all.filter(saysSomething),
      also: all.filter((part) => !saysSomething(part)),
    };
  });
}

/** Kinds of which a part need have nothing written beside it: what one only needs to know is where it is. */
const onlyThere: ReadonlySet<Part['kind']> = new Set([
  'boiler',
  'engine',
  'superheater',
  'condenser',
  'feed-heater',
  'fitting',
  'control',
  'outside',
]);

/** Whether the table of places has a line for it. What is carried is told in a table of its own. */
function saysSomething({ kind, does, how, note }: PartContext): boolean {
  if (kind === 'equipment') return false;
  return !onlyThere.has(kind) || [does, how, note].some((words) => words !== '');
}

/** Places with something at them, from the front of the car to the back, left before right. */
export function placesInOrder(car: Car): readonly Place[] {
  return [...car.places.values()]
    .filter((place) => place.parts.length > 0)
    .sort((a, b) => a.backM - b.backM || a.rightM - b.rightM);
}

/** Everything a template may say of one part. */
export function partContext(part: Part, car: Car, phrases: Phrases): PartContext {
  return {
    ...nothing,
    id: part.id,
    kind: part.kind,
    name: part.name,
    tag: part.tag ?? '',
    ...(facts[part.kind]?.(part.id, car, phrases) ?? {}),
  };
}

/** A part with the name of its place. */
export type PlacedPart = PartContext & { readonly placeName: string };

/** Every part of one kind, in the order of the spec. */
export function partsOfKind({ car, phrases }: World, kind: PartContext['kind']): readonly PlacedPart[] {
  return [...car.parts.values()]
    .filter((part) => part.kind === kind)
    .map((part) => ({
      ...partContext(part, car, phrases),
      placeName: car.places.get(part.place ?? '')?.name ?? '',
    }));
}

type Facts = (id: PartId, car: Car, phrases: Phrases) => Partial<PartContext>;

const nameOf = (car: Car, id: PartId | undefined) =>
  id === undefined ? '' : (car.parts.get(id)?.name ?? id);

const facts: Partial<Record<Part['kind'], Facts>> = {
  valve: (id, { spec }, phrases) => {
    const valve = spec.valves[id];
    if (valve === undefined) return {};
    return {
      does: valve.does,
      opens: valve.opens,
      parked: valve.parked,
      note: valve.note ?? '',
      turns: valve.turns === undefined ? '' : phrases.first(valve.turns, { fractions: 8 }),
    };
  },
  device: (id, car, phrases) => {
    const device = car.spec.devices[id];
    if (device === undefined) return {};
    const set = device.kind === 'steam-automatic' ? car.spec.boiler['burner-cuts-out'] : device.set;
    const where = [
      ...(set === undefined ? [] : [phrases.both(set)]),
      ...(device['set-temperature'] === undefined ? [] : [phrases.both(device['set-temperature'])]),
    ];
    return { does: device.does, test: device.test ?? '', set: where.join(', ') };
  },
  gauge: (id, car, phrases) => {
    const gauge = car.spec.gauges[id];
    if (gauge === undefined) return {};
    const pressure = (value: typeof gauge.from, rounding: 'up' | 'down') =>
      value === undefined ? '' : phrases.both(value, { rounding });
    return {
      reads: gauge.reads,
      of: nameOf(car, gauge.of),
      from: pressure(gauge.from, 'up'),
      to: pressure(gauge.to, 'down'),
      redLine: pressure(gauge['red-line'], 'down'),
      shouldRead: gauge['should-read'] ?? '',
      note: gauge.note ?? '',
    };
  },
  lock: (id, car) => ({ locks: nameOf(car, car.spec.locks[id]?.locks), how: car.spec.locks[id]?.how ?? '' }),
  control: (id, { spec }) => ({ does: spec.controls[id]?.does ?? '', how: spec.controls[id]?.how ?? '' }),
  tank: (id, { spec }, phrases) => {
    const tank = spec.tanks[id];
    return tank === undefined
      ? {}
      : {
          holds: phrases.contents(tank.holds),
          capacity: phrases.both(tank.capacity, { rounding: 'down' }),
          read: tank.read,
        };
  },
  pump: (id, { spec }) => ({ moves: spec.pumps[id]?.moves ?? '', drive: spec.pumps[id]?.drive ?? '' }),
  burner: (id, { spec }, phrases) => {
    const burner = spec.burners[id];
    const time = burnsOnOf(burner);
    return {
      job: burner?.job ?? '',
      goodFlame: burner?.['good-flame'] ?? '',
      note:
        time === undefined
          ? ''
          : phrases.messages.say('burns-on', { time: phrases.both(time, { rounding: 'up' }) }),
    };
  },
  vaporizer: (id, { spec }) => ({
    note: spec.vaporizers?.[id] === undefined ? '' : spec.vaporizers[id]['hot-when'],
  }),
  equipment: (id, { spec }) => ({ note: spec.equipment[id]?.note ?? '' }),
  fitting: (id, { spec }) => ({ note: spec.fittings?.[id]?.note ?? '' }),
};
