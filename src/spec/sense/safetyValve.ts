/** Nothing that can be shut stands between the boiler and its safety valve, nor behind it. */
import { entryOf } from '../entry';
import type { CarSpec } from '../schema/carSpec';
import { finding, type SenseCheck } from './finding';

/**
 * The safety valve blows freely. No stop valve between boiler and safety valve, nor in its discharge: common rule of
 * boiler codes (ASME BPVC Section I, PG-71; from memory).
 */
export const checkSafetyValve: SenseCheck = (spec, source) => {
  const id = spec.boiler['safety-valve'];
  const device = entryOf(spec.devices, id);
  if (device?.kind !== 'safety-valve' || !spec.lines.some((line) => line.through.includes(id))) return [];
  const open = openBelow(spec, 'boiler');
  const behind = [...openBelow(spec, id)].filter((part) => entryOf(spec.valves, part) !== undefined);
  const mend =
    'correct the line; if the car is really piped so, it must not be steamed before that is put right';
  return [
    ...(open.has(id)
      ? []
      : [
          finding(source, {
            code: 'spec-safety-valve-shut',
            path: ['boiler', 'safety-valve'],
            message: `no open way leads from the boiler to ${device.name}`,
            expected: 'a line from `boiler` to it that passes no valve and no other device',
            mend,
          }),
        ]),
    ...behind.map((part) =>
      finding(source, {
        code: 'spec-safety-valve-shut',
        path: ['valves', part],
        message: `${spec.valves[part]?.name ?? part} can shut ${device.name} off from the air`,
        expected: 'no valve behind a safety valve',
        mend,
      }),
    ),
  ];
};

/** Everything reached from a part with the flow, up to and with the first valve, device, pump, tank or end on each way. */
function openBelow(spec: CarSpec, start: string): ReadonlySet<string> {
  const out = new Map<string, string[]>();
  for (const line of spec.lines)
    line.through.slice(1).forEach((to, step) => {
      const from = line.through[step];
      if (from !== undefined) out.set(from, [...(out.get(from) ?? []), to]);
    });
  const stops = (id: string) =>
    [spec.valves, spec.devices, spec.pumps, spec.tanks].some((section) => Object.hasOwn(section, id)) ||
    id === 'open-air' ||
    id === 'ground';
  const reached = new Set([start]);
  for (const id of reached) {
    if (id !== start && stops(id)) continue;
    for (const to of out.get(id) ?? []) reached.add(to);
  }
  reached.delete(start);
  return reached;
}
