/** One fluid to a pipe, a valve, a pump, a device and a tank. */
import { entryOf } from '../entry';
import { namedThings } from '../named';
import type { CarSpec } from '../schema/carSpec';
import type { PartKind } from '../schema/field';
import { type Finding, finding, type SenseCheck } from './finding';
import { fuelGraph, isFuel } from './fuelGraph';

type Line = CarSpec['lines'][number];
type Fluid = Line['carries'];

/** Parts with two sides, or in which one fluid becomes another. */
const mixingKinds: readonly PartKind[] = [
  'boiler',
  'engine',
  'superheater',
  'condenser',
  'feed-heater',
  'vaporizer',
  'burner',
  'tank',
  'outside',
  'gauge',
];

/** Fluids that may not share a valve, pump or pipe. Used steam is still steam. */
function family(fluid: Fluid): string {
  return fluid === 'exhaust' ? 'steam' : fluid;
}

/**
 * A tank’s lines carry what it holds, a pump’s what it moves, and no part carries two fluids. Main and pilot fuel
 * may share a part where both are one liquid from one supply, and may meet in a fitting.
 */
export const checkFluids: SenseCheck = (spec, source) => {
  const kinds = new Map(namedThings(spec).map((thing) => [thing.id, thing.kind]));
  const graph = fuelGraph(spec);
  const oneFuel = (id: string, fluids: readonly Fluid[]) =>
    fluids.every(isFuel) && (kinds.get(id) === 'fitting' || graph.fuelsAbove(id).size <= 1);
  const first = new Map<string, { readonly fluid: Fluid; readonly line: number }>();
  return spec.lines.flatMap((line, index) =>
    line.through.flatMap((id, step) => {
      const path = ['lines', index, 'through', step];
      if (drivesPump(id, line, step, spec)) return [];
      const clash = tankClash(id, line, step, spec) ?? pumpClash(id, line, spec);
      if (clash !== undefined) return [finding(source, { code: 'spec-two-fluids', path, ...clash })];
      if (mixingKinds.includes(kinds.get(id) ?? 'outside')) return [];
      const before = first.get(id);
      if (before === undefined) {
        first.set(id, { fluid: line.carries, line: index });
        return [];
      }
      if (family(before.fluid) === family(line.carries) || oneFuel(id, [before.fluid, line.carries]))
        return [];
      const otherLine = source.spotOfValue(['lines', before.line]).line;
      return [
        finding(source, {
          code: 'spec-two-fluids',
          path,
          message: `\`${id}\` carries ${line.carries} here and ${before.fluid} in line ${otherLine}`,
          expected: 'one fluid to a part',
          mend: 'correct `carries`, or name the right part',
        }),
      ];
    }),
  );
};

type Clash = Pick<Finding, 'message' | 'expected' | 'mend'>;

/** A tank that holds something other than its line carries. Steam and used steam may be led into a water tank. */
function tankClash(id: string, line: Line, step: number, spec: CarSpec): Clash | undefined {
  const tank = entryOf(spec.tanks, id);
  if (tank === undefined || line.carries === 'air') return undefined;
  const clash = (what: string): Clash => ({
    message: `${tank.name} holds ${what}, but this line carries ${line.carries}`,
    expected: 'a line that carries what the tank holds',
    mend: 'correct `carries`, or what the tank `holds`',
  });
  if (tank.holds === 'water')
    return line.carries === 'water' || (family(line.carries) === 'steam' && step > 0)
      ? undefined
      : clash('water');
  if (tank.holds === 'cylinder-oil') return line.carries === 'oil' ? undefined : clash('cylinder oil');
  return isFuel(line.carries) ? undefined : clash(entryOf(spec.fuels, tank.holds)?.name ?? tank.holds);
}

/** What a pump for each kind of work may stand in. */
const pumped: Readonly<Record<CarSpec['pumps'][string]['moves'], readonly Fluid[]>> = {
  water: ['water'],
  fuel: ['main fuel', 'pilot fuel'],
  air: ['air'],
  oil: ['oil'],
};

/** The steam that drives a pump, led to it, and what it has used, led away. */
function drivesPump(id: string, line: Line, step: number, spec: CarSpec): boolean {
  if (entryOf(spec.pumps, id)?.drive !== 'steam') return false;
  const isEnd = step === line.through.length - 1;
  return (line.carries === 'steam' && isEnd) || (line.carries === 'exhaust' && step === 0);
}

function pumpClash(id: string, line: Line, spec: CarSpec): Clash | undefined {
  const pump = entryOf(spec.pumps, id);
  if (pump === undefined || pumped[pump.moves].includes(line.carries)) return undefined;
  return {
    message: `${pump.name} moves ${pump.moves}, but this line carries ${line.carries}`,
    expected: 'a line that carries what the pump moves',
    mend: 'correct `carries`, or what the pump `moves`',
  };
}
