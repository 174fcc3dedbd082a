/** What gauges, pressure-rise curve and range picture are drawn from, in the keeper's first units. */

import type { DialScale, GaugesInput } from '../../drawing/gauges';
import type { RaisingCurveInput } from '../../drawing/raisingCurve';
import type { RangePictureInput } from '../../drawing/rangePicture';
import { inPrintedUnit } from '../../quantity/print';
import { type Quantity, quantity } from '../../quantity/quantity';
import { terrains } from '../../spec/schema/running';
import type { World } from '../paper';

/** Every gauge of the car. */
export function gaugesInput({ car, phrases, language: { messages, numbers } }: World): GaugesInput {
  const { gauges, car: named } = car.spec;
  const [system = 'metric'] = phrases.systems;
  const value = (figure: Quantity<'gaugePressure'> | Quantity<'temperature'> | undefined) =>
    figure && inPrintedUnit(figure, { system });
  return {
    name: 'gauges',
    of: named.name,
    say: messages.say,
    decimal: numbers.decimal,
    // what a stick shows is its wet end, which tables tell and no picture does
    gauges: Object.values(gauges).flatMap((gauge) => {
      if (gauge.kind === 'stick') return [];
      const marks = gauge.temperatures ?? gauge;
      const [from, to, most] = [value(marks.from), value(marks.to), value(marks['red-line'])];
      const scale: DialScale = {
        unit: phrases.unit(gauge.temperatures === undefined ? 'gaugePressure' : 'temperature', system),
        ...(from === undefined ? {} : { from }),
        ...(to === undefined ? {} : { to }),
        ...(most === undefined ? {} : { redLine: most }),
      };
      const said = (pressure: Quantity<'gaugePressure'>): string => phrases.first(pressure);
      const band =
        gauge.from && gauge.to ? [messages.say('band', { from: said(gauge.from), to: said(gauge.to) })] : [];
      const redLine = gauge['red-line'];
      const never = redLine ? [messages.say('never-past', { value: said(redLine) })] : [];
      const figures = Math.max(from ?? 0, to ?? 0, most ?? 0) > 0;
      return {
        tag: gauge.tag ?? '',
        name: gauge.name,
        kind: gauge.kind,
        ...(figures ? { scale } : {}),
        says: [...band, ...never, ...(gauge['should-read'] === undefined ? [] : [gauge['should-read']])],
      };
    }),
  };
}

/** The pressure-rise curves; none if they could not be worked out. */
export function raisingCurveInputs({
  car,
  figures,
  phrases,
  words,
  language: { messages, numbers },
}: World): readonly RaisingCurveInput[] {
  const { curves } = figures.raising;
  const [first] = curves;
  if (first === undefined) return [];
  const [system = 'metric'] = phrases.systems;
  const shown = (pressure: Quantity<'gaugePressure'>): number => inPrintedUnit(pressure, { system });
  return [
    {
      name: 'raising-curve',
      of: car.spec.car.name,
      unit: phrases.unit('gaugePressure', system),
      say: messages.say,
      decimal: numbers.decimal,
      curves: curves.map(({ start, raising }) => ({
        start: words.start[start],
        points: raising.points.map(({ timeS, gaugePa }) => ({
          minutes: timeS / 60,
          pressure: shown(quantity('gaugePressure', gaugePa)),
        })),
      })),
      checks: first.checks.map(({ at, pressure }) => ({
        pressure: shown(pressure),
        says: phrases.first(pressure),
        due: words['raising-to'][at],
      })),
    },
  ];
}

/** The range picture; none if nobody has measured what the car uses. */
export function rangePictureInputs({
  car,
  figures,
  phrases,
  words,
  language: { messages, numbers },
}: World): readonly RangePictureInput[] {
  const [system = 'metric'] = phrases.systems;
  const shown = (metres: number): number => inPrintedUnit(quantity('distance', metres), { system });
  const liquids = [figures.water, figures.fuel].flatMap((chart) => {
    if (chart === undefined) return [];
    const bars = terrains.flatMap((terrain) => {
      const [distance, perM] = [chart.full.rangeM[terrain], chart.use.byTerrain[terrain].planPerM];
      if (distance === undefined || perM === undefined) return [];
      const reserve = shown(chart.model.reserveM3 / perM);
      return [{ terrain: words.terrain[terrain], distance: shown(distance), reserve }];
    });
    return bars.length === 0 ? [] : [{ liquid: words['range-of'][chart.liquid], bars }];
  });
  if (liquids.length === 0) return [];
  return [
    {
      name: 'range-picture',
      of: car.spec.car.name,
      unit: phrases.unit('distance', system),
      say: messages.say,
      decimal: numbers.decimal,
      liquids,
    },
  ];
}
