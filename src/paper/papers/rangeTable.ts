/** The fuel and water range table: weather-proof, read wet, in black and white, on the lap. */
import { planningOf } from '../../calc/figures/planning';
import { printedStepM, type RangeChart, rangeChart } from '../../calc/figures/rangeChart';
import { planningContext, rangeContext } from '../context/fuelAndWater';
import { identityContext } from '../context/identity';
import type { Paper, World } from '../paper';
import type { PaperTitle } from '../plans';
import { asLapSheet } from '../ways';

/** One face for each system of units the car prints in, and room for one more if a tank has many marks. */
const mostFaces = 6;

/** The range table, first in the first units, then in the second; each with the marks of a stick in those units. */
export const rangeTable = ({ title, what }: PaperTitle): Paper => ({
  name: 'range-table',
  title,
  what,
  template: 'range-table',
  context: (world) => ({
    car: identityContext(world.car.spec, world.phrases),
    faces: world.phrases.systems.map((system, index) => {
      const which = index === 0 ? 'first' : 'second';
      const ranges = charts(world)
        .map((chart) => rangeContext(rangeChart(chart, system), world, which))
        .filter(({ known }) => known);
      return {
        ranges,
        halfMarked: ranges.some(({ rows }) => rows.some(({ underHalf }) => underHalf)),
        planning: planningContext(
          world,
          planningOf(world.figures.water, world.figures.fuel, printedStepM[system]),
          which,
        ),
      };
    }),
    unknown: charts(world)
      .map((chart) => rangeContext(chart, world))
      .filter(({ known }) => !known)
      .map(({ liquid }) => liquid),
    notCounted: notCounted(world),
    furtherTanks: charts(world).some(({ others }) => others.length > 0),
  }),
  drawings: () => [],
  ...asLapSheet(title, { mostFaces, growTo: 1.5, lies: 'upright' }),
});

/** Other tanks of the same liquid from which no line leads to where it is used. */
function notCounted(world: World): readonly string[] {
  return charts(world).flatMap(({ others }) =>
    others.flatMap(({ name, way }) => (way.kind === 'none' ? [name] : [])),
  );
}

function charts({ figures }: World): readonly RangeChart[] {
  return [figures.water, figures.fuel].flatMap((chart) => (chart === undefined ? [] : [chart]));
}
