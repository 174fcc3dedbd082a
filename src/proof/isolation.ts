/**
 * What to shut for a leak: for each length of pipe and each part on a line, the fewest and nearest hand valves that cut it
 * from everything that feeds it.
 *
 * A leak is fed from both ends. What stands under pressure beyond it pushes back through pipes, valves and automatics, but
 * not through a check valve or a pump; forward both pass, since neither is meant to hold. Relief and safety valves hold.
 */
import type { Car, PartId, Place } from '../car/car';
import type { Fluid, Pipe } from '../car/plant';
import { cheapestCut } from './minCut';

/** What leaks. */
export type Leak = { readonly pipe: Pipe } | { readonly part: PartId };

/** What to shut for one leak. */
export interface Isolation {
  readonly leak: Leak;
  /** What can feed it: tanks and the boiler. Empty if nothing can, and nothing has to be shut. */
  readonly sources: readonly PartId[];
  /** The fewest valves, the nearest of those; nothing if no valves cut it off. */
  readonly valves: readonly PartId[] | undefined;
  /** The fewest valves that are reached from the seat, if such valves are enough. */
  readonly fromSeat: readonly PartId[] | undefined;
  /** Where no valves cut it off: the fewest that cut off all that can be. */
  readonly partly: readonly PartId[];
  /** What then still feeds it. */
  readonly left: readonly PartId[];
  /** Valves of the first list that somebody has to kneel, lie or open something for. */
  readonly awkward: readonly PartId[];
}

/** One more valve weighs more than any nearness. */
const oneValve = 1e6;

/** Steps towards a valve, counted in lengths of pipe from the leak, at the most. */
const farthest = 1e5;

/** What to shut for a leak anywhere. */
export function isolations(car: Car): readonly Isolation[] {
  const plumbing = new Plumbing(car);
  const pipes = car.plant.pipes.map((pipe) => plumbing.isolate({ pipe }));
  const parts = [...car.parts.values()]
    .filter((part) => canLeak(car, part.id))
    .map((part) => plumbing.isolate({ part: part.id }));
  return [...pipes, ...parts];
}

/** Parts on a line, less the valves, which are what is shut, and the tanks and the boiler, which are what feeds. */
function canLeak(car: Car, id: PartId): boolean {
  const kind = car.parts.get(id)?.kind;
  const onLine = car.plant.into.has(id) || car.plant.out.has(id);
  return onLine && kind !== 'outside' && kind !== 'valve' && !isSource(car, id);
}

function isSource(car: Car, id: PartId): boolean {
  const kind = car.parts.get(id)?.kind;
  return kind === 'tank' || kind === 'boiler';
}

/** How a part passes what is pushed through it. */
function passes(car: Car, id: PartId, way: 'forward' | 'back'): boolean {
  const part = car.parts.get(id);
  if (part?.kind === 'pump') return way === 'forward';
  if (part?.kind === 'outside' || part?.kind === 'burner') return false;
  if (part?.kind !== 'device') return true;
  const kind = car.spec.devices[id]?.kind;
  if (kind === 'relief-valve' || kind === 'safety-valve') return false;
  return kind !== 'check-valve' || way === 'forward';
}

type Edge = readonly [from: number, to: number];

/** A pipe between two nodes, and which way what is in it can be pushed. */
interface Link {
  readonly pipe: Pipe;
  readonly from: number;
  readonly to: number;
  readonly forward: boolean;
  readonly back: boolean;
}

/** The plant as a graph of what can push what: one node for each side of each part, and one more for what leaks. */
class Plumbing {
  /** The part of each node. */
  private readonly ids: readonly PartId[];
  /** The last node of each part. */
  private readonly index: ReadonlyMap<PartId, number>;
  private readonly target: number;
  private readonly links: readonly Link[];

  constructor(private readonly car: Car) {
    const onLines = [...car.parts.keys()].filter((id) => car.plant.into.has(id) || car.plant.out.has(id));
    const sides = onLines.flatMap((id) => sidesOf(car, id).map((fluid) => ({ id, fluid })));
    this.ids = sides.map(({ id }) => id);
    this.index = new Map(this.ids.map((id, node) => [id, node]));
    this.target = this.ids.length;
    const nodes = new Map(sides.map(({ id, fluid }, node) => [sideKey(id, fluid), node]));
    const at = (id: PartId, carries: Fluid) =>
      nodes.get(sideKey(id, carries)) ??
      nodes.get(sideKey(id, drivingSide(carries))) ??
      this.index.get(id) ??
      -1;
    this.links = car.plant.pipes.map((pipe) => ({
      pipe,
      from: at(pipe.from, pipe.carries),
      to: at(pipe.to, pipe.carries),
      forward: gives(car, pipe.from, 'forward'),
      back: gives(car, pipe.to, 'back'),
    }));
  }

  isolate(leak: Leak): Isolation {
    const all = this.edges(leak);
    const into = new Map<number, number[]>();
    for (const [from, to] of all) {
      const known = into.get(to);
      if (known === undefined) into.set(to, [from]);
      else known.push(from);
    }
    const distance = this.distances(into);
    const leads = this.leadingTo(into);
    const edges = all.filter(([, to]) => leads[to] === 1);
    const sources = this.ids.filter((id) => isSource(this.car, id) && distance.has(this.index.get(id) ?? -1));
    const anywhere = () => true;
    const cut = (usable: (place: Place | undefined) => boolean) => this.cut(edges, sources, distance, usable);
    const valves = sources.length === 0 ? [] : cut(anywhere);
    const left =
      valves === undefined
        ? sources.filter((id) => this.cut(edges, [id], distance, anywhere) === undefined)
        : [];
    const others = valves === undefined ? sources.filter((id) => !left.includes(id)) : [];
    const partly = others.length === 0 ? [] : (this.cut(edges, others, distance, anywhere) ?? []);
    const isSeated = (place: Place | undefined) => place?.reach === 'seated';
    // no other choice is left where nothing cuts it off at all, and none is better where the best is at hand
    const isSettled = valves === undefined || valves.every((id) => isSeated(this.placeOf(id)));
    const fromSeat = isSettled ? valves : cut(isSeated);
    const awkward = (valves ?? []).filter((id) =>
      ['opened', 'kneeling', 'under'].includes(this.placeOf(id)?.reach ?? ''),
    );
    return { leak, sources, valves, fromSeat, partly, left, awkward };
  }

