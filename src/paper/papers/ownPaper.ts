/** A paper that a museum or a club made up, from a template in its own folder. */
import { identityContext } from '../context/identity';
import { nothingSaid } from '../context/placesSaid';
import { cardProcedure } from '../context/procedures';
import { criticalKeys } from '../context/proof';
import { visitingContext } from '../context/visiting';
import type { Paper, World } from '../paper';
import type { OwnPlan } from '../plans';
import { asBook, asCard, asLapSheet, mostCardFaces } from '../ways';

/** A sheet for a wall says what it says on one side or two. */
const mostSides = 2;

/** What is read from a wall may grow to this many times the largest useful size. */
const wallGrowth = 3;

/** The paper of a plan. */
export const ownPaper = (plan: OwnPlan): Paper => ({
  name: plan.name,
  title: plan.title,
  what: plan.what,
  template: plan.name,
  own: true,
  context: ownContext,
  drawings: () => [],
  ...wayOf(plan),
});

function wayOf({ title, read }: OwnPlan) {
  switch (read) {
    case 'dash':
    case 'lap':
      return asCard(title, read, mostCardFaces);
    case 'wall':
      return asLapSheet(title, { mostFaces: mostSides, growTo: wallGrowth, lies: 'upright' }, 'wall');
    case 'desk':
      return asBook(title, { chaptersOnNewPage: true, chapterTabs: false });
  }
}

/** What such a template may speak of: the car, what is worked and read from the seat, every procedure as cards have it. */
function ownContext(world: World): Readonly<Record<string, unknown>> {
  const { car, phrases, proof, words } = world;
  const { procedures } = proof;
  return {
    car: identityContext(car.spec, phrases),
    words,
    ...visitingContext(world),
    procedures: procedures.map((procedure) =>
      cardProcedure(procedure, car, criticalKeys({ proof }), nothingSaid()),
    ),
  };
}
