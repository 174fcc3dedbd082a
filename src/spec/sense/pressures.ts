/** Pressures that must stand in order, so that nothing relies on a device that acts too late. */
import type { Diagnostic } from '../../diagnostic/diagnostic';
import { entryOf } from '../entry';
import type { CarSpec } from '../schema/carSpec';
import type { SpecSource } from '../source';
import { finding, inOrder, isSame, type SenseCheck } from './finding';

/** Burner cut-out below the safety valve, safety valve not above the allowed pressure, bands the right way up. */
export const checkPressures: SenseCheck = (spec, source) => {
  const { boiler, devices } = spec;
  const safety = entryOf(devices, boiler['safety-valve']);
  const safetyPath = ['devices', boiler['safety-valve'], 'set'];
  const code = 'spec-pressures';
  const problems = [
    ...inOrder(source, {
      code,
      low: boiler['working-pressure'],
      high: boiler['burner-cuts-out'],
      mayBeEqual: true,
      lowPath: ['boiler', 'working-pressure'],
      highPath: ['boiler', 'burner-cuts-out'],
      lowName: 'the working pressure',
      highName: 'the pressure at which the burner cuts out',
      why: 'The burner would go out before the working pressure is reached.',
    }),
    ...inOrder(source, {
      code,
      low: boiler['burner-cuts-in'],
      high: boiler['burner-cuts-out'],
      mayBeEqual: false,
      lowPath: ['boiler', 'burner-cuts-in'],
      highPath: ['boiler', 'burner-cuts-out'],
      lowName: 'the pressure at which the burner cuts in',
      highName: 'the pressure at which it cuts out',
      why: 'An automatic opens below the pressure at which it shuts.',
    }),
    ...inOrder(source, {
      code,
      low: boiler['least-to-move'],
      high: boiler['burner-cuts-out'],
      mayBeEqual: false,
      lowPath: ['boiler', 'least-to-move'],
      highPath: ['boiler', 'burner-cuts-out'],
      lowName: 'the least pressure to move at',
      highName: 'the pressure at which the burner cuts out',
      why: 'The car could never be moved.',
    }),
    ...inOrder(source, {
      code,
      low: boiler['blow-down-pressure'],
      high: boiler['working-pressure'],
      mayBeEqual: true,
      lowPath: ['boiler', 'blow-down-pressure'],
      highPath: ['boiler', 'working-pressure'],
      lowName: 'the blow-down pressure',
      highName: 'the working pressure',
      why: 'Blowing down above working pressure empties the boiler faster than it can be watched.',
    }),
    ...inOrder(source, {
      code,
      low: boiler['burner-cuts-out'],
      high: safety?.set,
      mayBeEqual: false,
      lowPath: ['boiler', 'burner-cuts-out'],
      highPath: safetyPath,
      lowName: 'the pressure at which the burner cuts out',
      highName: 'the safety valve’s set pressure',
      why: 'The safety valve would lift before the automatic shuts the burner, and be worn out when it is needed.',
    }),
    ...inOrder(source, {
      code,
      low: safety?.set,
      high: boiler['allowed-pressure'],
      mayBeEqual: true,
      lowPath: safetyPath,
      highPath: ['boiler', 'allowed-pressure'],
      lowName: 'the safety valve’s set pressure',
      highName: 'the allowed pressure',
      why: 'A safety valve set above the allowed pressure protects nothing; the boiler inspector decides what is allowed.',
    }),
  ];
  if (safety !== undefined && safety.kind !== 'safety-valve') {
    problems.push(
      finding(source, {
        code: 'spec-wrong-part',
        path: ['boiler', 'safety-valve'],
        message: `\`${boiler['safety-valve']}\` is a ${safety.kind}, not a safety valve`,
        expected: 'a device of kind `safety-valve`',
        mend: 'name the safety valve, or correct the kind of the device',
      }),
    );
  }
  return [...problems, ...deviceProblems(spec, source), ...bandProblems(spec, source)];
};

