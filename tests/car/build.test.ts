/** From a loaded spec to the car: its parts, places and pipes, and where each stands in the file. */
import { expect, test } from 'vitest';
import { buildCar } from '../../src/car/build';
import { fuelRoutes } from '../../src/car/flow';
import { lineOf, loadedTiny, spoiled, tinySpec } from '../helpers/tinySpec';

const car = buildCar(loadedTiny());

test('every part by its key: single parts, then section by section, then the outside', () => {
  expect([...car.parts.keys()]).toEqual([
    'boiler',
    'engine',
    'water-tank',
    'fuel-tank',
    'pilot-tank',
    'extinguisher',
    'torch',
    'main-burner',
    'pilot-burner',
    'coil',
    'feed-pump',
    'fuel-stop-valve',
    'pilot-valve',
    'throttle',
    'drip-cock',
    'bypass-valve',
    'blow-down-tap',
    'automatic',
    'check-valve',
    'safety-valve',
    'steam-gauge',
    'water-glass',
    'fuel-gauge',
    'pilot-gauge',
    'throttle-lock',
    'hand-brake',
    'strainer',
    'open-air',
    'ground',
  ]);
});

test('a part has its kind, name, tag and place', () => {
  expect(car.parts.get('pilot-valve')).toEqual({
    id: 'pilot-valve',
    kind: 'valve',
    name: 'pilot valve',
    tag: 'F2',
    place: 'dash',
  });
  expect(car.parts.get('boiler')).toEqual({
    id: 'boiler',
    kind: 'boiler',
    name: 'boiler',
    place: 'underneath',
  });
  expect(car.parts.get('open-air')).toEqual({ id: 'open-air', kind: 'outside', name: 'open air' });
});

test('a liquid that shares its key with a part does not take its place', () => {
  const liquid =
    'liquids:\n  strainer: { name: lamp oil, density: 0.8 kg/L, higher-heating-value: 46 MJ/kg, lower-heating-value: 43 MJ/kg, flash-point: 45 °C, starts-boiling: 150 °C, source: the drum }\n\n';
  const other = buildCar(
    loadedTiny(spoiled(['fuels:\n', `${liquid}fuels:\n`], ['liquid: kerosene', 'liquid: strainer'])),
  );
  expect(other.parts.get('strainer')?.kind).toBe('fitting');
});

test('a place has its metres from the front, the centre line and the ground, and its parts', () => {
  const dash = car.places.get('dash');
  expect(dash).toMatchObject({ id: 'dash', name: 'dash', reach: 'seated' });
  expect(dash?.backM).toBeCloseTo(0.9144, 10);
  expect(dash?.rightM).toBe(0);
  expect(dash?.upM).toBeCloseTo(0.9144, 10);
  expect(dash?.parts).toEqual([
    'extinguisher',
    'fuel-stop-valve',
    'pilot-valve',
    'throttle',
    'drip-cock',
    'bypass-valve',
    'steam-gauge',
    'water-glass',
    'fuel-gauge',
    'pilot-gauge',
    'throttle-lock',
    'hand-brake',
  ]);
  const under = car.places.get('underneath');
  expect(under).toMatchObject({ reach: 'opened', how: 'lift the seat cushion' });
  expect(under?.rightM).toBeCloseTo(-0.254, 10);
  expect(under).not.toHaveProperty('upM');
});

test('a pipe for each pair of neighbours on a line, in the direction of flow', () => {
  const pipes = car.plant.pipes.map(
    (pipe) => `${pipe.line}.${pipe.step} ${pipe.from} > ${pipe.to} ${pipe.carries}`,
  );
  expect(pipes).toHaveLength(22);
  expect(pipes.slice(0, 6)).toEqual([
    '0.0 fuel-tank > strainer main fuel',
    '0.1 strainer > fuel-stop-valve main fuel',
    '0.2 fuel-stop-valve > automatic main fuel',
    '0.3 automatic > coil main fuel',
    '0.4 coil > main-burner main fuel',
    '1.0 pilot-tank > pilot-valve pilot fuel',
  ]);
  expect(car.plant.pipes.every((pipe, index) => pipe.index === index)).toBe(true);
  expect(car.plant.out.get('boiler')?.map((pipe) => pipe.to)).toEqual([
    'blow-down-tap',
    'water-glass',
    'throttle',
    'safety-valve',
  ]);
  expect(car.plant.into.get('water-tank')?.map((pipe) => pipe.from)).toEqual(['bypass-valve']);
});

test('a length of pipe that two lines name is one pipe; in two fluids it is two', () => {
  const line = '  - { carries: exhaust, through: [engine, open-air] }\n';
  const twice = buildCar(
    loadedTiny(spoiled([line, `${line}${line}  - { carries: steam, through: [engine, open-air] }\n`])),
  );
  const between = twice.plant.pipes.filter((pipe) => pipe.from === 'engine' && pipe.to === 'open-air');
  expect(between.map((pipe) => [pipe.carries, pipe.line])).toEqual([
    ['exhaust', 9],
    ['steam', 11],
  ]);
});

test('the way of the fuel', () => {
  expect(fuelRoutes(car, 'main-burner')).toEqual([
    ['fuel-tank', 'strainer', 'fuel-stop-valve', 'automatic', 'coil', 'main-burner'],
  ]);
});

test('where a part, a field and a step of a line stand in the file', () => {
  const at = (path: string) => ({ line: car.spotOf(path).line, column: car.spotOf(path).column });
  expect(at('boiler.working-pressure')).toEqual({ line: lineOf(tinySpec, 'working-pressure'), column: 21 });
  expect(at('lines.2.through.3')).toEqual({ line: lineOf(tinySpec, '[pilot-tank, pilot-valve'), column: 63 });
  expect(at('valves.pilot-valve')).toEqual({ line: lineOf(tinySpec, '  pilot-valve:'), column: 3 });
  expect(at('boiler')).toEqual({ line: lineOf(tinySpec, 'boiler:\n'), column: 1 });
  expect(car.spotOf('lines.2.through.3').file).toBe('pipkin.yaml');
});

test('a path that is not there stands at the nearest that is', () => {
  expect(car.spotOf('boiler.steel-mass').line).toBe(car.spotOf('boiler').line);
  expect(car.spotOf('nothing.at.all').line).toBe(lineOf(tinySpec, 'kettlebook: 1'));
});
