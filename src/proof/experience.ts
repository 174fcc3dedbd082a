/**
 * What doing each step comes to, learnt once.
 *
 * A step that was done in one state does the same in every state that agrees with it in the bytes that were looked at
 * while it was done, and the rules find the same in it. A slip leaves most of a state as it would have been, so that few
 * of the steps after it have to be worked out anew.
 */
import type { Procedure, Step } from '../procedure/procedure';
import { apply } from './apply';
import { brokenAt, brokenAtEnd, type Found, type RuleBook, ruleBook } from './check';
import { Flows } from './flows';
import { Deed, type Learnt, Lessons } from './lessons';
import type { Model } from './model';
import { type StepView, ViewOfStep } from './rules/rule';
import type { SlotSet } from './slotSet';
import { keyOf, Notes, type State } from './state';
import type { Doing, Moment, Trace } from './trace';

/** A question about steps done, whose answers are remembered. It may look at nothing but what it is shown. */
export class Question<T> {
  private readonly known = new WeakMap<Learnt<Doing>, Map<string, Lessons<T>>>();

  constructor(private readonly ask: (view: StepView) => T) {}

  /** The answer for a step of a procedure of some phase. */
  about(model: Model, flows: Flows, { phase }: Pick<Procedure, 'phase'>, done: Moment): Learnt<T> {
    const { doing, step } = done;
    const { lighting, after, during } = doing.answer;
    return this.lessons(doing, phase).about(done.before, (before) => {
      const made = after.doneTo(before);
      return this.ask(
        new ViewOfStep({
          model,
          flows,
          procedure: { phase },
          step,
          before,
          after: made,
          during: during?.doneTo(before) ?? made,
          lighting,
        }),
      );
    });
  }

  private lessons(doing: Learnt<Doing>, phase: string): Lessons<T> {
    const byPhase = this.known.get(doing) ?? new Map<string, Lessons<T>>();
    this.known.set(doing, byPhase);
    const lessons = byPhase.get(phase) ?? new Lessons<T>();
    byPhase.set(phase, lessons);
    return lessons;
  }
}

/** A procedure stepped through from a state, with what its steps break. */
export class Leg implements Trace {
  private readonly broken: (Learnt<readonly Found[]> | undefined)[] = [];
  private readonly depends: (SlotSet | undefined)[] = [];

  constructor(
    private readonly experience: Experience,
    readonly procedure: Procedure,
    readonly start: State,
    readonly moments: readonly Moment[],
    readonly end: State,
  ) {}

  /** The step with this index. */
  moment(index: number): Moment {
    const found = this.moments[index];
    if (found === undefined) throw new RangeError(`no step ${index}`);
    return found;
  }

  /** The state before the step with this index; after the last, the end. */
  before(index: number): State {
    return this.moments[index]?.before ?? this.end;
  }

  /** What the step with this index breaks. */
  found(index: number): readonly Found[] {
    return this.lesson(index)?.answer ?? [];
  }

  /** The bytes on which it depends what the step with this index does and breaks. */
  asked(index: number, { doing }: Moment): SlotSet {
    const known = this.depends[index];
    if (known !== undefined) return known;
    const broken = this.lesson(index);
    const asked = broken === undefined ? doing.asked : doing.asked.with(broken.asked);
    this.depends[index] = asked;
    return asked;
  }

  private lesson(index: number): Learnt<readonly Found[]> | undefined {
    const moment = this.moments[index];
    if (moment === undefined) return undefined;
    const known = this.broken[index] ?? this.experience.broken(this.procedure, moment);
    this.broken[index] = known;
    return known;
  }
}

/** A procedure that was gone through. What each of its steps did is worked out if somebody asks. */
export class Passed implements Trace {
  constructor(
    private readonly experience: Experience,
    readonly procedure: Procedure,
    readonly start: State,
    readonly end: State,
  ) {}

  get moments(): readonly Moment[] {
    return this.experience.leg(this.procedure, this.start).moments;
  }
}

/** Everything learnt about the steps of one car. */
export class Experience {
  readonly flows: Flows;
  private readonly doings = new WeakMap<Step, Lessons<Doing>>();
  private readonly legs = new WeakMap<Procedure, Map<string, Leg>>();
  private readonly ends = new WeakMap<Procedure, Map<boolean, Lessons<readonly Found[]>>>();
  private readonly rules: Question<readonly Found[]>;

  constructor(
    readonly model: Model,
    readonly book: RuleBook = ruleBook(model),
  ) {
    this.flows = new Flows(model);
    this.rules = new Question((view) => brokenAt(book, view));
  }

  /** Do a step in a state. */
  do(before: State, step: Step): Moment {
    const lessons = this.doings.get(step) ?? new Lessons<Doing>();
    this.doings.set(step, lessons);
    const doing = lessons.about(before, (state) => this.work(state, step));
    const { lighting, hitches, during, after } = doing.answer;
    const made = after.doneTo(before);
    return { step, before, during: during?.madeOf(before) ?? made, after: made, lighting, hitches, doing };
  }

  /** Step through a procedure. */
  leg(procedure: Procedure, start: State): Leg {
    const known = this.legs.get(procedure) ?? new Map<string, Leg>();
    this.legs.set(procedure, known);
    const key = keyOf(start);
    const leg = known.get(key) ?? this.walk(procedure, start);
    known.set(key, leg);
    return leg;
  }

  /** What a step breaks. */
  broken(procedure: Procedure, done: Moment): Learnt<readonly Found[]> {
    return this.ask(this.rules, procedure, done);
  }

  /** The answer to any question about a step done. */
  ask<T>(question: Question<T>, procedure: Procedure, done: Moment): Learnt<T> {
    return question.about(this.model, this.flows, procedure, done);
  }

  /** What a procedure breaks by ending in a state. */
  brokenAtEnd(procedure: Procedure, state: State, parked: boolean): Learnt<readonly Found[]> {
    const both = this.ends.get(procedure) ?? new Map<boolean, Lessons<readonly Found[]>>();
    this.ends.set(procedure, both);
    const lessons = both.get(parked) ?? new Lessons<readonly Found[]>();
    both.set(parked, lessons);
    const { model, flows, book } = this;
    return lessons.about(state, (end) => brokenAtEnd(book, { model, flows, procedure, state: end, parked }));
  }

  /** Step through a procedure and keep nothing of it but what is learnt about its steps. */
  walk(procedure: Procedure, start: State): Leg {
    let state = start;
    const moments = procedure.steps.map((step) => {
      const done = this.do(state, step);
      state = done.after;
      return done;
    });
    return new Leg(this, procedure, start, moments, state);
  }

  private work(before: State, step: Step): Doing {
    const { after, during, lighting, hitches } = apply(this.model, this.flows, before, step);
    return {
      after: deedOf(after),
      during: during === after ? undefined : deedOf(during),
      lighting,
      hitches,
    };
  }
}

/** What has made a state that takes notes of what it was made from. */
export function deedOf({ bytes, notes = Notes.empty(bytes.length) }: State): Deed {
  return new Deed(bytes, notes.given);
}
