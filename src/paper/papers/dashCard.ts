/** Dash cards: procedures as action and wanted result, in type that is read from the driver's seat. */
import type { Procedure } from '../../procedure/procedure';
import { identityContext } from '../context/identity';
import { cardProcedure } from '../context/procedures';
import { criticalKeys } from '../context/proof';
import type { Paper } from '../paper';
import type { CardPlan } from '../plans';
import { asCard } from '../ways';

/** More faces than a keeper will turn over while driving; a card that needs more is refused. */
const mostFaces = 40;

/** A card of so many procedures begins with a list of them and their faces. */
const leastListed = 4;

/** The paper for one card of the plans. */
export function dashCard(plan: CardPlan): Paper {
  return {
    name: plan.name,
    title: plan.title,
    what: plan.what,
    template: 'card',
    context: ({ car, phrases, procedures, proof }) => {
      const on = procedures
        .filter((procedure) => standsOn(plan, procedure))
        .map((procedure) => cardProcedure(procedure, car, criticalKeys({ proof })))
        .filter(({ steps }) => steps.length > 0);
      return {
        car: identityContext(car.spec, phrases),
        card: {
          title: plan.title,
          listed: on.length >= leastListed,
          marked: on.some(({ steps }) => steps.some(({ critical }) => critical)),
          opened: procedures.some(
            (procedure) =>
              standsOn(plan, procedure) && procedure.steps.some(({ action }) => action === 'open'),
          ),
          trouble: on.some(({ phase }) => phase === 'emergency'),
          procedures: on,
        },
      };
    },
    drawings: () => [],
    ...asCard(plan.title, plan.read, mostFaces),
  };
}

/** Whether a procedure stands on a card: by its phase, or by its own key. */
function standsOn({ phases = [], procedures = [] }: CardPlan, { id, phase }: Procedure): boolean {
  return phases.includes(phase) || procedures.includes(id);
}
