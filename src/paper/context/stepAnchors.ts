/** What the index leads to: the step of a procedure at which a part is first worked or read. */
import type { PartId } from '../../car/car';
import type { Procedure } from '../../procedure/procedure';

/** The steps of a procedure that are the first to work or read their part, as numbers from nought, by part. */
export function firstSteps({ steps }: Procedure): ReadonlyMap<PartId, number> {
  const found = new Map<PartId, number>();
  for (const [index, { part }] of steps.entries())
    if (part !== undefined && !found.has(part)) found.set(part, index);
  return found;
}

/**
 * What leads to a step of the manual: by the key of the step, so that another order of steps is no other index. An emergency is
 * found as a whole: it stands on one page, with some of its steps in rows.
 */
export function stepAnchor({ id, phase, steps }: Procedure, index: number): string {
  return phase === 'emergency'
    ? `procedure-${id}`
    : `step-${id}.${(steps[index]?.id ?? '').replaceAll('/', ':')}`;
}
