/** Lines: every part on one, no loose ends, no jump past a valve, one fluid to a pipe. */
import { namedThings, type Named } from '../references';
import type { CarSpec } from '../schema/carSpec';
import type { PartKind } from '../schema/field';
import { type Finding, finding, type SenseCheck } from './finding';

type Line = CarSpec['lines'][number];
type Fluid = Line['carries'];

/** Kinds of part that belong on a line. */
const pipedKinds: readonly PartKind[] = ['tank', 'burner', 'vaporizer', 'pump', 'valve', 'device', 'boiler', 'superheater', 'condenser', 'feed-heater', 'engine', 'fitting'];

/** Parts where a line may begin without another line leading there. */
const sourceKinds: readonly PartKind[] = ['tank', 'boiler', 'outside'];

/** Parts where a line may end without another line leading on. */
const endKinds: readonly PartKind[] = ['tank', 'boiler', 'burner', 'engine', 'gauge', 'outside'];

/** Parts with two sides, or in which one fluid becomes another. */
const mixingKinds: readonly PartKind[] = ['boiler', 'engine', 'superheater', 'condenser', 'feed-heater', 'vaporizer', 'burner', 'tank', 'outside', 'gauge'];

/** Every part that carries something is on a line. */
export const checkOnLines: SenseCheck = (spec, source) => {
  const onLines = new Set(spec.lines.flatMap((line) => line.through));
  return namedThings(spec)
    .filter((thing) => pipedKinds.includes(thing.kind) && !onLines.has(thing.id) && !standsAlone(thing, spec))
    .map((thing) => finding(source, {
      code: 'spec-off-line', path: thing.path, message: `${thing.name ?? thing.id} is on no line`,
      expected: `\`${thing.id}\` in the \`through\` of at least one line`,
      mend: thing.kind === 'valve' ? 'add it to the line it shuts; a valve on no line can isolate nothing' : 'add it to the line it belongs to',
    }));
};

/** A tank of cylinder oil that is poured from by hand, and a fitting of kind `other`, need no pipe. */
function standsAlone(thing: Named, spec: CarSpec): boolean {
  if (thing.kind === 'tank') return spec.tanks[thing.id]?.holds === 'cylinder-oil';
  if (thing.kind === 'pump') return spec.pumps[thing.id]?.moves === 'air' || spec.pumps[thing.id]?.moves === 'oil';
  return thing.kind === 'fitting' && spec.fittings?.[thing.id]?.kind === 'other';
}

/** No line passes a part twice; each begins and ends somewhere. */
export const checkLineEnds: SenseCheck = (spec, source) => {
  const kinds = new Map(namedThings(spec).map((thing) => [thing.id, thing.kind]));
  const kindOf = (id: string): PartKind => kinds.get(id) ?? 'outside';
  const elsewhere = (id: string, index: number) => spec.lines.some((line, other) => other !== index && line.through.includes(id));
  return spec.lines.flatMap((line, index) => {
    const found: Finding[] = [];
    line.through.forEach((id, step) => {
      if (line.through.indexOf(id) !== step && kindOf(id) !== 'outside') {
        found.push({
          code: 'spec-line-repeats', path: ['lines', index, 'through', step], message: `this line passes through \`${id}\` twice`,
          expected: 'each part once in a line', mend: 'if the pipe really comes back, write the way back as a line of its own',
        });
      }
    });
    const first = line.through[0];
    const last = line.through.at(-1);
    if (first !== undefined && !sourceKinds.includes(kindOf(first)) && !elsewhere(first, index)) {
      found.push({
        code: 'spec-line-ends', path: ['lines', index, 'through', 0], message: `this line begins at \`${first}\`, and nothing leads there`,
        expected: 'a tank, the boiler, `open-air`, or a part that another line passes through', mend: 'begin the line where its fluid comes from',
      });
    }
    if (last !== undefined && !endKinds.includes(kindOf(last)) && !elsewhere(last, index)) {
      found.push({
        code: 'spec-line-ends', path: ['lines', index, 'through', line.through.length - 1], message: `this line ends at \`${last}\`, and nothing leads on`,
        expected: 'a burner, the boiler, the engine, a tank, a gauge, `open-air`, `ground`, or a part that another line passes through',
        mend: 'write on to where its fluid goes',
      });
    }
    return found.map((each) => finding(source, each));
  });
};

