/** The day without a slip, beside which a slip is stepped on. */
import type { Found } from './check';
import type { Day } from './day';
import type { Experience, Leg } from './experience';
import { afterNight } from './lapses';
import type { Learnt } from './lessons';
import type { State } from './state';
import type { Sequel } from './usual';

/** The day without the slip: its procedures one after another. Worked out as far as it is asked for. */
export class PlainDay {
  private readonly legs: Leg[] = [];
  private readonly way: readonly Sequel[];

  constructor(
    private readonly experience: Experience,
    private readonly day: Day,
    private readonly start: State,
    way: readonly Sequel[],
  ) {
    this.way = way.filter(({ procedure }) => procedure.steps.length > 0);
  }

  /** How many procedures it has. */
  get length(): number {
    return this.way.length;
  }

  /** Whether a night passes before a procedure. */
  nightBefore(leg: number): boolean {
    return this.way[leg]?.afterNight === true;
  }

  /** One of its procedures, stepped through. */
  leg(index: number): Leg {
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

  /** What ending a procedure breaks. */
  end({ procedure, end }: Leg): Learnt<readonly Found[]> {
    return this.experience.brokenAtEnd(procedure, end, this.isParkedAfter(procedure));
  }

  /** Whether the car is left for good after a procedure. */
  isParkedAfter({ id }: Leg['procedure']): boolean {
    return this.day.parkedAfter.has(id);
  }

  /** Whether a rule is broken by a step anyway, or by the end of its procedure if it is the last. */
  breaksAnyway(leg: Leg, at: number, rule: string): boolean {
    const isIt = (found: Found) => found.rule.id === rule;
    if (leg.found(at).some(isIt)) return true;
    return at === leg.moments.length - 1 && harmful(this.end(leg).answer).some(isIt);
  }
}

/** What does harm by itself: rules that only say how a procedure has to end are left out. */
export function harmful(found: readonly Found[]): readonly Found[] {
  return found.filter(({ rule }) => rule.tidy !== true);
}
