/** Tanks that hold the same liquid: how what is in one comes to where another one's goes. */
import type { Car, PartId } from './car';
import { type PipeFilter, type Route, routesTo } from './routes';

/**
 * How the content of a tank comes to the place of use, beside the tank that is read.
 * `open`: along lines with nothing to work that the other tank has not got too. `valves`: hand valves of its own have to
 * be open. `pumped`: it has to be pumped over into a tank. `none`: no line leads there, or only a pump of its own
 * draws it.
 */
export type TankWay =
  | { readonly kind: 'open' }
  | { readonly kind: 'valves'; readonly valves: readonly PartId[] }
  | { readonly kind: 'pumped'; readonly pumps: readonly PartId[]; readonly valves: readonly PartId[] }
  | { readonly kind: 'none' };

/** What has to be worked on one route, beside what is worked for the tank that is read. */
interface Worked {
  readonly valves: readonly PartId[];
  readonly pumps: readonly PartId[];
  /** Every pump of its own sends it into a tank. */
  readonly intoTank: boolean;
}

/**
 * The way from a tank to any of `ends` (the boiler, the main burners) that needs the least worked, following the lines
 * against the flow. What stands on the ways of the tank `beside` is worked for that one anyway.
 */
export function wayBeside(
  car: Pick<Car, 'parts' | 'plant'>,
  tank: PartId,
  beside: PartId,
  ends: readonly PartId[],
  use: PipeFilter,
): TankWay {
  const from = (start: PartId) => ends.flatMap((end) => routesTo(car.plant, end, (id) => id === start, use));
  const shared = new Set(from(beside).flat());
  const ways = from(tank)
    .map((route) => workedOn(car, route, shared))
    .filter(({ intoTank }) => intoTank)
    .sort((a, b) => a.pumps.length - b.pumps.length || a.valves.length - b.valves.length);
  const [best] = ways;
  if (best === undefined) return { kind: 'none' };
  const { pumps, valves } = best;
  if (pumps.length > 0) return { kind: 'pumped', pumps, valves };
  return valves.length > 0 ? { kind: 'valves', valves } : { kind: 'open' };
}

function workedOn({ parts }: Pick<Car, 'parts'>, route: Route, shared: ReadonlySet<PartId>): Worked {
  const own = route.filter((id) => !shared.has(id));
  const ofKind = (kind: string) => own.filter((id) => parts.get(id)?.kind === kind);
  const pumps = ofKind('pump');
  const lastPump = Math.max(-1, ...pumps.map((id) => route.indexOf(id)));
  const intoTank = pumps.length === 0 || route.slice(lastPump).some((id) => parts.get(id)?.kind === 'tank');
  return { valves: ofKind('valve'), pumps, intoTank };
}
