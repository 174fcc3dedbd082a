import type { Procedure } from '../../procedure/procedure';
import type { CardPlan } from '../plans';

/** Whether a procedure stands on a card: by its phase, or by its own key. */
export function standsOn({ phases = [], procedures = [] }: CardPlan, { id, phase }: Procedure): boolean {
  return phases.includes(phase) || procedures.includes(id);
}
