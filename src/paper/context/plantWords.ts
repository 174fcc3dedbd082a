/** The plant as runs of pipe, for a table that can be followed with a finger. */
import type { Car } from '../../car/car';
import type { Fluid } from '../../car/plant';

/** A part that a run of pipe passes. */
export interface RunPart {
  readonly tag: string;
  readonly name: string;
  readonly last: boolean;
}

/** The runs of pipe that one fluid takes, each as its parts in the direction of flow. */
export interface RunsContext {
  readonly carries: Fluid;
  readonly runs: readonly (readonly RunPart[])[];
}

/** Every line of the spec under what it carries: main fuel, pilot fuel, water, steam, exhaust, oil, air. */
export function runsContext({ spec, parts }: Car): readonly RunsContext[] {
  const order: readonly Fluid[] = ['main fuel', 'pilot fuel', 'water', 'steam', 'exhaust', 'oil', 'air'];
  return order
    .map((carries) => ({
      carries,
      runs: spec.lines
        .filter((line) => line.carries === carries)
        .map(({ through }) =>
          through.map((id, index) => ({
            tag: parts.get(id)?.tag ?? '',
            name: parts.get(id)?.name ?? id,
            last: index === through.length - 1,
          })),
        ),
    }))
    .filter(({ runs }) => runs.length > 0);
}
