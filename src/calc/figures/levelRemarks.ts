/** What to measure so that the boiler's levels can be drawn: worth reading, never an error. */
import type { Car } from '../../car/car';
import type { Diagnostic } from '../../diagnostic/diagnostic';

/** Heights that are wanting: all of them, or those of something that the car has. A boiler without such a level is asked nothing. */
export function levelRemarks(car: Car): readonly Diagnostic[] {
  const { heights } = car.spec.boiler;
  if (heights === undefined) return noHeights(car);
  const listed = new Set(heights.cocks?.map(({ valve }) => valve));
  const lacking = [
    ...tryCocks(car).flatMap((id) =>
      listed.has(id) ? [] : [`the hole of the ${car.parts.get(id)?.name ?? id}, under \`cocks\``],
    ),
    ...(hasGlass(car) && heights.glass === undefined
      ? ['the lowest and the highest water that can be seen in the glass, under `glass`']
      : []),
    ...(hasCutOff(car) && heights['low-water-cut'] === undefined
      ? ['the level at which the low-water cut-off acts, as `low-water-cut`']
      : []),
  ];
  if (lacking.length === 0) return [];
  return [
    {
      code: 'figure-levels-unknown',
      severity: 'remark',
      at: car.spotOf('boiler.heights'),
      message: 'the drawing of the boiler’s levels lacks something that the car has',
      expected: lacking.join('; '),
      mend: 'measure it up from the same mark as the others',
    },
  ];
}

function noHeights(car: Car): readonly Diagnostic[] {
  if (!hasGlass(car) && tryCocks(car).length === 0) return [];
  return [
    {
      code: 'figure-levels-unknown',
      severity: 'remark',
      at: car.spotOf('boiler.lowest-level'),
      message: 'there is no drawing of the boiler’s levels, as no heights are given',
      expected: [
        'under `heights`, from one mark up: the top, the lowest safe level, the lowest and the working level',
        ...(hasGlass(car) ? ['both ends of what is seen of the glass'] : []),
        ...(tryCocks(car).length > 0 ? ['the hole of each try cock'] : []),
        ...(hasCutOff(car) ? ['where the low-water cut-off acts'] : []),
      ].join('; '),
      mend: 'with the car level and cold, measure up from one mark on the boiler, along the shell or with a clear hose of water',
    },
  ];
}

/** Valves on which the level of a steaming boiler is read. */
function tryCocks({ spec }: Car): readonly string[] {
  return spec.boiler.level.flatMap(({ gauge, when }) =>
    when !== 'cold' && gauge in spec.valves ? [gauge] : [],
  );
}

function hasGlass({ spec }: Car): boolean {
  return spec.boiler.level.some(({ gauge }) => spec.gauges[gauge]?.kind === 'glass');
}

function hasCutOff({ spec }: Car): boolean {
  return Object.values(spec.devices).some(({ kind }) => kind === 'low-water-cut-off');
}
