/**
 * Slips: a step left out, done twice, done one too early, done to the neighbouring valve; a valve found as it should
 * not stand. Each is stepped on through the rest of its procedure and of the day, beside the day without it.
 *
 * Somebody notices when a step does not go as written although without the slip it does: it cannot be done, it is so
 * already, or what is to be seen is not there. Harm is done when a rule is broken that is not broken without the slip.
 * Which of the two comes first decides; `docs/proof.md` says why.
 */
import type { PartId } from '../car/car';
import type { Procedures, Step } from '../procedure/procedure';
import type { Chain, Run } from './chain';
import type { Day } from './day';
import type { Hitch } from './effects/act';
import type { Experience } from './experience';
import { allKnown, viewAllKnown } from './knowing';
import { afterNight } from './lapses';
import type { Model } from './model';
import { Odd } from './odd';
import { harmful, PlainDay } from './plainDay';
import { type Rule, ViewOfStep } from './rules/rule';
import { type Outcome, type Slip, type SlipKind, slipKinds, type TriedSlip, type Where } from './slip';
import { at, type State } from './state';
import type { Moment } from './trace';
import { sequels } from './usual';
import { open, shut } from './values';

/** Try every slip in every procedure of a day; of some kinds only, if they are given. */
export function trySlips(
  experience: Experience,
  procedures: Procedures,
  day: Day,
  chain: Chain,
  kinds: ReadonlySet<SlipKind> = new Set(slipKinds),
): readonly TriedSlip[] {
  const trial = new Trial(experience, day, kinds);
  return procedures.flatMap((procedure) => {
    const run = chain.of.get(procedure.id)?.find((each) => each.brokenOffAt === undefined);
    return run === undefined ? [] : trial.ofProcedure(procedures, run);
  });
}

class Trial {
  private readonly model: Model;

  constructor(
    private readonly experience: Experience,
    private readonly day: Day,
    private readonly kinds: ReadonlySet<SlipKind>,
  ) {
    this.model = experience.model;
  }

