/** Dash cards: procedures as action and wanted result, in type that is read from the driver's seat. */
import { layoutCard } from '../../layout/card/layout-card';
import type { Procedure } from '../../procedure/procedure';
import { identityContext } from '../context/identity';
import { cardProcedure } from '../context/procedures';
import { criticalKeys } from '../context/proof';
import { identityLine } from '../heads';
import { leastSizes, mostUsefulPt } from '../legible';
import type { Paper } from '../paper';
import type { CardPlan } from '../plans';
import { cardSheet } from '../sheets';

/** More faces than a keeper will turn over while driving; a card that needs more is refused. */
const mostFaces = 40;

/** The paper for one card of the plans. */
export function dashCard(plan: CardPlan): Paper {
  return {
    name: plan.name,
    title: plan.title,
    what: plan.what,
    template: 'card',
    context: ({ car, phrases, procedures, proof }) => ({
      car: identityContext(car.spec, phrases),
      card: {
        title: plan.title,
        procedures: procedures
          .filter((procedure) => standsOn(plan, procedure))
          .map((procedure) => cardProcedure(procedure, car, criticalKeys({ proof })))
          .filter(({ steps }) => steps.length > 0),
      },
    }),
    drawings: () => [],
    leastPt: (world) => leastSizes(world.fonts, world.car.spec.print.distances[plan.read].si),
    layOut: (blocks, world, mark) => {
      const sheet = cardSheet(world);
      if (!sheet.ok) return sheet;
      const distanceM = world.car.spec.print.distances[plan.read].si;
      return layoutCard(blocks, {
        fonts: world.fonts,
        theme: world.theme,
        sheet: sheet.value,
        title: plan.title,
        leastPt: leastSizes(world.fonts, distanceM),
        mostPt: mostUsefulPt(world.fonts, distanceM),
        foot: [world.car.spec.car.name, plan.title, identityLine(world, mark)],
        mostFaces,
      });
    },
  };
}

/** Whether a procedure stands on a card: by its phase, or by its own key. */
function standsOn({ phases = [], procedures = [] }: CardPlan, { id, phase }: Procedure): boolean {
  return phases.includes(phase) || procedures.includes(id);
}
