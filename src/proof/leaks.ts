/** What to shut for a leak anywhere, as papers show it: it hangs on the pipes of the car alone, not on its procedures. */
import { type Isolation, isolations } from './isolation';
import type { Model } from './model';
import { type IsolationRow, isolationTable } from './tables';

/** Leaks, counted. */
export interface LeakCount {
  readonly leaks: number;
  readonly leaksWithoutValve: number;
}

/** What papers show of leaks: what to shut for each, as rows of a table, and how many there are. Plain data. */
export interface ShownLeaks {
  readonly table: readonly IsolationRow[];
  readonly count: LeakCount;
}

/** The same, and what to shut for each leak. */
export interface Leaks extends ShownLeaks {
  readonly isolations: readonly Isolation[];
}

/** What papers show of leaks, and nothing else. */
export const shownLeaks = ({ table, count }: Leaks): ShownLeaks => ({ table, count });

/** Go through every place of a car that can leak. */
export function leaksOf(model: Model): Leaks {
  const found = isolations(model.car);
  return {
    isolations: found,
    table: isolationTable(model, found),
    count: {
      leaks: found.length,
      leaksWithoutValve: found.filter(({ valves }) => valves === undefined).length,
    },
  };
}
