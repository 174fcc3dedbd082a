/** What the plumbing diagrams are drawn from: one for fuel, one for water, one for steam, exhaust and oil. */
import type { Car, Part } from '../../car/car';
import type { Fluid } from '../../car/plant';
import type { PlumbingInput, PlumbingPart, SymbolKind } from '../../drawing/plumbing/plumbing';
import type { World } from '../paper';

/** The systems, each with what its pipes carry. */
const systems: readonly {
  readonly name: string;
  readonly shows: 'fuel-of' | 'water-of' | 'steam-of';
  readonly fluids: readonly Fluid[];
}[] = [
  { name: 'plumbing-fuel', shows: 'fuel-of', fluids: ['main fuel', 'pilot fuel', 'air'] },
  { name: 'plumbing-water', shows: 'water-of', fluids: ['water'] },
  { name: 'plumbing-steam', shows: 'steam-of', fluids: ['steam', 'exhaust', 'oil'] },
];

/** The diagrams of the car with every valve as it is parked; a system without pipes is left out. */
export function plumbingInputs({ car, words, language: { messages } }: World): readonly PlumbingInput[] {
  const { spec, plant } = car;
  const shut = new Set(
    Object.entries(spec.valves).flatMap(([id, valve]) => (valve.parked === 'shut' ? [id] : [])),
  );
  return systems.flatMap(({ name, shows: key, fluids }): PlumbingInput[] => {
    const pipes = plant.pipes.filter(({ carries }) => fluids.includes(carries));
    if (pipes.length === 0) return [];
    const ids = [...new Set(pipes.flatMap(({ from, to }) => [from, to]))];
    const parts = ids.map((id) => plumbingPart(id, car));
    const shows = messages.say(key, { car: spec.car.name });
    return [{ name, shows, parts, pipes, shut, say: messages.say, fluidWords: words.fluids }];
  });
}

function plumbingPart(id: string, car: Car): PlumbingPart {
  const part = car.parts.get(id);
  const gauges = Object.entries(car.spec.gauges)
    .filter(([gauge, { of }]) => of === id && !car.plant.out.has(gauge) && !car.plant.into.has(gauge))
    .map(([, { tag, name }]) => tag ?? name);
  return {
    id,
    symbol: part === undefined ? 'plain' : symbolOf(part, car),
    tag: part?.tag ?? '',
    name: part?.name ?? id,
    gauges,
  };
}

const byKind: Partial<Record<Part['kind'], SymbolKind>> = {
  tank: 'tank',
  boiler: 'boiler',
  engine: 'engine',
  burner: 'burner',
  vaporizer: 'coil',
  superheater: 'coil',
  'feed-heater': 'exchanger',
  condenser: 'exchanger',
  pump: 'pump',
  valve: 'valve',
  gauge: 'glass',
};

function symbolOf({ id, kind }: Part, { spec }: Car): SymbolKind {
  if (id === 'ground') return 'ground';
  if (kind === 'outside') return 'open-air';
  if (kind === 'gauge' && spec.gauges[id]?.kind !== 'glass') return 'dial';
  if (kind === 'device') return deviceSymbols[spec.devices[id]?.kind ?? 'check-valve'];
  if (kind === 'fitting') return fittingSymbols[spec.fittings?.[id]?.kind ?? 'other'];
  return byKind[kind] ?? 'plain';
}

const deviceSymbols: Readonly<Record<Car['spec']['devices'][string]['kind'], SymbolKind>> = {
  'steam-automatic': 'automatic',
  'low-water-cut-off': 'automatic',
  'temperature-cut-off': 'automatic',
  'float-valve': 'automatic',
  'check-valve': 'check-valve',
  'relief-valve': 'relief-valve',
  'safety-valve': 'relief-valve',
};

const fittingSymbols: Readonly<Record<NonNullable<Car['spec']['fittings']>[string]['kind'], SymbolKind>> = {
  strainer: 'strainer',
  coil: 'coil',
  cross: 'joint',
  tee: 'joint',
  muffler: 'muffler',
  outlet: 'plain',
  'hose-joint': 'joint',
  other: 'plain',
};
