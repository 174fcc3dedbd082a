/** The day without a slip, beside which a slip is stepped on. */
import type { Procedure, Step } from '../procedure/procedure';
import type { Found } from './check';
import type { Day } from './day';
import type { Experience, Leg } from './experience';
import { afterNight } from './lapses';
import type { Learnt } from './lessons';
import type { State } from './state';
import type { Moment } from './trace';
import type { Sequel } from './usual';

/** One step of a day to be gone on with; at the end of a procedure, what its end is held against. */
export interface Stride {
  readonly procedure: Procedure;
  readonly step: Step;
  readonly last: boolean;
  readonly parked: boolean;
  readonly nightBefore: boolean;
  /** Which leg of the day it belongs to, and its place there. */
  readonly leg: number;
  readonly at: number;
}

/** The day without the slip: the state before each stride, and what goes wrong at it anyway. Worked out as far as it is asked for. */
export class PlainDay {
  private readonly strides: readonly Stride[];
  private readonly legs: Leg[] = [];
  private readonly wrong: (ReadonlySet<string> | undefined)[] = [];

  constructor(
    private readonly experience: Experience,
    day: Day,
    private readonly start: State,
    private readonly way: readonly Sequel[],
  ) {
    this.strides = way.flatMap(({ procedure, afterNight: night }, leg) =>
      procedure.steps.map(
        (step, at): Stride => ({
          procedure,
          step,
          last: at === procedure.steps.length - 1,
          parked: day.parkedAfter.has(procedure.id),
          nightBefore: night && at === 0,
          leg,
          at,
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

  moment(index: number): Moment {
    const { leg, at } = this.stride(index);
    const found = this.leg(leg).moments[at];
    if (found === undefined) throw new RangeError(`no stride ${index}`);
    return found;
  }

  /** By slot, 1 where what the stride does or breaks depends on the byte. */
  asked(index: number): Uint8Array {
    const { leg, at } = this.stride(index);
    return this.leg(leg).asked(at);
  }

  /** What ending a procedure with this stride breaks. */
  end(index: number): Learnt<readonly Found[]> {
    const { procedure, parked } = this.stride(index);
    return this.experience.brokenAtEnd(procedure, this.moment(index).after, parked);
  }

  /** The rules that are broken at a stride anyway. */
  broken(index: number): ReadonlySet<string> {
    const known = this.wrong[index];
    if (known !== undefined) return known;
    const { leg, at, last } = this.stride(index);
    const found = [...this.leg(leg).found(at), ...(last ? harmful(this.end(index).answer) : [])];
    const broken = new Set(found.map(({ rule }) => rule.id));
    this.wrong[index] = broken;
    return broken;
  }

  private leg(index: number): Leg {
    for (let next = this.legs.length; next <= index; next += 1) {
      const evening = this.legs[next - 1]?.end ?? this.start;
      const sequel = this.way[next];
      if (sequel === undefined) throw new RangeError(`no leg ${next}`);
      const morning = sequel.afterNight ? afterNight(this.experience.model, evening) : evening;
      this.legs.push(this.experience.leg(sequel.procedure, morning));
    }
    const leg = this.legs[index];
    if (leg === undefined) throw new RangeError(`no leg ${index}`);
    return leg;
  }
}

/** What does harm by itself: rules that only say how a procedure has to end are left out. */
export function harmful(found: readonly Found[]): readonly Found[] {
  return found.filter(({ rule }) => rule.tidy !== true);
}
