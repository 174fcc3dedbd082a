/** Dash cards: procedures as action and wanted result, in type that is read from the driver's seat. */
import { drawGlass, type GlassInput } from '../../drawing/glass';
import { otherCards } from '../context/cardsSaid';
import { glassInputs } from '../context/drawingGlass';
import { identityContext } from '../context/identity';
import { callsClear, peopleBack } from '../context/peopleBack';
import { listOfPlaces } from '../context/placeList';
import { namingAbove, nothingSaid, nothingSaidInTrouble, placesOnCard } from '../context/placesSaid';
import { cardProcedure, cardSteps } from '../context/procedures';
import { criticalKeys } from '../context/proof';
import { eachAlone, inRows } from '../context/rows';
import { signsOfTrouble } from '../context/signsOfTrouble';
import { standsOn } from '../context/standsOn';
import { leastSizes } from '../legible';
import type { Paper, World } from '../paper';
import type { CardPlan } from '../plans';
import { cardSheet } from '../sheets';
import { asCard, mostCardFaces } from '../ways';

/** The glass with its words is no wider than this. */
const mostGlassPt = 290;

/** A card of so many procedures begins with a list of them and their faces. */
const leastListed = 3;

/** A list of more than so many stands in two columns. What is shorter is kept whole, and in the first of two its numbers would stand in mid-face. */
const mostInOneColumn = 6;

/** The paper for one card of the plans. */
export function dashCard(plan: CardPlan): Paper {
  return {
    name: plan.name,
    title: plan.title,
    what: plan.what,
    template: 'card',
    context: (world) => {
      const { car, phrases, plans, proof } = world;
      const { procedures } = proof;
      const card = { ...nothingSaid(), cards: otherCards(plan, world) };
      const on = procedures
        .filter((procedure) => standsOn(plan, procedure))
        .map((procedure, index) => {
          // in trouble a card is opened at the trouble and nowhere else
          const said =
            procedure.phase === 'emergency'
              ? {
                  ...nothingSaidInTrouble(car),
                  cards: { ...otherCards(plan, world), told: new Set<string>() },
                }
              : card;
          // the first trouble says in full what the others say in a row
          const rowsOf = procedure.phase === 'emergency' && index > 0 ? inRows : eachAlone;
          return {
            ...cardProcedure(procedure, car, criticalKeys({ proof }), said, rowsOf),
            people: callsClear(procedure) ? peopleBack(world) : null,
          };
        })
        .filter(({ steps }) => steps.length > 0);
      const trouble = on.some(({ phase }) => phase === 'emergency');
      const places = listOfPlaces(
        placesOnCard(
          procedures
            .filter((procedure) => standsOn(plan, procedure))
            .flatMap((procedure) => [
              namingAbove(procedure),
              ...cardSteps(procedure, criticalKeys({ proof })),
            ]),
          car,
        ),
        car,
        {
          byFeel: trouble ? 'apart' : 'together',
          fillerAt: (place) => world.language.messages.say('filler-at', { place }),
        },
      );
      const [glass] = glassOf(plan, world);
      return {
        car: identityContext(car.spec, phrases),
        card: {
          title: plan.title,
          listed: on.length >= leastListed,
          inColumns: on.length > mostInOneColumn,
          // a trouble is looked up by what is noticed, everything else by its name
          signs: signsOfTrouble(
            procedures.filter(({ id }) => on.some((each) => each.id === id)),
            plans,
          ),
          marked: on.some(({ steps }) => steps.some(({ critical }) => critical)),
          opened: procedures.some(
            (procedure) =>
              standsOn(plan, procedure) && procedure.steps.some(({ action }) => action === 'open'),
          ),
          placed: places.tagged.length + places.named.length > 0,
          places,
          trouble,
          next: plans.cards.find(({ name }) => name === plan.next)?.title ?? '',
          afterTheRun: plan.ends === 'run',
          glass: glass === undefined ? '' : 'glass',
          glassName: glass?.glass ?? '',
          procedures: on,
        },
      };
    },
    drawings: (world) => glassOf(plan, world).map((input) => drawGlass(input, world.fonts)),
    ...asCard(plan.title, plan.read, mostCardFaces),
  };
}

/** The glass with its levels, on a card that shows it. */
function glassOf({ glass, read }: CardPlan, world: World): readonly GlassInput[] {
  if (glass !== true) return [];
  const { narrow, 'narrow-bold': bold } = leastSizes(world.fonts, world.car.spec.print.distances[read].si);
  const sheet = cardSheet(world);
  if (!sheet.ok) return [];
  const { widthPt, margins } = sheet.value;
  const roomPt = widthPt - margins.left - margins.right;
  return glassInputs(world, Math.max(narrow, bold), Math.min(roomPt, mostGlassPt));
}
