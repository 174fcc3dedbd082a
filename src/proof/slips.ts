/**
 * Slips: a step left out, done twice, done one too early, done to the neighbouring valve; a valve found as it should
 * not stand. Each is stepped on through the rest of its procedure and of the day, beside the day without it.
 *
 * Somebody notices when a step does not go as written although without the slip it does: it cannot be done, it is so
 * already, or what is to be seen is not there. Harm is done when a rule is broken that is not broken without the slip.
 * Which of the two comes first decides; `docs/proof.md` says why.
 */
import type { PartId } from '../car/car';
import type { Procedure, Procedures, Step } from '../procedure/procedure';
import { apply } from './apply';
import type { Chain, Run } from './chain';
import { breachesAt, breachesAtEnd, type RuleBook } from './check';
import type { Day } from './day';
import type { Hitch } from './effects/act';
import type { Flows } from './flows';
import { allKnown } from './knowing';
import { afterNight } from './lapses';
import type { Model } from './model';
import { type Rule, type Seen, ViewOfStep } from './rules/rule';
import { keyOf, type State, same, sameMatter } from './state';
import { type Sequel, sequels } from './usual';
import { open, shut } from './values';

/** The kinds of slip. */
export const slipKinds = [
  'left out',
  'done twice',
  'done too early',
  'done to the neighbour',
  'found wrong',
] as const;

/** One kind of slip. */
export type SlipKind = (typeof slipKinds)[number];

/** One slip. */
export interface Slip {
  readonly kind: SlipKind;
  readonly procedure: Procedure;
  /** The step that is slipped; nothing for a valve found wrong. */
  readonly step: Step | undefined;
  /** The valve that is worked instead, or that was found wrong. */
  readonly valve: PartId | undefined;
}

/** Where something came out. */
export interface Where {
  readonly procedure: Procedure;
  readonly step: Step;
}

/** What comes of a slip. */
export type Outcome =
  | {
      readonly class: 'caught at once' | 'caught later';
      readonly by: Where;
      readonly hitch: Hitch;
      readonly stepsLater: number;
    }
  /** A rule is broken before anybody notices. `blind` if nothing is wrong on the car yet, and somebody acts without knowing. */
  | {
      readonly class: 'critical';
      readonly rule: Rule;
      readonly what: string;
      readonly blind: boolean;
      readonly at: Where;
      readonly stepsLater: number;
    }
  /** Nothing unsafe comes of it. `lasting` if the car still stands otherwise when the day has come round. */
  | { readonly class: 'harmless'; readonly lasting: boolean };

/** A slip tried. */
export interface TriedSlip {
  readonly slip: Slip;
  readonly outcome: Outcome;
}

/** One step of a day to be gone on with; at the end of a procedure, what its end is held against. */
interface Stride {
  readonly procedure: Procedure;
  readonly step: Step;
  readonly last: boolean;
  readonly parked: boolean;
  readonly nightBefore: boolean;
}

/** The day without the slip: the state before each stride, and what goes wrong at it anyway. Worked out as far as it is asked for. */
class Plain {
  private readonly strides: readonly Stride[];
  private readonly done: {
    readonly before: State;
    readonly after: State;
    readonly hitches: readonly Hitch[];
    readonly broken: ReadonlySet<string>;
  }[] = [];
  /** What came of going on from a stride in a state. */
  readonly known = new Map<string, Outcome>();

  constructor(
    private readonly model: Model,
    private readonly flows: Flows,
    private readonly book: RuleBook,
    day: Day,
    private readonly start: State,
    way: readonly Sequel[],
  ) {
    this.strides = way.flatMap(({ procedure, afterNight: night }) =>
      procedure.steps.map(
        (step, index): Stride => ({
          procedure,
          step,
          last: index === procedure.steps.length - 1,
          parked: day.parkedAfter.has(procedure.id),
          nightBefore: night && index === 0,
        }),
      ),
    );
  }

  get length(): number {
    return this.strides.length;
  }

  stride(index: number): Stride {
    const found = this.strides[index];
    if (found === undefined) throw new RangeError(`no stride ${index}`);
    return found;
  }

  before(index: number): State {
    return this.upTo(index).before;
  }

  after(index: number): State {
    return this.upTo(index).after;
  }

  hitches(index: number): readonly Hitch[] {
    return this.upTo(index).hitches;
  }

  broken(index: number): ReadonlySet<string> {
    return this.upTo(index).broken;
  }

  private upTo(index: number): {
    readonly before: State;
    readonly after: State;
    readonly hitches: readonly Hitch[];
    readonly broken: ReadonlySet<string>;
  } {
    for (let next = this.done.length; next <= index; next += 1)
      this.done.push(this.work(this.stride(next), this.done[next - 1]?.after ?? this.start));
    const found = this.done[index];
    if (found === undefined) throw new RangeError(`no stride ${index}`);
    return found;
  }

