/** The drawings of the manual, and their captions. */
import type { Drawing } from '../../drawing/drawing';
import { drawGauges, isDrawn } from '../../drawing/gauges';
import { drawLevels } from '../../drawing/levels';
import { drawPlan } from '../../drawing/plan';
import { drawPlumbing } from '../../drawing/plumbing/draw';
import { drawRaisingCurve } from '../../drawing/raisingCurve';
import { drawRangePicture } from '../../drawing/rangePicture';
import { drawSide } from '../../drawing/side';
import { drawTimeBars } from '../../drawing/timeBars';
import type { World } from '../paper';
import { gaugesInput, raisingCurveInputs, rangePictureInputs } from './drawingsCharts';
import { levelsInputs } from './drawingsLevels';
import { plumbingInputs } from './drawingsPlumbing';
import { sideInputs } from './drawingsSide';
import { startBarsInputs } from './drawingsTime';
import { planInput } from './plan';

/** Every drawing that the manual may show. */
export function manualDrawings(world: World): readonly Drawing[] {
  return [
    drawPlan(planInput(world), world.fonts),
    ...sideInputs(world).map((input) => drawSide(input, world.fonts)),
    ...plumbingInputs(world).map((input) => drawPlumbing(input, world.fonts)),
    drawGauges(gaugesInput(world), world.fonts),
    ...levelsInputs(world).map((input) => drawLevels(input, world.fonts)),
    ...raisingCurveInputs(world).map((input) => drawRaisingCurve(input, world.fonts)),
    ...startBarsInputs(world).map((input) => drawTimeBars(input, world.fonts)),
    ...rangePictureInputs(world).map((input) => drawRangePicture(input, world.fonts)),
  ];
}

/** Which drawings the manual has, by name; empty where there is nothing to draw. */
export interface DrawnContext {
  /** The diagrams of the car's pipes, each with its caption. */
  readonly systems: readonly { readonly drawing: string; readonly caption: string }[];
  readonly side: string;
  readonly gauges: string;
  /** Gauges whose figures give no scale to draw, with what they should show. */
  readonly undrawnGauges: readonly {
    readonly tag: string;
    readonly name: string;
    readonly says: readonly string[];
  }[];
  readonly levels: string;
  readonly raisingCurve: string;
  readonly startBars: string;
  readonly rangePicture: string;
}

/** The drawings that the templates may show. */
export function drawnContext(world: World): DrawnContext {
  const { gauges } = gaugesInput(world);
  return {
    systems: plumbingInputs(world).map(({ name, shows }) => ({ drawing: name, caption: `${shows}.` })),
    side: sideInputs(world).length > 0 ? 'side' : '',
    gauges: gauges.some(isDrawn) ? 'gauges' : '',
    undrawnGauges: gauges
      .filter((gauge) => !isDrawn(gauge))
      .map(({ tag, name, says }) => ({ tag, name, says })),
    levels: levelsInputs(world).length > 0 ? 'levels' : '',
    raisingCurve: raisingCurveInputs(world)[0]?.name ?? '',
    startBars: startBarsInputs(world)[0]?.name ?? '',
    rangePicture: rangePictureInputs(world)[0]?.name ?? '',
  };
}
