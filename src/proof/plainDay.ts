/** The day without a slip, beside which a slip is stepped on. */
import type { Procedure, Step } from '../procedure/procedure';
import { apply } from './apply';
import { breachesAt, breachesAtEnd, type RuleBook } from './check';
import type { Day } from './day';
import type { Hitch } from './effects/act';
import type { Flows } from './flows';
import { afterNight } from './lapses';
import type { Model } from './model';
import type { State } from './state';
import type { Sequel } from './usual';

/** One step of a day to be gone on with; at the end of a procedure, what its end is held against. */
export interface Stride {
  readonly procedure: Procedure;
  readonly step: Step;
  readonly last: boolean;
  readonly parked: boolean;
  readonly nightBefore: boolean;
}

/** The day without the slip: the state before each stride, and what goes wrong at it anyway. Worked out as far as it is asked for. */
export class PlainDay<T> {
  private readonly strides: readonly Stride[];
  private readonly done: {
    readonly before: State;
    readonly after: State;
    readonly hitches: readonly Hitch[];
    readonly broken: ReadonlySet<string>;
  }[] = [];
  /** What came of going on from a stride in a state. */
  readonly known = new Map<string, T>();

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
