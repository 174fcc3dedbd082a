/**
 * The way out: from every step of every procedure, before it, half done and done, the emergency sequence is stepped
 * through, and what a driver reaches from the seat must be enough to make the car safe.
 */
import type { Car, PartId } from '../car/car';
import type { Procedure, Step } from '../procedure/procedure';
import type { Chain } from './chain';
import type { Experience } from './experience';
import type { Flows } from './flows';
import { halfDone, type WhenInStep } from './halfDone';
import type { Model } from './model';
import { withinReach } from './rules/onePlaceAtOnce';
import { at, isLit, lettersOf, of, type State } from './state';
import type { Moment } from './trace';
import { motion, no, shut } from './values';

/** A step from which the sequence does not make the car safe. */
export interface NoWayOut {
  readonly procedure: Procedure;
  readonly step: Step;
  readonly when: WhenInStep;
  /** What is still so at the end. */
  readonly what: string;
}

/** A step from which the first act of the sequence is out of reach of whoever does the step. */
export interface FarFirstAct {
  readonly procedure: Procedure;
  readonly step: Step;
  readonly act: Step;
  /** Straight distance from where the driver is to the place of the act, in metres. */
  readonly distanceM: number;
}

/** What was found about the way out. */
export interface Escape {
  /** Situations from which it was tried: a state, with the place of the driver in it. */
  readonly tried: number;
  /** Those of them that are safe as they are. */
  readonly safeAlready: number;
  /** The most acts that change anything, and where that is needed. */
  readonly longest:
    | { readonly acts: readonly Step[]; readonly from: Step; readonly procedure: Procedure }
    | undefined;
  readonly failures: readonly NoWayOut[];
  readonly far: readonly FarFirstAct[];
}

/**
 * Why a state is not safe, a clause; nothing if it is: no burner burns, no burner is fed, the throttle is shut, the car stands.
 * A burner that burns on with its fuel shut is out of anybody’s reach; that it is waited for, and from where, is for the whole of
 * the sequence, which has to leave no flame.
 */
export function unsafe(model: Model, flows: Flows, state: State): string | undefined {
  const name = (id: PartId) => model.car.parts.get(id)?.name ?? id;
  const burning = model.burners.find((id) => isLit(model, state, id));
  if (burning !== undefined) return `the ${name(burning)} still burns`;
  const fed = flows.fed(state)[0];
  if (fed !== undefined) return `fuel still comes to the ${name(fed)}`;
  const { throttle } = model.car.spec.engine;
  if (of(state, model.slots.valve, throttle) !== shut) return `the ${name(throttle)} is open`;
  return at(state, model.slots.motion) === motion.standing ? undefined : 'the car still moves';
}

/** The steps of a procedure that are done without leaving the seat: the part of the way out that must be enough. */
export function seatedSteps(car: Car, { steps }: Procedure): readonly Step[] {
  return steps.filter((step) => {
    const place = step.place === undefined ? undefined : car.places.get(step.place);
    return place === undefined || place.reach === 'seated';
  });
}

/** Try the way out from every situation of a day. */
export function wayOutOf(experience: Experience, day: Chain, wayOut: Procedure): Escape {
  const search = new Search(experience, wayOut);
  for (const run of day.runs) for (const moment of run.trace.moments) search.tryMoment(run.procedure, moment);
  return search.result();
}

interface Sequence {
  readonly acts: readonly Step[];
  readonly left: string | undefined;
}

class Search {
  private readonly model: Model;
  private readonly known = new Map<string, Sequence | 'safe'>();
  /** The state after a step is the state before the next. */
  private readonly knownOf = new WeakMap<State, Sequence | 'safe'>();
  /** What the sequence can depend on: the bytes that decide what flows, and these. */
  private readonly deciding: readonly number[];
  private readonly failures: NoWayOut[] = [];
  private readonly far = new Map<string, FarFirstAct>();
  private longest: Escape['longest'];
  private tried = 0;
  private safeAlready = 0;
  private readonly seatSteps: readonly Step[];
  private readonly failed = new Set<string>();

