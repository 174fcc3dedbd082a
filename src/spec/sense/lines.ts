/** Lines: every part on one, no loose ends, no jump past a valve or device. */
import { entryOf } from '../entry';
import { type Named, namedThings } from '../named';
import type { CarSpec } from '../schema/carSpec';
import type { PartKind } from '../schema/field';
import type { SpecPath } from '../source';
import { type Finding, finding, type SenseCheck } from './finding';

/** Kinds of part that belong on a line. */
const pipedKinds: readonly PartKind[] = [
  'tank',
  'burner',
  'vaporizer',
  'pump',
  'valve',
  'device',
  'boiler',
  'superheater',
  'condenser',
  'feed-heater',
  'engine',
  'fitting',
];

/** Parts where a line may begin without another line leading there. */
const sourceKinds: readonly PartKind[] = ['tank', 'boiler', 'outside'];

/** Parts where a line may end without another line leading on. */
const endKinds: readonly PartKind[] = ['tank', 'boiler', 'burner', 'engine', 'gauge', 'outside'];

/** Parts from which nothing flows on. */
const lastKinds: readonly PartKind[] = ['burner', 'outside'];

/** Every part that carries something is on a line. */
export const checkOnLines: SenseCheck = (spec, source) => {
  const onLines = new Set(spec.lines.flatMap((line) => line.through));
  return namedThings(spec)
    .filter((thing) => pipedKinds.includes(thing.kind) && !onLines.has(thing.id) && !standsAlone(thing, spec))
    .map((thing) =>
      finding(source, {
        code: 'spec-off-line',
        path: thing.path,
        message: `${thing.name ?? thing.id} is on no line`,
        expected: `\`${thing.id}\` in the \`through\` of at least one line`,
        mend:
          thing.kind === 'valve'
            ? 'add it to the line it shuts, or take it out if the car has none; a valve on no line can isolate nothing'
            : 'add it to the line it belongs to, or take it out if the car has none',
      }),
    );
};

/** A tank of cylinder oil that is poured from by hand, and a fitting of kind `other`, need no pipe. */
function standsAlone(thing: Named, spec: CarSpec): boolean {
  if (thing.kind === 'tank') return entryOf(spec.tanks, thing.id)?.holds === 'cylinder-oil';
  if (thing.kind === 'pump')
    return entryOf(spec.pumps, thing.id)?.moves === 'air' || entryOf(spec.pumps, thing.id)?.moves === 'oil';
  return thing.kind === 'fitting' && entryOf(spec.fittings, thing.id)?.kind === 'other';
}

/** No line passes a part twice; each begins where something comes from and ends where it goes. */
export const checkLineEnds: SenseCheck = (spec, source) => {
  const kinds = new Map(namedThings(spec).map((thing) => [thing.id, thing.kind]));
  const kindOf = (id: string): PartKind => kinds.get(id) ?? 'outside';
  const joins = joinsOf(spec);
  return spec.lines.flatMap((line, index) => {
    const first = line.through[0];
    const last = line.through.at(-1);
    const found: Finding[] = repeats(line.through, index, kindOf);
    line.through.slice(1, -1).forEach((id, step) => {
      if (lastKinds.includes(kindOf(id))) found.push(flowsOn(id, ['lines', index, 'through', step + 1]));
    });
    if (first !== undefined && !sourceKinds.includes(kindOf(first)) && !joins.reached.has(first))
      found.push(looseStart(first, ['lines', index, 'through', 0]));
    if (last !== undefined && !endKinds.includes(kindOf(last)) && !joins.left.has(last))
      found.push(looseEnd(last, ['lines', index, 'through', line.through.length - 1]));
    return found.map((each) => finding(source, each));
  });
};

/** Parts that some line leads to, and parts that some line leads on from. */
function joinsOf(spec: CarSpec) {
  return {
    reached: new Set(spec.lines.flatMap((line) => line.through.slice(1))),
    left: new Set(spec.lines.flatMap((line) => line.through.slice(0, -1))),
  };
}

