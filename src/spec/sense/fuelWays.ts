/** Every burner gets its fuel, gets the fuel it is made for, and can be shut off by hand. */
import type { Diagnostic } from '../../diagnostic/diagnostic';
import { entryOf } from '../entry';
import { finding, type SenseCheck } from './finding';
import { fuelGraph, isFuel } from './fuelGraph';

/** Tanks of fuel on a line, from which nothing comes to any burner: left behind when a burner was taken out, or a line forgotten. */
export const checkFuelTanks: SenseCheck = (spec, source) => {
  const graph = fuelGraph(spec);
  const feeding = new Set(Object.keys(spec.burners).flatMap((burner) => graph.tanksAbove(burner)));
  const onLines = new Set(spec.lines.flatMap(({ through }) => through));
  return Object.entries(spec.tanks).flatMap(([id, tank]) => {
    if (entryOf(spec.fuels, tank.holds) === undefined || feeding.has(id) || !onLines.has(id)) return [];
    return [
      finding(source, {
        code: 'spec-feeds-nothing',
        severity: 'remark',
        path: ['tanks', id],
        message: `${tank.name} feeds no burner`,
        expected: `a line that carries fuel from \`${id}\` on to a burner`,
        mend: 'write the line; or, if the car has no such tank, take it out with its pumps, valves, gauges and lines, or the papers have it filled and pumped up',
      }),
    ];
  });
};

/** The ways of the fuel to each burner. A burner on no line is told of elsewhere. */
export const checkFuelWays: SenseCheck = (spec, source) => {
  const graph = fuelGraph(spec);
  const piped = new Set(
    spec.lines.filter((line) => isFuel(line.carries)).flatMap((line) => line.through.slice(1)),
  );
  return Object.entries(spec.burners).flatMap(([id, burner]) => {
    if (!piped.has(id)) return [];
    const problems: Diagnostic[] = [];
    const fuels = [...graph.fuelsAbove(id)];
    if (fuels.length === 0) {
      problems.push(
        finding(source, {
          code: 'spec-lacks',
          path: ['burners', id],
          message: `no line brings fuel from a tank to ${burner.name}`,
          expected: `a line that carries fuel from a tank to \`${id}\``,
          mend: 'join the fuel lines from the tank forward, in the order of flow',
        }),
      );
    } else if (!fuels.includes(burner.fuel)) {
      const names = fuels.map((fuel) => entryOf(spec.fuels, fuel)?.name ?? fuel);
      problems.push(
        finding(source, {
          code: 'spec-two-fluids',
          path: ['burners', id, 'fuel'],
          message: `${burner.name} burns \`${burner.fuel}\`, but its lines bring ${names.join(' and ')}`,
          expected: fuels.map((fuel) => `\`${fuel}\``).join(' or '),
          mend: 'correct the fuel of the burner, what the tank `holds`, or the lines',
        }),
      );
    }
    const unguarded = graph.tanksAbove(id, (part) => entryOf(spec.valves, part) !== undefined);
    for (const tank of unguarded) {
      problems.push(
        finding(source, {
          code: 'spec-lacks',
          path: ['burners', id],
          message: `fuel comes from ${spec.tanks[tank]?.name ?? tank} to ${burner.name} through no hand valve`,
          expected: 'a valve that shuts the fuel off by hand',
          mend: 'put the valve into the line; if the car has none, it must not be fired',
        }),
      );
    }
    return problems;
  });
};
