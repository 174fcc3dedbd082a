/** The cushion of air of a tank that is then pumped full: does it come into the band when the fuel is in? */
import { atmosphere } from '../../quantity/base-units';
import { printBoth } from '../../quantity/print';
import { quantity } from '../../quantity/quantity';
import type { CarSpec } from '../schema/carSpec';
import { type Finding, finding, type SenseCheck } from './finding';

/** Air pressed together by the fuel, by Boyle's law, at sea level: too little stays below the band, too much goes past it. */
export const checkCushion: SenseCheck = ({ tanks }, source) =>
  Object.entries(tanks).flatMap(([id, tank]) => {
    const found = besideBand(id, tank);
    return found === undefined ? [] : [finding(source, found)];
  });

function besideBand(id: string, tank: CarSpec['tanks'][string]): Finding | undefined {
  const { name, cushion, pressure, capacity, 'fill-to': fillTo } = tank;
  if (cushion === undefined) return undefined;
  const at = {
    code: 'spec-cushion',
    path: ['tanks', id, 'cushion'],
    found: `\`${cushion.written}\``,
  } as const;
  if (pressure === undefined || fillTo === undefined || fillTo.si >= capacity.si)
    return {
      ...at,
      message: `nothing says how far the cushion of the ${name} is pressed together`,
      expected: '`pressure`, and a `fill-to` of less than the capacity, beside `cushion`',
      mend: 'give both, or take `cushion` out',
    };
  const pressed = (cushion.si + atmosphere) * (capacity.si / (capacity.si - fillTo.si)) - atmosphere;
  if (pressed >= pressure.from.si && pressed <= pressure.to.si) return undefined;
  const right = (pressure.from.si + atmosphere) * (1 - fillTo.si / capacity.si) - atmosphere;
  const most = (pressure.to.si + atmosphere) * (1 - fillTo.si / capacity.si) - atmosphere;
  return {
    ...at,
    severity: 'remark',
    message: `with its fuel in, the ${name} would stand ${pressed < pressure.from.si ? 'below' : 'above'} its band`,
    expected: `${gauge(right)} to ${gauge(most)}, so that ${fillTo.written} of fuel bring it from ${pressure.from.written} to ${pressure.to.written}`,
    mend: 'read the gauge after pumping air into the empty tank, and again with the fuel in',
  };
}

const gauge = (si: number) =>
  printBoth(quantity('gaugePressure', si), ['us', 'metric']).replaceAll('\u00a0', ' ');