  ofProcedure(procedures: Procedures, run: Run): readonly TriedSlip[] {
    const { procedure } = run;
    const ways = sequels(procedures, this.day, procedure);
    const plains = (ways.length === 0 ? [[]] : ways).map(
      (way) =>
        new PlainDay(this.experience, this.day, run.trace.start, [{ procedure, afterNight: false }, ...way]),
    );
    const worst = (slip: Slip, from: (plain: PlainDay) => Outcome): TriedSlip => ({
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
      for (const valve of trying('done to the neighbour') ? this.neighbours(step) : []) {
        const other: Step = { ...step, part: valve };
        slips.push(
          worst(slip('done to the neighbour', valve), (plain) => this.doToOther(plain, index, other)),
        );
      }
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
    procedure: Run['procedure'],
    worst: (slip: Slip, from: (plain: PlainDay) => Outcome) => TriedSlip,
  ): readonly TriedSlip[] {
    return [...this.model.slots.valve].map(([valve, slot]) =>
      worst({ kind: 'found wrong', procedure, step: undefined, valve }, (plain) => {
        const start = plain.leg(0).start.draft();
        start.set(slot, at(start, slot) === shut ? open : shut);
        return this.goOn(plain, 0, start, 0);
      }),
    );
  }

  private leaveOut(plain: PlainDay, index: number): Outcome {
    const { before } = plain.leg(0).moment(index);
    return this.endOr(plain, 0, index, before, 0) ?? this.goOn(plain, index + 1, before, 0);
  }

  private doTwice(plain: PlainDay, index: number): Outcome {
    const { after, step } = plain.leg(0).moment(index);
    const again = this.stride(plain, 0, index, after, step, 0);
    return again.outcome ?? this.goOn(plain, index + 1, again.state, 1);
  }

  private doEarly(plain: PlainDay, index: number): Outcome {
    const [one, two] = [plain.leg(0).moment(index - 1), plain.leg(0).moment(index)];
    const early = this.stride(plain, 0, index, one.before, two.step, 0);
    if (early.outcome !== undefined) return early.outcome;
    const late = this.stride(plain, 0, index - 1, early.state, one.step, 1);
    return (
      late.outcome ?? this.endOr(plain, 0, index, late.state, 1) ?? this.goOn(plain, index + 1, late.state, 2)
    );
  }

  private doToOther(plain: PlainDay, index: number, other: Step): Outcome {
    const done = this.stride(plain, 0, index, plain.leg(0).moment(index).before, other, 0);
    return (
      done.outcome ?? this.endOr(plain, 0, index, done.state, 0) ?? this.goOn(plain, index + 1, done.state, 1)
    );
  }

  /**
   * Go on from a step of the first procedure in a state that may differ from the plain one, until something comes of it.
   * Where a step asks for nothing in which the state differs, it does what it does without the slip.
   */
  private goOn(plain: PlainDay, from: number, start: State, later: number): Outcome {
    let stepsLater = from;
    let odd = Odd.in(start, plain.leg(0).before(from));
    for (let index = 0; index < plain.length; index += 1) {
      const leg = plain.leg(index);
      const { moments } = leg;
      if (plain.nightBefore(index)) {
        const evening = odd.beside(plain.leg(index - 1).end);
        odd = Odd.in(afterNight(this.model, evening), leg.start);
      }
      for (let at = index === 0 ? from : 0; at < moments.length; at += 1) {
        if (odd.isNothing) return { class: 'harmless', lasting: false };
        const moment = leg.moment(at);
        let outcome: Outcome | undefined;
        if (odd.isAmong(leg.asked(at, moment))) {
          const done = this.stride(plain, index, at, odd.beside(moment.before), moment.step, stepsLater);
          outcome = done.outcome;
          odd = Odd.in(done.state, moment.after);
        } else odd = odd.without(moment.doing.answer.after.given);
        if (outcome === undefined && at === moments.length - 1 && odd.isAmong(plain.end(leg).asked))
          outcome = this.endOr(plain, index, at, odd.beside(moment.after), stepsLater);
        if (outcome !== undefined) return since(outcome, from - later);
        stepsLater += 1;
      }
    }
    return { class: 'harmless', lasting: odd.isMatter(this.model.factsFrom) };
  }

  /**
   * Do one step. What is so already is felt before anything is changed; otherwise harm comes first, since a step that
   * shows something wrong has been done by then.
   */
  private stride(
    plain: PlainDay,
    index: number,
    at: number,
    before: State,
    step: Step,
    stepsLater: number,
  ): { readonly state: State; readonly outcome?: Outcome } {
    const leg = plain.leg(index);
    const { procedure } = leg;
    const done = this.experience.do(before, step);
    const state = done.after;
    const where = { procedure, step };
    const usual = leg.moment(at).hitches;
    const hitch = done.hitches.find((each) => !usual.some((other) => other.what === each.what));
    if (hitch?.kind === 'idle') return { state, outcome: caught(where, hitch, stepsLater) };
    const breach = this.experience
      .broken(procedure, done)
      .answer.find((each) => !plain.breaksAnyway(leg, at, each.rule.id));
    if (breach !== undefined) {
      const { rule, what } = breach;
      const blind = this.isBlind(rule, where, done);
      return { state, outcome: { class: 'critical', rule, what, blind, at: where, stepsLater } };
    }
    return hitch === undefined ? { state } : { state, outcome: caught(where, hitch, stepsLater) };
  }

  /** Whether a rule would not be broken by a step if only everything were known. */
  private isBlind(rule: Rule, { procedure }: Where, done: Moment): boolean {
    const { model, flows } = this.experience;
    const view = new ViewOfStep({ model, flows, procedure, ...done });
    return rule.atStep?.(viewAllKnown(view)) === undefined;
  }

  /** What the end of a procedure is held against, if this step is its last. */
  private endOr(
    plain: PlainDay,
    index: number,
    at: number,
    state: State,
    stepsLater: number,
  ): Outcome | undefined {
    const leg = plain.leg(index);
    const { procedure, moments } = leg;
    if (at < moments.length - 1) return undefined;
    const parked = plain.isParkedAfter(procedure);
    const breach = harmful(this.experience.brokenAtEnd(procedure, state, parked).answer).find(
      (each) => !plain.breaksAnyway(leg, at, each.rule.id),
    );
    if (breach === undefined) return undefined;
    const { model, flows } = this.experience;
    const { rule, what } = breach;
    const informed = rule.atEnd?.({ model, flows, procedure, state: allKnown(model, state), parked });
    const where = { procedure, step: leg.moment(at).step };
    return { class: 'critical', rule, what, blind: informed === undefined, at: where, stepsLater };
  }
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