  private work(stride: Stride, state: State) {
    const { model, flows, book } = this;
    const before = stride.nightBefore ? afterNight(model, state) : state;
    const applied = apply(model, flows, before, stride.step);
    const breaches = breachesAt(model, flows, book, stride.procedure, { step: stride.step, ...applied });
    const ends = stride.last
      ? breachesAtEnd(model, flows, book, stride.procedure, applied.after, stride.parked)
      : [];
    return {
      before,
      after: applied.after,
      hitches: applied.hitches,
      broken: new Set([...breaches, ...ends].map((breach) => breach.rule.id)),
    };
  }
}

/** Try every slip in every procedure of a day; of some kinds only, if they are given. */
export function trySlips(
  model: Model,
  flows: Flows,
  book: RuleBook,
  procedures: Procedures,
  day: Day,
  chain: Chain,
  kinds: ReadonlySet<SlipKind> = new Set(slipKinds),
): readonly TriedSlip[] {
  const trial = new Trial(model, flows, book, day, kinds);
  return procedures.flatMap((procedure) => {
    const run = chain.of.get(procedure.id)?.find((each) => each.brokenOffAt === undefined);
    return run === undefined ? [] : trial.ofProcedure(procedures, run);
  });
}

class Trial {
  constructor(
    private readonly model: Model,
    private readonly flows: Flows,
    private readonly book: RuleBook,
    private readonly day: Day,
    private readonly kinds: ReadonlySet<SlipKind>,
  ) {}

  ofProcedure(procedures: Procedures, run: Run): readonly TriedSlip[] {
    const { procedure } = run;
    const ways = sequels(procedures, this.day, procedure);
    const plains = (ways.length === 0 ? [[]] : ways).map(
      (way) =>
        new Plain(this.model, this.flows, this.book, this.day, run.trace.start, [
          { procedure, afterNight: false },
          ...way,
        ]),
    );
    const worst = (slip: Slip, from: (plain: Plain) => Outcome): TriedSlip => ({
      slip,
      outcome: plains.map(from).reduce(worse),
    });
    const slips: TriedSlip[] = [];
    procedure.steps.forEach((step, index) => {
      const slip = (kind: SlipKind, valve?: PartId): Slip => ({ kind, procedure, step, valve });
      const trying = (kind: SlipKind) => this.kinds.has(kind);
      if (trying('left out')) slips.push(worst(slip('left out'), (plain) => this.leaveOut(plain, index)));
      if (trying('done twice') && step.action !== 'write')
        slips.push(worst(slip('done twice'), (plain) => this.doTwice(plain, index)));
      if (trying('done too early') && index > 0)
        slips.push(worst(slip('done too early'), (plain) => this.doEarly(plain, index)));
      for (const valve of trying('done to the neighbour') ? this.neighbours(step) : [])
        slips.push(
          worst(slip('done to the neighbour', valve), (plain) => this.doToOther(plain, index, valve)),
        );
    });
    const morning = run.follows === undefined || this.day.nightAfter.has(run.follows.procedure.id);
    if (morning && this.kinds.has('found wrong')) slips.push(...this.foundWrong(procedure, worst));
    return slips;
  }

  /** Other valves at the same place, for a step that works a valve. */
  private neighbours(step: Step): readonly PartId[] {
    if (step.part === undefined || !this.model.slots.valve.has(step.part)) return [];
    if (step.action !== 'open' && step.action !== 'shut' && step.action !== 'crack') return [];
    const here = this.model.car.places.get(this.model.car.parts.get(step.part)?.place ?? '');
    return (here?.parts ?? []).filter((id) => id !== step.part && this.model.slots.valve.has(id));
  }

  private foundWrong(
    procedure: Procedure,
    worst: (slip: Slip, from: (plain: Plain) => Outcome) => TriedSlip,
  ): readonly TriedSlip[] {
    return [...this.model.slots.valve].map(([valve, slot]) =>
      worst({ kind: 'found wrong', procedure, step: undefined, valve }, (plain) => {
        const start = plain.before(0).slice();
        start[slot] = start[slot] === shut ? open : shut;
        return this.goOn(plain, 0, start, 0);
      }),
    );
  }

  private leaveOut(plain: Plain, index: number): Outcome {
    return (
      this.endOr(plain, index, plain.before(index), 0) ?? this.goOn(plain, index + 1, plain.before(index), 0)
    );
  }

  private doTwice(plain: Plain, index: number): Outcome {
    const stride = plain.stride(index);
    const again = this.stride(plain, index, plain.after(index), stride.step, 0);
    return again.outcome ?? this.goOn(plain, index + 1, again.state, 1);
  }

  private doEarly(plain: Plain, index: number): Outcome {
    const early = this.stride(plain, index, plain.before(index - 1), plain.stride(index).step, 0);
    if (early.outcome !== undefined) return early.outcome;
    const late = this.stride(plain, index - 1, early.state, plain.stride(index - 1).step, 1);
    return (
      late.outcome ?? this.endOr(plain, index, late.state, 1) ?? this.goOn(plain, index + 1, late.state, 2)
    );
  }

