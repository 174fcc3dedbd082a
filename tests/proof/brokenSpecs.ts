/** Specs broken on purpose: lines, valves, figures. Each is text again, read and proven like any keeper’s. */
import { parse, stringify } from 'yaml';
import { buildCar } from '../../src/car/build';
import { hasErrors } from '../../src/diagnostic/diagnostic';
import { expandProcedures } from '../../src/procedure/expand';
import { chain } from '../../src/proof/chain';
import { breachesOfCar } from '../../src/proof/check';
import { emergencyRuns } from '../../src/proof/emergencies';
import { wayOutOf } from '../../src/proof/escape';
import { Experience } from '../../src/proof/experience';
import { carFindings, dayFindings, emergencyFindings, wayOutFindings } from '../../src/proof/findings';
import { modelOf } from '../../src/proof/model';
import { stepFaults } from '../../src/proof/stepFaults';
import { valvesNotKnown } from '../../src/proof/valvesKnown';
import { loadSpec } from '../../src/spec/load';
import { demoCar, textOf } from '../cars/demo';
import { library, theDay } from './library';

interface Line {
  readonly carries: string;
  readonly through: readonly string[];
}

/** As much of a spec’s data as is broken here. */
interface Data {
  readonly lines: readonly Line[];
  readonly valves: Readonly<Record<string, { readonly parked: string; readonly place: string }>>;
  readonly boiler: Readonly<Record<string, unknown>>;
  readonly devices: Readonly<Record<string, Readonly<Record<string, unknown>>>>;
  readonly gauges: Readonly<Record<string, Readonly<Record<string, unknown>>>>;
  readonly tanks: Readonly<Record<string, { readonly pressure?: Readonly<Record<string, unknown>> }>>;
}

/** One broken spec. */
export interface BrokenSpec {
  readonly kind:
    | 'part taken out of a line'
    | 'parts of a line swapped'
    | 'line left out'
    | 'parked turned round'
    | 'figure doubled'
    | 'figure halved';
  readonly what: string;
  readonly text: string;
}

const dangerous = new Set(['main fuel', 'pilot fuel', 'water', 'steam']);

/** Every broken spec of a demo car. */
export function brokenSpecs(name: string): readonly BrokenSpec[] {
  const data = parse(textOf(`cars/${name}.yaml`)) as Data;
  const made = (kind: BrokenSpec['kind'], what: string, change: Partial<Data>): BrokenSpec => ({
    kind,
    what,
    text: stringify({ ...data, ...change }),
  });
  const withLine = (index: number, through: readonly string[]) => ({
    lines: data.lines.map((line, at) => (at === index ? { ...line, through } : line)),
  });
  const lines = data.lines.flatMap((line, index) => {
    if (!dangerous.has(line.carries)) return [];
    const { through } = line;
    const where = `${line.carries}: ${through.join(' > ')}`;
    const without = through.map((part, at) =>
      made(
        'part taken out of a line',
        `${part} out of ${where}`,
        withLine(index, [...through.slice(0, at), ...through.slice(at + 1)]),
      ),
    );
    const swapped = through
      .slice(1)
      .map((part, at) =>
        made(
          'parts of a line swapped',
          `${through[at]} and ${part} in ${where}`,
          withLine(index, [...through.slice(0, at), part, through[at] ?? '', ...through.slice(at + 2)]),
        ),
      );
    return [
      ...without,
      ...swapped,
      made('line left out', where, { lines: data.lines.filter((_, at) => at !== index) }),
    ];
  });
  const parked = Object.entries(data.valves).map(([id, valve]) =>
    made('parked turned round', id, {
      valves: { ...data.valves, [id]: { ...valve, parked: valve.parked === 'open' ? 'shut' : 'open' } },
    }),
  );
  return [...lines, ...parked, ...figures(data, made)];
}

type Made = (kind: BrokenSpec['kind'], what: string, change: Partial<Data>) => BrokenSpec;

/** Every pressure, doubled and halved. */
function figures(data: Data, made: Made): readonly BrokenSpec[] {
  const both = (
    what: string,
    written: unknown,
    change: (text: string) => Partial<Data>,
  ): readonly BrokenSpec[] => {
    const found =
      typeof written === 'string' ? /^(about )?([\d.]+) ((?:psi|bar) gauge)$/.exec(written) : null;
    if (found === null) return [];
    const times = (by: number) => `${found[1] ?? ''}${Number(found[2]) * by} ${found[3] ?? ''}`;
    return [made('figure doubled', what, change(times(2))), made('figure halved', what, change(times(0.5)))];
  };
  return [
    ...Object.entries(data.boiler).flatMap(([key, written]) =>
      both(`boiler.${key}`, written, (text) => ({ boiler: { ...data.boiler, [key]: text } })),
    ),
    ...Object.entries(data.devices).flatMap(([id, device]) =>
      both(`devices.${id}.set`, device.set, (text) => ({
        devices: { ...data.devices, [id]: { ...device, set: text } },
      })),
    ),
    ...Object.entries(data.gauges).flatMap(([id, gauge]) =>
      ['from', 'to', 'red-line'].flatMap((key) =>
        both(`gauges.${id}.${key}`, gauge[key], (text) => ({
          gauges: { ...data.gauges, [id]: { ...gauge, [key]: text } },
        })),
      ),
    ),
    ...Object.entries(data.tanks).flatMap(([id, tank]) =>
      ['from', 'to'].flatMap((key) =>
        both(`tanks.${id}.pressure.${key}`, tank.pressure?.[key], (text) => ({
          tanks: { ...data.tanks, [id]: { ...tank, pressure: { ...tank.pressure, [key]: text } } },
        })),
      ),
    ),
  ];
}

/** What refuses a broken spec; nothing if it passes. */
export function refusalOf(name: string, { text }: BrokenSpec): string | undefined {
  const loaded = loadSpec(text, `cars/${name}.yaml`, [
    'kerosene',
    'gasoline',
    'naphtha',
    'diesel',
    ...Object.keys(demoCar(name).spec.liquids ?? {}),
  ]);
  if (!loaded.ok) return loaded.problems[0]?.code ?? 'spec';
  const car = buildCar(loaded.value);
  const expanded = expandProcedures(car, library, { system: car.spec.print.units.first });
  if (!expanded.ok) return expanded.problems[0]?.code ?? 'procedures';
  const model = modelOf(car);
  const experience = new Experience(model);
  const day = chain(experience, expanded.value, theDay());
  const wayOut = expanded.value.find((procedure) => procedure.id === theDay().wayOut);
  const found = [
    ...carFindings(model, breachesOfCar(model, experience.book)),
    ...stepFaults(model, expanded.value),
    ...dayFindings(model, day),
    ...emergencyFindings(model, emergencyRuns(experience, expanded.value, day, theDay())),
    ...valvesNotKnown(model, day),
    ...wayOutFindings(model, wayOut, wayOut === undefined ? undefined : wayOutOf(experience, day, wayOut)),
    ...expanded.remarks,
    ...loaded.remarks,
  ];
  return found.find((each) => hasErrors([each]))?.code ?? found[0]?.code;
}
