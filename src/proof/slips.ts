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
import { breachesAt, breachesAtEnd, harmOnly, type RuleBook } from './check';
import type { Day } from './day';
import type { Hitch } from './effects/act';
import type { Flows } from './flows';
import { allKnown } from './knowing';
import { afterNight } from './lapses';
import type { Model } from './model';
import { PlainDay } from './plainDay';
import { type Rule, type Seen, ViewOfStep } from './rules/rule';
import { type Outcome, type Slip, type SlipKind, slipKinds, type TriedSlip, type Where } from './slip';
import { keyOf, type State, same, sameMatter } from './state';
import { sequels } from './usual';
import { open, shut } from './values';

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
  const trial = new Trial(model, flows, harmOnly(book), day, kinds);
  return procedures.flatMap((procedure) => {
    const run = chain.of.get(procedure.id)?.find((each) => each.brokenOffAt === undefined);
    return run === undefined ? [] : trial.ofProcedure(procedures, run);
  });
}

type Plain = PlainDay<Outcome>;

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
        new PlainDay<Outcome>(this.model, this.flows, this.book, this.day, run.trace.start, [
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
