/** What is live in a state, worked out once for every way the valves, pumps, tanks and boiler can stand. */
import type { PartId } from '../car/car';
import { carrying, carryingFuel, isReached, live, type PipeFilter, type Standing } from '../car/flow';
import type { Model } from './model';
import { at, lettersOf, Notes, of, State } from './state';
import { content, level, motion, no, shut, steam } from './values';

/** What flows from its sources: fuel of either kind from every tank that is not empty, water likewise, steam from the boiler. */
export type Stream = 'fuel' | 'water' | 'steam';

const pipesOf: Readonly<Record<Stream | 'air', PipeFilter>> = {
  fuel: carryingFuel,
  water: carrying('water'),
  steam: carrying('steam', 'exhaust'),
  air: carrying('air'),
};

/** An answer, and the bytes it was worked out from. */
interface Answer<T> {
  readonly is: T;
  readonly asked: readonly number[];
}

/** The answers for one way in which everything stands, each worked out when it is first asked for. */
interface Known {
  readonly bytes: Uint8Array;
  fed?: Answer<readonly PartId[]>;
  pipes?: Answer<ReadonlySet<number>>;
  readonly reaches: Map<string, Answer<boolean>>;
}

/** How many of the last answers are looked through first. */
const remembered = 4;

function sameStart(a: Uint8Array, b: Uint8Array, size: number): boolean {
  for (let index = 0; index < size; index += 1) if (a[index] !== b[index]) return false;
  return true;
}

/**
 * Answers about flow, remembered by the bytes they depend on.
 *
 * Devices that shut by themselves are never relied on: automatics and cut-offs are taken to pass, check valves to pass
 * forward; relief and safety valves are taken to be shut.
 */
export class Flows {
  private readonly known = new Map<string, Known>();
  /** The answers given last, newest first; most questions repeat one of them. */
  private readonly recent: Known[] = [];
  private readonly passing: ReadonlySet<PartId>;

  constructor(private readonly model: Model) {
    this.passing = new Set(
      Object.entries(model.car.spec.devices).flatMap(([id, device]) =>
        device.kind === 'relief-valve' || device.kind === 'safety-valve' ? [] : [id],
      ),
    );
  }

  /** Burners that fuel reaches. */
  fed(state: State): readonly PartId[] {
    const { car, burners } = this.model;
    const known = this.of(state);
    known.fed ??= this.work(known.bytes, 'fuel', (standing) =>
      burners.filter((id) => isReached(car, standing, id, carryingFuel)),
    );
    return told(state, known.fed);
  }

  /** Lengths of pipe that fuel reaches, by their indices. */
  fuelPipes(state: State): ReadonlySet<number> {
    const { car, fuelTanks } = this.model;
    const known = this.of(state);
    known.pipes ??= this.work(known.bytes, 'fuel', (standing) => {
      const sources = new Set(fuelTanks.filter((id) => standing.sources.has(id)));
      return live(car, { ...standing, sources }, carryingFuel).pipes;
    });
    return told(state, known.pipes);
  }

  /** Whether a stream reaches a part. */
  reaches(stream: Stream, part: PartId, state: State): boolean {
    const known = this.of(state);
    const key = `${stream} ${part}`;
    const answer =
      known.reaches.get(key) ??
      this.work(known.bytes, stream, (standing) =>
        isReached(this.model.car, standing, part, pipesOf[stream]),
      );
    known.reaches.set(key, answer);
    return told(state, answer);
  }

  /** Whether the way from a pump to a part stands open. */
  leads(pump: PartId, part: PartId, stream: Stream | 'air', state: State): boolean {
    const only = new Set([pump]);
    const standing = { ...this.standing(state, 'fuel'), pumping: only, sources: only };
    return isReached(this.model.car, standing, part, pipesOf[stream]);
  }

  private of({ bytes }: State): Known {
    const size = this.model.flowSize;
    const again = this.recent.find((each) => sameStart(each.bytes, bytes, size));
    if (again !== undefined) return again;
    const start = bytes.slice(0, size);
    const key = lettersOf(start);
    const known = this.known.get(key) ?? { bytes: start, reaches: new Map() };
    this.known.set(key, known);
    this.recent.unshift(known);
    if (this.recent.length > remembered) this.recent.pop();
    return known;
  }

  private work<T>(bytes: Uint8Array, stream: Stream, answer: (standing: Standing) => T): Answer<T> {
    const notes = Notes.empty(this.model.flowSize);
    const is = answer(this.standing(new State(bytes, notes), stream));
    return { is, asked: notes.asked.slots() };
  }

  /** Valves that stand open, devices that pass, pumps that turn. Engine pumps turn while the car moves. */
  private standing(state: State, stream: Stream): Standing {
    const { car, slots } = this.model;
    return {
      open: { has: (id) => of(state, slots.valve, id) !== shut },
      passing: this.passing,
      pumping: {
        has: (id) =>
          of(state, slots.pump, id) !== no ||
          (car.spec.pumps[id]?.drive === 'engine' && at(state, slots.motion) !== motion.standing),
      },
      sources: { has: (id) => this.gives(state, stream, id) },
    };
  }

  /** Whether a stream begins at a part: at a tank that is not empty, at a boiler that has steam to give. */
  private gives(state: State, stream: Stream, id: PartId): boolean {
    const { car, slots } = this.model;
    if (stream === 'steam')
      return (
        id === 'boiler' && at(state, slots.steam) !== steam.none && at(state, slots.level) !== level.empty
      );
    const tank = car.spec.tanks[id];
    return (
      tank !== undefined &&
      (tank.holds === 'water') === (stream === 'water') &&
      of(state, slots.content, id) !== content.empty
    );
  }
}

/** Note for a state that an answer about it was used. */
function told<T>({ notes }: State, { is, asked }: Answer<T>): T {
  if (notes !== undefined)
    asked.forEach((slot) => {
      notes.ask(slot);
    });
  return is;
}