/** No line runs straight between two parts that another line of the same fluid joins through a valve. */
export const checkJumps: SenseCheck = (spec, source) =>
  spec.lines.flatMap((line, index) =>
    line.through.slice(1).flatMap((to, step) => {
      const from = line.through[step];
      const other = spec.lines.find((each, at) => at !== index && each.carries === line.carries && valvesBetween(each, from, to, spec).length > 0);
      if (from === undefined || other === undefined) return [];
      const passed = valvesBetween(other, from, to, spec);
      return [finding(source, {
        code: 'spec-line-jumps', path: ['lines', index, 'through', step + 1],
        message: `this line jumps from \`${from}\` to \`${to}\`, past ${passed.map((id) => `\`${id}\``).join(', ')}`,
        expected: `the valves that the other line (line ${source.spotOfValue(['lines', spec.lines.indexOf(other)]).line}) has between them, or a valve of its own`,
        mend: 'put the missing part in; a pipe round a shut valve keeps the burner fed',
      })];
    }));

function valvesBetween(line: Line, from: string | undefined, to: string, spec: CarSpec): readonly string[] {
  const start = from === undefined ? -1 : line.through.indexOf(from);
  const end = line.through.indexOf(to);
  if (start < 0 || end < 0) return [];
  return line.through.slice(start + 1, end).filter((id) => id in spec.valves);
}

/** Fluids that may not share a valve, pump or pipe; the two fuels meet only where they are burnt or led together. */
function family(fluid: Fluid): string {
  return fluid === 'exhaust' ? 'steam' : fluid;
}

/** One fluid to a pipe, a valve, a pump, a device and a tank. */
export const checkFluids: SenseCheck = (spec, source) => {
  const kinds = new Map(namedThings(spec).map((thing) => [thing.id, thing.kind]));
  const first = new Map<string, { readonly fluid: Fluid; readonly line: number }>();
  return spec.lines.flatMap((line, index) =>
    line.through.flatMap((id, step) => {
      const kind = kinds.get(id) ?? 'outside';
      const clash = tankClash(id, line, spec);
      if (clash !== undefined) {
        return [finding(source, {
          code: 'spec-two-fluids', path: ['lines', index, 'through', step], message: `${spec.tanks[id]?.name ?? id} holds ${clash}, but this line carries ${line.carries}`,
          expected: `a line that carries what the tank holds`, mend: 'correct `carries`, or what the tank `holds`',
        })];
      }
      const meets = kind === 'fitting' && (line.carries === 'main fuel' || line.carries === 'pilot fuel');
      if (mixingKinds.includes(kind) || meets) return [];
      const before = first.get(id);
      if (before === undefined) {
        first.set(id, { fluid: line.carries, line: index });
        return [];
      }
      if (family(before.fluid) === family(line.carries)) return [];
      return [finding(source, {
        code: 'spec-two-fluids', path: ['lines', index, 'through', step], message: `\`${id}\` carries ${line.carries} here and ${before.fluid} in line ${source.spotOfValue(['lines', before.line]).line}`,
        expected: 'one fluid to a part', mend: 'correct `carries`, or name the right part',
      })];
    }));
};

/** What a tank holds, if that is not what the line carries. A fuel tank that feeds both burners may serve either fuel. */
function tankClash(id: string, line: Line, spec: CarSpec): string | undefined {
  const tank = spec.tanks[id];
  if (tank === undefined || line.carries === 'air') return undefined;
  const fuel = line.carries === 'main fuel' || line.carries === 'pilot fuel';
  if (tank.holds === 'water') return line.carries === 'water' || line.carries === 'exhaust' ? undefined : 'water';
  if (tank.holds === 'cylinder-oil') return line.carries === 'oil' ? undefined : 'cylinder oil';
  return fuel ? undefined : (spec.fuels[tank.holds]?.name ?? tank.holds);
}
