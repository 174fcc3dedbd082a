/** The drawings of the manual, and their captions. */
import type { Drawing } from '../../drawing/drawing';
import { drawPlan } from '../../drawing/plan';
import { drawPlumbing } from '../../drawing/plumbing/draw';
import type { World } from '../paper';
import { plumbingInputs } from './drawingsPlumbing';
import { planInput } from './plan';

/** Every drawing that the manual may show. */
export function manualDrawings(world: World): readonly Drawing[] {
  return [
    drawPlan(planInput(world), world.fonts),
    ...plumbingInputs(world).map((input) => drawPlumbing(input, world.fonts)),
  ];
}

/** The diagrams of the car's pipes: the name of each drawing, and its caption. */
export function systemFigures(
  world: World,
): readonly { readonly drawing: string; readonly caption: string }[] {
  return plumbingInputs(world).map(({ name, shows }) => ({ drawing: name, caption: `${shows}.` }));
}
