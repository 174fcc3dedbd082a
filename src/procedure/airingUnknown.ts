/** A burner of which the spec does not say how long it airs after unburnt fuel was let into it. */
import type { Car } from '../car/car';
import type { Diagnostic } from '../diagnostic/diagnostic';

/** A remark where no burner says it: the papers then leave it to the nose alone. */
export function airingUnknownRemarks(car: Car): readonly Diagnostic[] {
  const [first, ...others] = Object.entries(car.spec.burners);
  if (first === undefined || [first, ...others].some(([, burner]) => burner['airs-in'] !== undefined))
    return [];
  const [id, { name }] = first;
  return [
    {
      code: 'procedure-airing',
      severity: 'remark',
      at: car.spotOf(`burners.${id}`),
      message: `nothing says how long the ${name} airs before it may be lit again`,
      expected: 'an `airs-in`, such as `5 min`',
      mend: 'ask whoever knows this burner, or take the longest time that anybody gives for one like it; until then the papers leave it to the nose alone',
    },
  ];
}
