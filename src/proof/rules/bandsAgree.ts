import type { Quantity } from '../../quantity/quantity';
import type { Model } from '../model';
import { everyCar, type Rule } from './rule';

/** Rounding between units. */
const slack = 0.01;

type Written = Pick<Quantity, 'si' | 'written'>;

function differ(a: Written | undefined, b: Written | undefined): boolean {
  return (
    a !== undefined &&
    b !== undefined &&
    Math.abs(a.si - b.si) > slack * Math.max(Math.abs(a.si), Math.abs(b.si))
  );
}

/** A tank whose band is not that of its gauge. */
function tankAgainstGauge({ car }: Model): string | undefined {
  for (const gauge of Object.values(car.spec.gauges)) {
    const band = gauge.reads === 'pressure' ? car.spec.tanks[gauge.of]?.pressure : undefined;
    if (band === undefined) continue;
    const name = car.spec.tanks[gauge.of]?.name ?? gauge.of;
    if (differ(band.from, gauge.from))
      return `the ${name} is charged from ${band.from.written}, and the ${gauge.name} has ${gauge.from?.written}`;
    if (differ(band.to, gauge.to))
      return `the ${name} is charged to ${band.to.written}, and the ${gauge.name} has ${gauge.to?.written}`;
  }
  return undefined;
}

/** A relief valve on a charged tank that acts within its band, or only past the red line of its gauge. */
function reliefAgainstBand({ car }: Model): string | undefined {
  for (const [id, device] of Object.entries(car.spec.devices)) {
    if (device.kind !== 'relief-valve' || device.set === undefined) continue;
    const tank = (car.plant.into.get(id) ?? [])
      .map((pipe) => pipe.from)
      .find((from) => car.spec.tanks[from]?.pressure !== undefined);
    const band = car.spec.tanks[tank ?? '']?.pressure;
    if (tank === undefined || band === undefined) continue;
    if (device.set.si < band.to.si * (1 - slack))
      return `the ${device.name} acts at ${device.set.written}, within the band that ends at ${band.to.written}`;
    const red = Object.values(car.spec.gauges).find(
      (gauge) => gauge.of === tank && gauge.reads === 'pressure',
    )?.['red-line'];
    if (red !== undefined && device.set.si > red.si * (1 + slack))
      return `the ${device.name} acts at ${device.set.written}, past the red line at ${red.written}`;
  }
  return undefined;
}

/** A working pressure that the burner does not keep, or that lies outside the band of the steam gauge. */
function steamAgainstGauge({ car }: Model): string | undefined {
  const { boiler, gauges } = car.spec;
  const working = boiler['working-pressure'];
  const cutsIn = boiler['burner-cuts-in'];
  if (cutsIn !== undefined && working.si < cutsIn.si * (1 - slack))
    return `the working pressure is ${working.written}, and the burner cuts in only below ${cutsIn.written}`;
  for (const gauge of Object.values(gauges)) {
    if (
      gauge.of !== 'boiler' ||
      gauge.reads !== 'pressure' ||
      gauge.from === undefined ||
      gauge.to === undefined
    )
      continue;
    const outside = working.si < gauge.from.si * (1 - slack) || working.si > gauge.to.si * (1 + slack);
    if (outside)
      return `the working pressure is ${working.written}, and the band of the ${gauge.name} is ${gauge.from.written} to ${gauge.to.written}`;
  }
  return undefined;
}

export const bandsAgree: Rule = {
  id: 'bands-agree',
  code: 'rule-bands-agree',
  group: 'fuel',
  title: 'bands of tanks, gauges, relief valves and the boiler agree with each other',
  reason:
    'a card that says one figure and a gauge that is marked with another teach people to believe neither',
  mend: 'measure again, and correct the figure that is wrong',
  asks: [],
  appliesTo: everyCar,
  ofCar: (model) => tankAgainstGauge(model) ?? reliefAgainstBand(model) ?? steamAgainstGauge(model),
};