  private doToOther(plain: Plain, index: number, valve: PartId): Outcome {
    const { step } = plain.stride(index);
    const done = this.stride(plain, index, plain.before(index), { ...step, part: valve }, 0);
    return (
      done.outcome ?? this.endOr(plain, index, done.state, 0) ?? this.goOn(plain, index + 1, done.state, 1)
    );
  }

  /** Go on from a stride in a state that may differ from the plain one, until something comes of it. */
  private goOn(plain: Plain, from: number, start: State, later: number): Outcome {
    const passed: string[] = [];
    let state = start;
    let outcome: Outcome | undefined;
    for (let index = from; outcome === undefined && index < plain.length; index += 1) {
      const stride = plain.stride(index);
      if (stride.nightBefore) state = afterNight(this.model, state);
      if (same(state, plain.before(index))) outcome = { class: 'harmless', lasting: false };
      else {
        const key = stride.last || index === from ? `${index} ${keyOf(state)}` : undefined;
        const known = key === undefined ? undefined : plain.known.get(key);
        if (key !== undefined) passed.push(key);
        const done: { readonly state: State; readonly outcome?: Outcome } =
          known === undefined
            ? this.stride(plain, index, state, stride.step, index)
            : { state, outcome: known };
        outcome = done.outcome ?? this.endOr(plain, index, done.state, index);
        state = done.state;
      }
    }
    const found = outcome ?? {
      class: 'harmless',
      lasting: plain.length > 0 && !sameMatter(this.model, state, plain.after(plain.length - 1)),
    };
    for (const key of passed) plain.known.set(key, found);
    return since(found, from - later);
  }

  /**
   * Do one stride. What is so already is felt before anything is changed; otherwise harm comes first, since a step that
   * shows something wrong has been done by then.
   */
  private stride(
    plain: Plain,
    index: number,
    before: State,
    step: Step,
    stepsLater: number,
  ): { readonly state: State; readonly outcome?: Outcome } {
    const { procedure } = plain.stride(index);
    const applied = apply(this.model, this.flows, before, step);
    const where = { procedure, step };
    const usual = plain.hitches(index);
    const hitch = applied.hitches.find((each) => !usual.some((other) => other.what === each.what));
    if (hitch?.kind === 'idle') return { state: applied.after, outcome: caught(where, hitch, stepsLater) };
    const breach = breachesAt(this.model, this.flows, this.book, procedure, { step, ...applied }).find(
      (each) => !plain.broken(index).has(each.rule.id),
    );
    if (breach !== undefined) {
      const blind = isBlind(this.model, this.flows, breach.rule, {
        model: this.model,
        flows: this.flows,
        procedure,
        step,
        ...applied,
      });
      return {
        state: applied.after,
        outcome: { class: 'critical', rule: breach.rule, what: breach.what, blind, at: where, stepsLater },
      };
    }
    return hitch === undefined
      ? { state: applied.after }
      : { state: applied.after, outcome: caught(where, hitch, stepsLater) };
  }

  /** What the end of a procedure is held against, if this stride is its last. */
  private endOr(plain: Plain, index: number, state: State, stepsLater: number): Outcome | undefined {
    const stride = plain.stride(index);
    if (!stride.last) return undefined;
    const breach = breachesAtEnd(
      this.model,
      this.flows,
      this.book,
      stride.procedure,
      state,
      stride.parked,
    ).find((each) => !plain.broken(index).has(each.rule.id));
    if (breach === undefined) return undefined;
    const informed = breach.rule.atEnd?.({
      model: this.model,
      flows: this.flows,
      procedure: stride.procedure,
      state: allKnown(this.model, state),
      parked: stride.parked,
    });
    return {
      class: 'critical',
      rule: breach.rule,
      what: breach.what,
      blind: informed === undefined,
      at: stride,
      stepsLater,
    };
  }
}

/** Whether a rule would not be broken if only everything were known. */
function isBlind(model: Model, flows: Flows, rule: Rule, seen: Seen): boolean {
  const known = {
    ...seen,
    model,
    flows,
    before: allKnown(model, seen.before),
    during: allKnown(model, seen.during),
    after: allKnown(model, seen.after),
  };
  return rule.atStep?.(new ViewOfStep(known)) === undefined;
}

function caught(by: Where, hitch: Hitch, stepsLater: number): Outcome {
  return { class: stepsLater === 0 ? 'caught at once' : 'caught later', by, hitch, stepsLater };
}

const rank: Readonly<Record<Outcome['class'], number>> = {
  critical: 3,
  'caught later': 2,
  'caught at once': 1,
  harmless: 0,
};

/** Strides are counted from the beginning of the procedure; what is told is counted from the slip. */
function since(outcome: Outcome, from: number): Outcome {
  if (outcome.class === 'harmless') return outcome;
  return { ...outcome, stepsLater: Math.max(0, outcome.stepsLater - from) };
}

/** Of what comes of a slip when the day goes on in different ways, the worst. */
function worse(a: Outcome, b: Outcome): Outcome {
  return rank[b.class] > rank[a.class] ? b : a;
}
