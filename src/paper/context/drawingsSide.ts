/** What the side view is drawn from: the places whose height is known and where something tagged is. */
import type { SideInput } from '../../drawing/side';
import { quantity } from '../../quantity/quantity';
import type { World } from '../paper';
import { planInput } from './plan';

/** The side view; none if no height is known. */
export function sideInputs(world: World): readonly SideInput[] {
  const { car, phrases } = world;
  const plan = planInput(world);
  const height = car.spec.car.height?.si;
  const places = plan.places.flatMap(({ id, number, backM, items }) => {
    const upM = car.places.get(id)?.upM;
    if (upM === undefined || items.length === 0) return [];
    return [{ number, backM, upM, items, height: phrases.first(quantity('length', upM), { decimals: 0 }) }];
  });
  if (places.length === 0) return [];
  return [{ ...plan, ...(height === undefined ? {} : { heightM: height }), places }];
}