  constructor(
    private readonly experience: Experience,
    wayOut: Procedure,
  ) {
    const { model } = experience;
    this.model = model;
    const { flame, control, lock } = model.slots;
    this.deciding = [...flame.values(), ...control.values(), ...lock.values()];
    this.seatSteps = seatedSteps(model.car, wayOut);
  }

  tryMoment(procedure: Procedure, moment: Moment): void {
    this.tryState(procedure, moment, 'before', moment.before);
    const half = halfDone(this.model, moment);
    if (half !== undefined) this.tryState(procedure, moment, 'half done', half);
    this.tryState(procedure, moment, 'done', moment.after);
  }

  result(): Escape {
    return {
      tried: this.tried,
      safeAlready: this.safeAlready,
      longest: this.longest,
      failures: this.failures,
      far: [...this.far.values()],
    };
  }

  private tryState(procedure: Procedure, { step }: Moment, when: WhenInStep, state: State): void {
    this.tried += 1;
    const sequence = this.sequenceFrom(state);
    if (sequence === 'safe') {
      this.safeAlready += 1;
      return;
    }
    if (sequence.left !== undefined) this.fail(procedure, step, when, sequence.left);
    if (sequence.acts.length > (this.longest?.acts.length ?? 0))
      this.longest = { acts: sequence.acts, from: step, procedure };
    const first = sequence.acts[0];
    if (first !== undefined) this.measure(procedure, step, state, first);
  }

  private fail(procedure: Procedure, step: Step, when: WhenInStep, what: string): void {
    const key = `${procedure.id} ${step.id} ${when}`;
    if (this.failed.has(key)) return;
    this.failed.add(key);
    this.failures.push({ procedure, step, when, what });
  }

  /** The acts that change something, from the seat, in a state; remembered by what the sequence can depend on. */
  private sequenceFrom(state: State): Sequence | 'safe' {
    const found = this.knownOf.get(state) ?? this.sequenceLike(state);
    this.knownOf.set(state, found);
    return found;
  }

  private sequenceLike(state: State): Sequence | 'safe' {
    const { model } = this;
    const flow = state.bytes.subarray(0, model.flowSize);
    const key = lettersOf(flow) + lettersOf(this.deciding.map((slot) => at(state, slot)));
    const known = this.known.get(key);
    if (known !== undefined) return known;
    const found = this.isUnsafe(state) === undefined ? 'safe' : this.step(state);
    this.known.set(key, found);
    return found;
  }

  private step(start: State): Sequence {
    const acts: Step[] = [];
    let state = start;
    for (const step of this.seatSteps) {
      if (this.isUnsafe(state) === undefined) break;
      const { after } = this.experience.do(state, step);
      if (changes(this.model, state, after)) acts.push(step);
      state = after;
    }
    return { acts, left: this.isUnsafe(state) };
  }

  private isUnsafe(state: State): string | undefined {
    return unsafe(this.model, this.experience.flows, state);
  }

  private measure(procedure: Procedure, step: Step, state: State, act: Step): void {
    const { model } = this;
    const seated = at(state, model.slots.seat) !== no;
    const here = seated
      ? undefined
      : model.car.places.get(model.places[at(state, model.slots.driverAt) - 1] ?? '');
    const there = model.car.places.get(act.place ?? '');
    if (there === undefined || (seated && there.reach === 'seated') || (!seated && here === undefined))
      return;
    if (here !== undefined && withinReach(here, there)) return;
    const key = `${procedure.id} ${step.id}`;
    const distanceM =
      here === undefined ? 0 : Math.hypot(here.backM - there.backM, here.rightM - there.rightM);
    if (!this.far.has(key)) this.far.set(key, { procedure, step, act, distanceM });
  }
}

/** Whether an act changed anything that can be touched, beyond where people are. */
function changes(model: Model, before: State, after: State): boolean {
  const { slots } = model;
  for (let index = 0; index < model.factsFrom; index += 1) {
    if (
      at(before, index) !== at(after, index) &&
      index !== slots.driverAt &&
      index !== slots.helperAt &&
      index !== slots.seat
    )
      return true;
  }
  return false;
}
