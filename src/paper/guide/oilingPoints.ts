/** Oiling points of a spec that stand in for a point of the chart: is it there? */
import type { Car } from '../../car/car';
import type { Diagnostic } from '../../diagnostic/diagnostic';
import { nearest } from '../../diagnostic/nearest';

/** An error for each that names a point which the chart has not got. `ids` are the keys of `oiling` in `shared/upkeep.yaml`. */
export function unknownOilingPoints(car: Car, ids: readonly string[]): readonly Diagnostic[] {
  return (car.spec.oiling ?? []).flatMap((point, index): readonly Diagnostic[] => {
    const wanted = point['instead-of'];
    if (wanted === undefined || ids.includes(wanted)) return [];
    const near = nearest(wanted, ids);
    return [
      {
        code: 'spec-oiling',
        severity: 'error',
        at: car.spotOf(`oiling.${index}.instead-of`),
        message: `the oiling chart has no point \`${wanted}\``,
        found: `\`${wanted}\``,
        expected: near === undefined ? `one of ${ids.map((id) => `\`${id}\``).join(', ')}` : `\`${near}\``,
        mend:
          near === undefined
            ? 'name one of them, or take `instead-of` out: the point then stands beside the others'
            : `write \`${near}\``,
      },
    ];
  });
}