function repeats(through: readonly string[], index: number, kindOf: (id: string) => PartKind): Finding[] {
  const seen = new Set<string>();
  return through.flatMap((id, step): Finding[] => {
    if (!seen.has(id) || kindOf(id) === 'outside') {
      seen.add(id);
      return [];
    }
    return [
      {
        code: 'spec-line-repeats',
        path: ['lines', index, 'through', step],
        message: `this line passes through \`${id}\` twice`,
        expected: 'each part once in a line',
        mend: 'if the pipe really comes back, write the way back as a line of its own',
      },
    ];
  });
}

function flowsOn(id: string, path: SpecPath): Finding {
  return {
    code: 'spec-line-ends',
    path,
    message: `this line goes on past \`${id}\`, where every flow ends`,
    expected: `\`${id}\` at the beginning or the end of a line`,
    mend: 'end the line here, and write what comes after it as a line of its own',
  };
}

function looseStart(id: string, path: SpecPath): Finding {
  return {
    code: 'spec-line-ends',
    path,
    message: `this line begins at \`${id}\`, and nothing leads there`,
    expected: 'a tank, the boiler, `open-air`, or a part that another line leads to',
    mend: 'begin the line where its fluid comes from',
  };
}

function looseEnd(id: string, path: SpecPath): Finding {
  return {
    code: 'spec-line-ends',
    path,
    message: `this line ends at \`${id}\`, and nothing leads on`,
    expected:
      'a burner, the boiler, the engine, a tank, a gauge, `open-air`, `ground`, or a part from which another line leads on',
    mend: 'write on to where its fluid goes',
  };
}

/** No line runs straight between two parts that another line of the same fluid joins through a valve or a device. */
export const checkJumps: SenseCheck = (spec, source) => {
  const linesOf = new Map<string, number[]>();
  spec.lines.forEach((line, index) => {
    for (const id of new Set(line.through)) linesOf.set(id, [...(linesOf.get(id) ?? []), index]);
  });
  return spec.lines.flatMap((line, index) =>
    line.through.slice(1).flatMap((to, step) => {
      const from = line.through[step];
      if (from === undefined) return [];
      for (const other of linesOf.get(to) ?? []) {
        const passed = other === index ? [] : passedOver(spec, other, line.carries, from, to);
        if (passed.length === 0) continue;
        return [
          jump({ from, to, passed, otherLine: source.spotOfValue(['lines', other]).line }, [
            'lines',
            index,
            'through',
            step + 1,
          ]),
        ].map((each) => finding(source, each));
      }
      return [];
    }),
  );
};

/** The valves and devices that a line of the same fluid has between two parts. */
function passedOver(
  spec: CarSpec,
  index: number,
  carries: string,
  from: string,
  to: string,
): readonly string[] {
  const line = spec.lines[index];
  if (line === undefined || line.carries !== carries) return [];
  const start = line.through.indexOf(from);
  if (start < 0) return [];
  return line.through
    .slice(start + 1, Math.max(start + 1, line.through.indexOf(to)))
    .filter((id) => entryOf(spec.valves, id) !== undefined || entryOf(spec.devices, id) !== undefined);
}

interface Jump {
  readonly from: string;
  readonly to: string;
  readonly passed: readonly string[];
  readonly otherLine: number;
}

function jump({ from, to, passed, otherLine }: Jump, path: SpecPath): Finding {
  const names = passed.map((id) => `\`${id}\``).join(', ');
  return {
    code: 'spec-line-jumps',
    path,
    message: `this line jumps from \`${from}\` to \`${to}\`, past ${names}`,
    expected: `what the other line (line ${otherLine}) has between them, or a valve of its own`,
    mend: 'put the missing part in; a pipe round a shut valve keeps the burner fed',
  };
}
