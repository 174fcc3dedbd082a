/** The plant as runs of pipe, for a table that can be followed with a finger. */
import type { Car } from '../../car/car';
import type { Fluid } from '../../car/plant';

/** One run of pipe. */
export interface RunContext {
  readonly carries: Fluid;
  readonly name: string;
  readonly parts: readonly { readonly tag: string; readonly name: string; readonly last: boolean }[];
}

/** Every line of the spec, those of one fluid together, in the order main fuel, pilot fuel, water, steam, exhaust, oil, air. */
export function runsContext({ spec, parts }: Car): readonly RunContext[] {
  const order: readonly Fluid[] = ['main fuel', 'pilot fuel', 'water', 'steam', 'exhaust', 'oil', 'air'];
  return order.flatMap((fluid) =>
    spec.lines
      .filter((line) => line.carries === fluid)
      .map((line) => ({
        carries: fluid,
        name: line.name ?? '',
        parts: line.through.map((id, index) => ({
          tag: parts.get(id)?.tag ?? '',
          name: parts.get(id)?.name ?? id,
          last: index === line.through.length - 1,
        })),
      })),
  );
}
