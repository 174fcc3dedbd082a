/** What papers show of a proof, as plain data, so that it can be handed from the thread that proves to one that makes papers. */
import type { Procedures } from '../procedure/procedure';
import type { Proof } from './prove';
import type { DayStatistics } from './statistics';

/** What papers show of a proof. */
export interface ShownProof {
  /** The procedures in the order in which they are to be printed. */
  readonly procedures: Procedures;
  readonly tables: Pick<Proof['tables'], 'valves' | 'isolation' | 'critical'>;
  readonly statistics: Proof['statistics'];
  readonly overruled: readonly { readonly rule: { readonly title: string }; readonly because: string }[];
}

/** All of it but the procedures, and leaks, which need no proof. */
export interface ShownFindings extends Pick<ShownProof, 'overruled'> {
  readonly tables: Omit<ShownProof['tables'], 'isolation'>;
  readonly statistics: DayStatistics;
}

/** Places of the steps of each procedure, in the order in which they are to be printed, before they were put in order. */
export type StepOrder = readonly (readonly number[])[];

/** What papers show of a proof beside the procedures and leaks, and nothing else. */
export function findingsOf({ tables, statistics, overruled }: ShownFindings): ShownFindings {
  const { valves, critical } = tables;
  return {
    tables: { valves, critical },
    statistics,
    overruled: overruled.map(({ rule, because }) => ({ rule: { title: rule.title }, because })),
  };
}

/** How the steps of procedures have been put in order. */
export function orderOf(given: Procedures, ordered: Procedures): StepOrder {
  return ordered.map(({ steps }, index) => {
    const before = given[index]?.steps ?? [];
    return steps.map((step) => before.indexOf(step));
  });
}

/** The same procedures with their steps put in an order. Throws a RangeError if it is the order of others. */
export function putInOrder(given: Procedures, order: StepOrder): Procedures {
  return given.map((procedure, index) => {
    const places = order[index];
    if (places?.length !== procedure.steps.length) throw new RangeError(`no order for \`${procedure.id}\``);
    const steps = places.map((place) => {
      const step = procedure.steps[place];
      if (step === undefined) throw new RangeError(`\`${procedure.id}\` has no step ${place + 1}`);
      return step;
    });
    return { ...procedure, steps };
  });
}
