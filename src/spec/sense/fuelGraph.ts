/** Where fuel can come from, followed against the flow of the fuel lines. */
import { entryOf } from '../entry';
import type { CarSpec } from '../schema/carSpec';

/** The pipes of a spec that carry fuel, asked against the flow. */
export interface FuelGraph {
  /** The fuel tanks from which fuel can come to a part. `past` says which parts it may not pass. */
  tanksAbove(part: string, past?: (id: string) => boolean): readonly string[];
  /** The fuels that can come to a part: those its tanks hold. */
  fuelsAbove(part: string): ReadonlySet<string>;
}

/** True for what a line carries if it is to be burnt. */
export function isFuel(fluid: CarSpec['lines'][number]['carries']): boolean {
  return fluid === 'main fuel' || fluid === 'pilot fuel';
}

/** The fuel lines of a spec. */
export function fuelGraph(spec: CarSpec): FuelGraph {
  const into = new Map<string, Set<string>>();
  for (const line of spec.lines) {
    if (!isFuel(line.carries)) continue;
    line.through.forEach((to, step) => {
      const from = line.through[step - 1];
      if (from !== undefined) into.set(to, (into.get(to) ?? new Set()).add(from));
    });
  }
  const fuelIn = (id: string) => {
    const tank = entryOf(spec.tanks, id);
    return tank !== undefined && entryOf(spec.fuels, tank.holds) !== undefined ? tank.holds : undefined;
  };
  const tanksAbove = (part: string, past: (id: string) => boolean = () => false) => {
    const seen = new Set([part]);
    for (const id of seen) {
      if (id !== part && past(id)) continue;
      for (const above of into.get(id) ?? []) seen.add(above);
    }
    return [...seen].filter((id) => id !== part && fuelIn(id) !== undefined);
  };
  return {
    tanksAbove,
    fuelsAbove: (part) => new Set(tanksAbove(part).flatMap((id) => fuelIn(id) ?? [])),
  };
}
