/**
 * The start-up worked backwards: when each thing must begin for the car to move off in time.
 *
 * Method: latest start of each activity by a backward pass over what waits for what (critical path method; J. E. Kelley
 * and M. R. Walker, 1959, from memory).
 */

/** One thing to be done. */
export interface Phase {
  readonly name: string;
  readonly leastS: number;
  readonly goodS: number;
  /** Names of the phases that must be over before it; if left out, the phase before it in the list. */
  readonly after?: readonly string[];
}

/** When a phase must begin and end, counted back from moving off, s. */
export interface PhaseTimes {
  readonly name: string;
  /** With good time for everything. */
  readonly good: BeforeMovingOff;
  /** With the least time for everything: later than this and the car is late. */
  readonly least: BeforeMovingOff;
}

/** Seconds before moving off; `startS` is never less than `endS`. */
export interface BeforeMovingOff {
  readonly startS: number;
  readonly endS: number;
}

/** The whole start-up. */
export interface StartUp {
  /** In the order given. */
  readonly phases: readonly PhaseTimes[];
  /** From the first act to moving off. */
  readonly goodS: number;
  readonly leastS: number;
  /** The phases that set the good time: a minute lost there is a minute late. */
  readonly critical: readonly string[];
}

/** Lay out the phases. Throws a RangeError for names that do not exist or wait for each other in a ring. */
export function startUp(phases: readonly Phase[]): StartUp {
  const followers = followersOf(phases);
  const good = latest(phases, followers, (phase) => phase.goodS);
  const least = latest(phases, followers, (phase) => phase.leastS);
  const longest = (times: ReadonlyMap<string, BeforeMovingOff>): number =>
    Math.max(0, ...[...times.values()].map((each) => each.startS));
  return {
    phases: phases.map(({ name }) => ({ name, good: at(good, name), least: at(least, name) })),
    goodS: longest(good),
    leastS: longest(least),
    critical: criticalPath(phases, followers, good),
  };
}

type Followers = ReadonlyMap<string, readonly string[]>;

function followersOf(phases: readonly Phase[]): Followers {
  const followers = new Map<string, string[]>(phases.map(({ name }) => [name, []]));
  if (followers.size !== phases.length) throw new RangeError('two phases of the start-up have the same name');
  for (const [index, phase] of phases.entries()) {
    const previous = phases[index - 1];
    for (const name of phase.after ?? (previous ? [previous.name] : [])) {
      const list = followers.get(name);
      if (!list)
        throw new RangeError(`the phase \`${phase.name}\` waits for \`${name}\`, which does not exist`);
      list.push(phase.name);
    }
  }
  return followers;
}

function latest(
  phases: readonly Phase[],
  followers: Followers,
  lasts: (phase: Phase) => number,
): ReadonlyMap<string, BeforeMovingOff> {
  const byName = new Map(phases.map((phase) => [phase.name, phase]));
  const times = new Map<string, BeforeMovingOff>();
  const visit = (name: string, trail: readonly string[]): BeforeMovingOff => {
    const known = times.get(name);
    if (known) return known;
    if (trail.includes(name))
      throw new RangeError(`phases wait for each other: ${[...trail, name].join(' → ')}`);
    const phase = byName.get(name);
    const endS = Math.max(
      0,
      ...(followers.get(name) ?? []).map((next) => visit(next, [...trail, name]).startS),
    );
    const result = { startS: endS + (phase ? lasts(phase) : 0), endS };
    times.set(name, result);
    return result;
  };
  for (const { name } of phases) visit(name, []);
  return times;
}

/** From the phase that starts first, each time on to the follower that starts as it ends. */
function criticalPath(
  phases: readonly Phase[],
  followers: Followers,
  times: ReadonlyMap<string, BeforeMovingOff>,
): readonly string[] {
  const path: string[] = [];
  let next = phases.reduce<string | undefined>(
    (first, { name }) =>
      first === undefined || at(times, name).startS > at(times, first).startS ? name : first,
    undefined,
  );
  while (next !== undefined) {
    path.push(next);
    const { endS } = at(times, next);
    next = (followers.get(next) ?? []).find((name) => at(times, name).startS === endS);
  }
  return path;
}

function at(times: ReadonlyMap<string, BeforeMovingOff>, name: string): BeforeMovingOff {
  return times.get(name) ?? { startS: 0, endS: 0 };
}

/** A time on the clock; `day` is 0 on the day of moving off, -1 on the day before. */
export interface ClockTime {
  readonly day: number;
  readonly secondOfDay: number;
}

/** The clock time so long before moving off. */
export function clockBefore(moveOffSecondOfDay: number, beforeS: number): ClockTime {
  const day = 86400;
  const second = moveOffSecondOfDay - beforeS;
  const days = Math.floor(second / day);
  return { day: days, secondOfDay: second - days * day };
}