const deviceProblems: SenseCheck = (spec, source) =>
  Object.entries(spec.devices).flatMap(([id, device]) => {
    const needsSet = device.kind === 'safety-valve' || device.kind === 'relief-valve';
    const missing =
      needsSet && device.set === undefined
        ? [
            finding(source, {
              code: 'spec-no-set-pressure',
              path: ['devices', id],
              message: `${device.name} has no set pressure`,
              expected: '`set`, as gauge pressure',
              mend: 'add `set`, from the plate or the last test',
            }),
          ]
        : [];
    const automaticTwice =
      device.kind === 'steam-automatic' &&
      device.set !== undefined &&
      !isSame(device.set, spec.boiler['burner-cuts-out'])
        ? [
            finding(source, {
              code: 'spec-pressures',
              path: ['devices', id, 'set'],
              message: `${device.name} is set to ${device.set.written}, but the boiler says the burner cuts out at ${spec.boiler['burner-cuts-out'].written}`,
              found: `\`${device.set.written}\``,
              expected: `\`${spec.boiler['burner-cuts-out'].written}\``,
              mend: 'take `set` out of the device; the boiler’s figure is enough',
            }),
          ]
        : [];
    return [...missing, ...automaticTwice];
  });

const bandProblems: SenseCheck = (spec, source) => [
  ...Object.entries(spec.gauges).flatMap(([id, gauge]) => [
    ...gaugeBand(id, gauge, ['from', 'to'], source),
    ...gaugeBand(id, gauge, ['to', 'red-line'], source),
    ...(gauge.of === 'boiler' ? steamBand(id, gauge, spec, source) : []),
    ...temperatureBand(id, gauge, source),
  ]),
  ...Object.entries(spec.tanks).flatMap(([id, tank]) =>
    inOrder(source, {
      code: 'spec-pressures',
      low: tank.pressure?.from,
      high: tank.pressure?.to,
      mayBeEqual: false,
      lowPath: ['tanks', id, 'pressure', 'from'],
      highPath: ['tanks', id, 'pressure', 'to'],
      lowName: `the lowest pressure of ${tank.name}`,
      highName: 'its highest',
      why: 'There would be no pressure at which it serves.',
    }),
  ),
];

type Gauge = CarSpec['gauges'][string];
type Mark = 'from' | 'to' | 'red-line';

/** Two marks of one gauge, the lower first. A red line may stand at the top of the band. */
function gaugeBand(id: string, gauge: Gauge, [low, high]: readonly [Mark, Mark], source: SpecSource) {
  return inOrder(source, {
    code: 'spec-pressures',
    low: gauge[low],
    high: gauge[high],
    mayBeEqual: high === 'red-line',
    lowPath: ['gauges', id, low],
    highPath: ['gauges', id, high],
    lowName: `\`${low}\` of ${gauge.name}`,
    highName: `\`${high}\``,
    why: 'The card would print a band that no needle can be in.',
  });
}

/** The same of a dial that reads temperature; no other has one. */
function temperatureBand(id: string, { name, reads, temperatures }: Gauge, source: SpecSource): Diagnostic[] {
  if (temperatures === undefined) return [];
  if (reads !== 'temperature')
    return [
      finding(source, {
        code: 'spec-pressures',
        path: ['gauges', id, 'temperatures'],
        message: `${name} has \`temperatures\`, but it reads ${reads}`,
        found: `\`reads: ${reads}\``,
        expected: '`reads: temperature`',
        mend: 'say what it reads; the band of a pressure gauge is `from` and `to`',
      }),
    ];
  const order = (low: Mark, high: Mark) =>
    inOrder(source, {
      code: 'spec-pressures',
      low: temperatures[low],
      high: temperatures[high],
      mayBeEqual: high === 'red-line',
      lowPath: ['gauges', id, 'temperatures', low],
      highPath: ['gauges', id, 'temperatures', high],
      lowName: `\`${low}\` of ${name}`,
      highName: `\`${high}\``,
      why: 'The manual would draw a band that no needle can be in.',
    });
  return [...order('from', 'to'), ...order('to', 'red-line')];
}

/** The band and the red line of a steam gauge stay within what is allowed. */
function steamBand(id: string, gauge: Gauge, spec: CarSpec, source: SpecSource) {
  return (['to', 'red-line'] as const).flatMap((mark) =>
    inOrder(source, {
      code: 'spec-pressures',
      low: gauge[mark],
      high: spec.boiler['allowed-pressure'],
      mayBeEqual: true,
      lowPath: ['gauges', id, mark],
      highPath: ['boiler', 'allowed-pressure'],
      lowName: `\`${mark}\` of ${gauge.name}`,
      highName: 'the allowed pressure',
      why: 'Nothing printed may invite a pressure above the allowed one.',
    }),
  );
}