  /**
   * Where a part can be pushed from: one node for a part that passes alike both ways. A part that holds one way has an
   * extra node for what comes back to it, which leads nowhere on.
   */
  private edges(leak: Leak): readonly Edge[] {
    const { target } = this;
    const edges: Edge[] = [];
    const oil = this.isOil(leak);
    this.links.forEach(({ pipe, from, to, forward, back }) => {
      if ((pipe.carries === 'oil') !== oil) return;
      const leaks = 'pipe' in leak && leak.pipe.index === pipe.index;
      if (forward) edges.push([from, leaks ? target : to]);
      if (back) edges.push([to, leaks ? target : from]);
    });
    if ('part' in leak) {
      this.ids.forEach((id, node) => {
        if (id === leak.part) edges.push([node, target]);
      });
    }
    return edges;
  }

  /** Oil is pumped drop by drop: it feeds no leak but one of its own line. */
  private isOil(leak: Leak): boolean {
    if ('pipe' in leak) return leak.pipe.carries === 'oil';
    const pipes = [
      ...(this.car.plant.into.get(leak.part) ?? []),
      ...(this.car.plant.out.get(leak.part) ?? []),
    ];
    return pipes.every((pipe) => pipe.carries === 'oil');
  }

  /** Lengths of pipe from each part to the leak, against the way it is fed; `into` is what leads to each node. */
  private distances(into: ReadonlyMap<number, readonly number[]>): ReadonlyMap<number, number> {
    const distance = new Map([[this.target, 0]]);
    const queue = [this.target];
    for (const node of queue) {
      for (const from of into.get(node) ?? []) {
        if (distance.has(from)) continue;
        distance.set(from, (distance.get(node) ?? 0) + 1);
        const id = this.ids[from];
        if (id === undefined || !isSource(this.car, id)) queue.push(from);
      }
    }
    return distance;
  }

  /** The nodes from which the leak can be come to. No cut depends on others, and most of a car is no way to any one leak. */
  private leadingTo(into: ReadonlyMap<number, readonly number[]>): Uint8Array {
    const leads = new Uint8Array(this.target + 1);
    leads[this.target] = 1;
    const queue = [this.target];
    for (const node of queue) {
      for (const from of into.get(node) ?? []) {
        if (leads[from] === 1) continue;
        leads[from] = 1;
        queue.push(from);
      }
    }
    return leads;
  }

  private cut(
    edges: readonly Edge[],
    sources: readonly PartId[],
    distance: ReadonlyMap<number, number>,
    usable: (place: Place | undefined) => boolean,
  ): readonly PartId[] | undefined {
    const cost = [
      ...this.ids.map((id, node) =>
        this.car.parts.get(id)?.kind === 'valve' && usable(this.placeOf(id))
          ? oneValve + Math.min(farthest, distance.get(node) ?? farthest)
          : Number.POSITIVE_INFINITY,
      ),
      Number.POSITIVE_INFINITY,
    ];
    const found = cheapestCut({
      nodes: this.ids.length + 1,
      edges,
      sources: sources.map((id) => this.index.get(id) ?? 0),
      targets: [this.target],
      cost,
    });
    return found?.flatMap((node) => this.ids[node] ?? []);
  }

  private placeOf(id: PartId): Place | undefined {
    return this.car.places.get(this.car.parts.get(id)?.place ?? '');
  }
}

/**
 * What is kept apart in a part. Where two fluids each come in and go out, as in a feed heater, a wall stands between them
 * and neither feeds the other; so they are in a pump and the steam that drives it. Anywhere else all that comes in can go
 * out, and there is one side with no name.
 */
function sidesOf(car: Car, id: PartId): readonly (Fluid | undefined)[] {
  if (isDrivenBySteam(car, id)) return ['water', 'steam'];
  const into = new Set((car.plant.into.get(id) ?? []).map(({ carries }) => carries));
  const through = new Set(
    (car.plant.out.get(id) ?? []).map(({ carries }) => carries).filter((fluid) => into.has(fluid)),
  );
  return isSource(car, id) || through.size < 2 ? [undefined] : [...through];
}

/** A pump to which its own steam is led. */
function isDrivenBySteam(car: Car, id: PartId): boolean {
  const led = (car.plant.into.get(id) ?? []).some(({ carries }) => carries === 'steam');
  return led && car.spec.pumps[id]?.moves === 'water';
}

/** Used steam leaves by the side that steam comes in at. */
function drivingSide(carries: Fluid): Fluid {
  return carries === 'exhaust' ? 'steam' : carries;
}

function sideKey(id: PartId, fluid: Fluid | undefined): string {
  return fluid === undefined ? id : `${id} ${fluid}`;
}

/** Whether something can come out of a part on that side: from a source, or through it. */
function gives(car: Car, id: PartId, way: 'forward' | 'back'): boolean {
  return isSource(car, id) || passes(car, id, way);
}
