/**
 * Duties: what a part is for in the running of the car, worked out from the spec, so that the step library can
 * say "the throttle" or "the pilot’s valves" without knowing any one car.
 */
import type { Car, PartId } from '../car/car';
import { carrying, partsInFlowOrder, routesTo } from '../car/flow';
import type { Fluid, Pipe } from '../car/plant';
import {
  allFuelValves,
  burnersFor,
  fuelPumps,
  fuelTanks,
  handValveOf,
  lastValvesTo,
  pumpedTanks,
  startingValves,
  supplyValves,
  valvesTo,
} from './fuelWay';
import { oncePerCar } from './oncePerCar';

/** One duty of the whole car. */
export interface Duty {
  /** Which parts have it, in plain words, for `docs/procedures.md`. */
  readonly meaning: string;
  /** The parts that have it, in their own order: of flow for valves on a line, of the spec otherwise. */
  readonly parts: (car: Car) => readonly PartId[];
}

type Keyed<T> = Readonly<Record<string, T>> | undefined;

function keysWhere<T>(entries: Keyed<T>, test: (entry: T, id: PartId) => boolean): readonly PartId[] {
  return Object.entries(entries ?? {}).flatMap(([id, entry]) => (test(entry, id) ? [id] : []));
}

function unique(ids: readonly (PartId | undefined)[]): readonly PartId[] {
  return [...new Set(ids.filter((id) => id !== undefined))];
}

function without(ids: readonly PartId[], out: readonly PartId[]): readonly PartId[] {
  return ids.filter((id) => !out.includes(id));
}

function valvesOf(car: Car, ids: readonly PartId[]): readonly PartId[] {
  return ids.filter((id) => id in car.spec.valves);
}

const mains = (car: Car) => burnersFor(car, 'main');
const pilots = (car: Car) => burnersFor(car, 'pilot');
const pilotValves = (car: Car) =>
  inFuelOrder(
    car,
    pilots(car).flatMap((id) => valvesTo(car, id)),
  );
const mainValves = (car: Car) =>
  inFuelOrder(
    car,
    mains(car).flatMap((id) => valvesTo(car, id)),
  );
const lastOf = (car: Car, burners: readonly PartId[]) =>
  inFuelOrder(
    car,
    burners.flatMap((id) => lastValvesTo(car, id)),
  );
const glasses = (car: Car) =>
  unique(car.spec.boiler.level.map((way) => way.gauge)).filter((id) => car.spec.gauges[id] !== undefined);
const feedBypasses = (car: Car) =>
  unique(Object.values(car.spec.pumps).map((pump) => (pump.moves === 'water' ? pump.bypass : undefined)));
const waterTanks = (car: Car) => keysWhere(car.spec.tanks, (tank) => tank.holds === 'water');

function inFuelOrder(car: Car, ids: readonly PartId[]): readonly PartId[] {
  return allFuelValves(car).filter((id) => ids.includes(id));
}

/** Pipes of these fluids that do not come from outside the car, so that no way leads out of one tap and in at another. */
function inside(...fluids: readonly Fluid[]): (pipe: Pipe) => boolean {
  const use = carrying(...fluids);
  return (pipe) => use(pipe) && pipe.from !== 'open-air' && pipe.from !== 'ground';
}

function feedValves(car: Car): readonly PartId[] {
  const tanks = waterTanks(car);
  const ways = routesTo(car.plant, 'boiler', (id) => tanks.includes(id), inside('water'));
  return without(valvesOf(car, partsInFlowOrder(ways)), feedBypasses(car));
}

function steamWay(car: Car): readonly PartId[] {
  return valvesOf(
    car,
    partsInFlowOrder(routesTo(car.plant, 'engine', (id) => id === 'boiler', inside('steam'))),
  );
}

function onLines(car: Car, fluids: readonly Fluid[]): readonly PartId[] {
  const use = carrying(...fluids);
  return valvesOf(car, unique(car.plant.pipes.filter(use).flatMap((pipe) => [pipe.from, pipe.to])));
}

function drainsOf(car: Car, fluids: readonly Fluid[]): readonly PartId[] {
  const use = carrying(...fluids);
  const known = [...feedValves(car), ...feedBypasses(car), ...bottomAndTop(car), ...car.spec.engine.drips];
  const ends = car.plant.pipes
    .filter((pipe) => use(pipe) && (pipe.to === 'ground' || pipe.to === 'open-air'))
    .map((pipe) => pipe.from);
  return without(valvesOf(car, unique(ends)), [
    ...known,
    ...levelValves(car),
    ...glassCocks(car),
    ...glassDrains(car),
  ]);
}

function glassDrains(car: Car): readonly PartId[] {
  return valvesOf(
    car,
    unique(glasses(car).flatMap((id) => (car.plant.out.get(id) ?? []).map((pipe) => pipe.to))),
  );
}

function bottomAndTop(car: Car): readonly PartId[] {
  const { boiler } = car.spec;
  return unique([...boiler['blow-down'], boiler['fill-by'], boiler['lets-air-out-by']]);
}

function levelValves(car: Car): readonly PartId[] {
  return valvesOf(car, unique(car.spec.boiler.level.map((way) => way.gauge)));
}

function glassCocks(car: Car): readonly PartId[] {
  return unique(glasses(car).flatMap((id) => car.spec.gauges[id]?.cocks ?? []));
}

function isTubeTap(car: Car, id: PartId): boolean {
  const hasTube = Object.values(car.spec.equipment).some((each) => each.kind === 'tube');
  const ways = car.spec.boiler.level.filter((way) => way.gauge === id);
  return hasTube && ways.length > 0 && ways.every((way) => way.when === 'cold');
}

function levelWays(car: Car, when: 'cold' | 'steaming'): readonly PartId[] {
  return unique(
    car.spec.boiler.level.map((way) => (way.when === when || way.when === 'both' ? way.gauge : undefined)),
  );
}

function igniters(car: Car): readonly PartId[] {
  return unique(Object.values(car.spec.burners).map((burner) => burner['lit-by']));
}

function heaters(car: Car): readonly PartId[] {
  return unique(Object.values(car.spec.vaporizers ?? {}).flatMap((each) => each['heated-by']));
}

const equipmentKinds = [
  'extinguisher',
  'torch',
  'stick',
  'chocks',
  'gloves',
  'can',
  'funnel',
  'hose',
  'tube',
  'spanner',
] as const;

const equipmentDuties: Readonly<Record<string, Duty>> = Object.fromEntries(
  equipmentKinds.map((kind) => [
    kind,
    {
      meaning: `Equipment of kind \`${kind}\`.`,
      parts: (car: Car) => keysWhere(car.spec.equipment, (each) => each.kind === kind),
    },
  ]),
);

const controlKinds = ['brake', 'parking-brake', 'steering', 'horn', 'lamps'] as const;

const controlDuties: Readonly<Record<string, Duty>> = Object.fromEntries(
  controlKinds.map((kind) => [
    kind,
    {
      meaning: `Controls of kind \`${kind}\`.`,
      parts: (car: Car) => keysWhere(car.spec.controls, (each) => each.kind === kind),
    },
  ]),
);

const deviceKinds = [
  'steam-automatic',
  'low-water-cut-off',
  'check-valve',
  'relief-valve',
  'temperature-cut-off',
] as const;

const deviceDuties: Readonly<Record<string, Duty>> = Object.fromEntries(
  deviceKinds.map((kind) => [
    kind,
    {
      meaning: `Devices of kind \`${kind}\`.`,
      parts: (car: Car) => keysWhere(car.spec.devices, (each) => each.kind === kind),
    },
  ]),
);

const fuelDuties: Readonly<Record<string, Duty>> = {
  'main-burner': { meaning: 'Burners whose job is `main`.', parts: mains },
  pilot: { meaning: 'Burners whose job is `pilot`.', parts: pilots },
  burner: { meaning: 'Every burner.', parts: (car) => Object.keys(car.spec.burners) },
  'main-vaporizer': {
    meaning: 'Vaporizers of the main burners.',
    parts: (car) => unique(mains(car).map((id) => car.spec.burners[id]?.vaporizer)),
  },
  'fuel-tank': { meaning: 'Every fuel tank.', parts: fuelTanks },
  'filled-tank': {
    meaning: 'Fuel tanks that are filled from a can: all but those a pump fills from another tank.',
    parts: (car) => without(fuelTanks(car), pumpedTanks(car)),
  },
  'charged-tank': {
    meaning: 'Fuel tanks with a pressure band.',
    parts: (car) =>
      keysWhere(car.spec.tanks, (tank, id) => tank.pressure !== undefined && fuelTanks(car).includes(id)),
  },
  'air-tank': {
    meaning: 'Fuel tanks with a pressure band that are charged with an air pump.',
    parts: (car) =>
      keysWhere(
        car.spec.tanks,
        (tank, id) =>
          tank.pressure !== undefined && fuelTanks(car).includes(id) && !pumpedTanks(car).includes(id),
      ),
  },
  'pumped-tank': { meaning: 'Fuel tanks that a pump fills from another tank.', parts: pumpedTanks },
  'pilot-tank': {
    meaning: 'Fuel tanks that feed a pilot and no main burner.',
    parts: (car) =>
      fuelTanks(car).filter((tank) => feeds(car, tank, pilots(car)) && !feeds(car, tank, mains(car))),
  },
  'main-tank': {
    meaning: 'Fuel tanks that feed a main burner.',
    parts: (car) => fuelTanks(car).filter((tank) => feeds(car, tank, mains(car))),
  },
  'fuel-valve': {
    meaning: 'Hand valves on any way from a fuel tank to a burner, from the tank forward.',
    parts: allFuelValves,
  },
  'pilot-valve': { meaning: 'Hand valves on the way to a pilot, from the tank forward.', parts: pilotValves },
  'pilot-feed-valve': {
    meaning:
      'Hand valves on the way to a pilot that are neither the last before it nor opened for pumping up a tank.',
    parts: (car) => without(pilotValves(car), [...lastOf(car, pilots(car)), ...supplyValves(car)]),
  },
  'pilot-last-valve': {
    meaning: 'The hand valves nearest to the pilots.',
    parts: (car) => lastOf(car, pilots(car)),
  },
  'main-valve': {
    meaning: 'Hand valves on the way to a main burner and not on the way to a pilot, from the tank forward.',
    parts: (car) => without(mainValves(car), pilotValves(car)),
  },
  'main-feed-valve': {
    meaning: 'Of those, the ones that are neither the last before a burner nor opened for pumping up a tank.',
    parts: (car) =>
      without(mainValves(car), [...pilotValves(car), ...lastOf(car, mains(car)), ...supplyValves(car)]),
  },
  'main-last-valve': {
    meaning: 'The hand valves nearest to the main burners, if no pilot hangs on them.',
    parts: (car) => without(lastOf(car, mains(car)), pilotValves(car)),
  },
  'main-hand-valve': {
    meaning:
      'For each main burner the valve it is worked with on the road: the nearest to it that a seated driver reaches, or else the last.',
    parts: (car) => unique(mains(car).flatMap((burner) => handValveOf(car, burner))),
  },
  'supply-valve': {
    meaning: 'Hand valves between a tank and the pressure tank that a pump fills from it.',
    parts: supplyValves,
  },
  'starting-valve': {
    meaning: 'Hand valves of a branch that sends pilot fuel to the main burner’s vaporizer.',
    parts: startingValves,
  },
  'fuel-hand-pump': {
    meaning: 'Fuel pumps worked by hand.',
    parts: (car) => keysWhere(car.spec.pumps, (pump) => pump.moves === 'fuel' && pump.drive === 'hand'),
  },
  'fuel-electric-pump': {
    meaning: 'Fuel pumps driven by a motor.',
    parts: (car) =>
      keysWhere(
        car.spec.pumps,
        (pump, id) => pump.moves === 'fuel' && pump.drive === 'electric' && fuelPumps(car).includes(id),
      ),
  },
  'fuel-bypass': {
    meaning: 'Bypass valves of fuel pumps.',
    parts: (car) =>
      unique(Object.values(car.spec.pumps).map((pump) => (pump.moves === 'fuel' ? pump.bypass : undefined))),
  },
  'fuel-gauge': {
    meaning: 'Gauges that read the pressure of a fuel tank, burner or vaporizer.',
    parts: (car) =>
      keysWhere(
        car.spec.gauges,
        (gauge) =>
          gauge.reads === 'pressure' &&
          (fuelTanks(car).includes(gauge.of) ||
            gauge.of in car.spec.burners ||
            gauge.of in (car.spec.vaporizers ?? {})),
      ),
  },
  'burner-fuel-gauge': {
    meaning: 'Gauges that read the pressure of the fuel at a burner or vaporizer.',
    parts: (car) =>
      keysWhere(
        car.spec.gauges,
        (gauge) =>
          gauge.reads === 'pressure' &&
          (gauge.of in car.spec.burners || gauge.of in (car.spec.vaporizers ?? {})),
      ),
  },
  blower: {
    meaning: 'Pumps that blow air to a burner.',
    parts: (car) =>
      keysWhere(
        car.spec.pumps,
        (pump, id) =>
          pump.moves === 'air' && pump.charges === undefined && (car.plant.out.get(id) ?? []).length > 0,
      ),
  },
  'fuel-drain': {
    meaning: 'Hand valves that let fuel out to the ground or the open air.',
    parts: (car) =>
      without(drainsOf(car, ['main fuel', 'pilot fuel']), [...allFuelValves(car), ...ventValves(car)]),
  },
  igniter: {
    meaning: 'What lights a burner by a switch: controls named in `lit-by`.',
    parts: (car) => igniters(car).filter((id) => id in car.spec.controls),
  },
  'heater-switch': {
    meaning: 'Controls that heat a vaporizer by electricity.',
    parts: (car) => heaters(car).filter((id) => id in car.spec.controls),
  },
  'tank-vent-valve': { meaning: 'Valves that let the pressure off a tank.', parts: ventValves },
  'air-valve': {
    meaning: 'Hand valves on the air lines.',
    parts: (car) =>
      without(onLines(car, ['air']), [
        ...ventValves(car),
        ...allFuelValves(car),
        ...bottomAndTop(car),
        ...levelValves(car),
        ...glassCocks(car),
      ]),
  },
  strainer: {
    meaning: 'Strainers.',
    parts: (car) => keysWhere(car.spec.fittings, (fitting) => fitting.kind === 'strainer'),
  },
};

function feeds(car: Car, tank: PartId, burners: readonly PartId[]): boolean {
  return burners.some((burner) => {
    const job = car.spec.burners[burner]?.job;
    const use = job === 'main' ? carrying('main fuel') : carrying('main fuel', 'pilot fuel');
    return routesTo(car.plant, burner, (id) => id === tank, use).length > 0;
  });
}

function ventValves(car: Car): readonly PartId[] {
  return unique(Object.values(car.spec.tanks).map((tank) => tank['vent-valve']));
}

const waterDuties: Readonly<Record<string, Duty>> = {
  boiler: { meaning: 'The boiler.', parts: () => ['boiler'] },
  'water-tank': { meaning: 'Tanks that hold water.', parts: waterTanks },
  'feed-valve': {
    meaning: 'Hand valves on the way of the water from its tank to the boiler, bypasses left out.',
    parts: feedValves,
  },
  'feed-pump': {
    meaning: 'Pumps that move water and are not worked by hand.',
    parts: (car) => keysWhere(car.spec.pumps, (pump) => pump.moves === 'water' && pump.drive !== 'hand'),
  },
  'feed-engine-pump': {
    meaning: 'Feed pumps driven by the engine.',
    parts: (car) => keysWhere(car.spec.pumps, (pump) => pump.moves === 'water' && pump.drive === 'engine'),
  },
  'feed-electric-pump': {
    meaning: 'Feed pumps driven by a motor.',
    parts: (car) => keysWhere(car.spec.pumps, (pump) => pump.moves === 'water' && pump.drive === 'electric'),
  },
  'feed-steam-pump': {
    meaning: 'Feed pumps driven by their own steam.',
    parts: (car) => keysWhere(car.spec.pumps, (pump) => pump.moves === 'water' && pump.drive === 'steam'),
  },
  'feed-hand-pump': {
    meaning: 'Feed pumps worked by hand.',
    parts: (car) => keysWhere(car.spec.pumps, (pump) => pump.moves === 'water' && pump.drive === 'hand'),
  },
  'standing-pump': {
    meaning: 'Feed pumps that can be worked while the car stands: by hand, motor or their own steam.',
    parts: (car) => keysWhere(car.spec.pumps, (pump) => pump.moves === 'water' && pump.drive !== 'engine'),
  },
  'feed-bypass': { meaning: 'Bypass valves of the feed pumps.', parts: feedBypasses },
  'road-bypass': {
    meaning: 'Bypass valves of the feed pumps that run while the car moves.',
    parts: (car) =>
      unique(
        Object.values(car.spec.pumps).map((pump) =>
          pump.moves === 'water' && pump.drive !== 'hand' ? pump.bypass : undefined,
        ),
      ),
  },
  'level-cold': {
    meaning: 'Ways of reading the boiler’s level that work cold, the best first.',
    parts: (car) => levelWays(car, 'cold'),
  },
  'level-steaming': {
    meaning: 'Ways of reading the boiler’s level that work under steam, the best first.',
    parts: (car) => levelWays(car, 'steaming'),
  },
  'level-any': {
    meaning: 'Every way of reading the boiler’s level, those that work both cold and under steam first.',
    parts: (car) =>
      unique([
        ...levelWays(car, 'cold').filter((id) => levelWays(car, 'steaming').includes(id)),
        ...car.spec.boiler.level.map((way) => way.gauge),
      ]),
  },
  'level-glass': {
    meaning: 'Gauge glasses that read the boiler’s level.',
    parts: (car) => glasses(car).filter((id) => car.spec.gauges[id]?.kind === 'glass'),
  },
  'glass-cock': { meaning: 'The cocks of the gauges that read the boiler’s level.', parts: glassCocks },
  'glass-drain': {
    meaning: 'The valve that blows through a gauge that reads the boiler’s level.',
    parts: glassDrains,
  },
  'tube-tap': {
    meaning: 'Taps on which a clear tube is put to read the level cold.',
    parts: (car) => levelValves(car).filter((id) => isTubeTap(car, id)),
  },
  'try-cock': {
    meaning: 'Other valves on which the level is read: try cocks.',
    parts: (car) => levelValves(car).filter((id) => !isTubeTap(car, id)),
  },
  'blow-down': {
    meaning: 'Blow-down valves, in the order they are opened.',
    parts: (car) => car.spec.boiler['blow-down'],
  },
  'boiler-fill': {
    meaning: 'Where a hose is put on to fill the boiler cold.',
    parts: (car) => unique([car.spec.boiler['fill-by']]),
  },
  'boiler-vent': {
    meaning: 'The valve that lets air in or out of the boiler.',
    parts: (car) => unique([car.spec.boiler['lets-air-out-by']]),
  },
  'water-drain': {
    meaning: 'Hand valves that let water out to the ground or the open air, blow-down and vents left out.',
    parts: (car) => without(drainsOf(car, ['water']), ventValves(car)),
  },
};

const steamDuties: Readonly<Record<string, Duty>> = {
  engine: { meaning: 'The engine.', parts: () => ['engine'] },
  throttle: { meaning: 'The throttle.', parts: (car) => [car.spec.engine.throttle] },
  'throttle-lock': {
    meaning: 'What locks the throttle shut.',
    parts: (car) => [car.spec.engine['throttle-lock']],
  },
  drips: {
    meaning: 'The valves that drain the steam chest and cylinders.',
    parts: (car) => car.spec.engine.drips,
  },
  reverse: {
    meaning: 'The control for forward and reverse.',
    parts: (car) => unique([car.spec.engine.reverse]),
  },
  'steam-stop-valve': {
    meaning: 'Hand valves between boiler and engine other than the throttle.',
    parts: (car) => without(steamWay(car), [car.spec.engine.throttle, ...car.spec.engine.drips]),
  },
  'steam-side-valve': {
    meaning: 'Hand valves on other steam lines: whistle, heater, steam pump.',
    parts: (car) =>
      without(onLines(car, ['steam', 'exhaust']), [
        ...steamWay(car),
        ...car.spec.engine.drips,
        car.spec.engine.throttle,
        ...bottomAndTop(car),
        ...levelValves(car),
        ...glassCocks(car),
      ]),
  },
  'oil-tank': { meaning: 'The tank of cylinder oil.', parts: (car) => unique([car.spec.engine.oil.tank]) },
  'oil-hand-pump': {
    meaning: 'The pump of cylinder oil, if it is worked by hand.',
    parts: (car) => unique([car.spec.engine.oil.pump]).filter((id) => car.spec.pumps[id]?.drive === 'hand'),
  },
  'oil-valve': { meaning: 'Hand valves on the oil lines.', parts: (car) => onLines(car, ['oil']) },
  superheater: {
    meaning: 'The superheater.',
    parts: (car) => (car.spec.superheater === undefined ? [] : ['superheater']),
  },
  condenser: {
    meaning: 'The condenser.',
    parts: (car) => (car.spec.condenser === undefined ? [] : ['condenser']),
  },
  'steam-gauge': {
    meaning: 'Gauges that read the boiler’s pressure.',
    parts: (car) =>
      keysWhere(car.spec.gauges, (gauge) => gauge.reads === 'pressure' && gauge.of === 'boiler'),
  },
  'condenser-gauge': {
    meaning: 'Gauges that read the condenser.',
    parts: (car) => keysWhere(car.spec.gauges, (gauge) => gauge.of === 'condenser'),
  },
  'hot-gauge': {
    meaning: 'Gauges that read a temperature.',
    parts: (car) => keysWhere(car.spec.gauges, (gauge) => gauge.reads === 'temperature'),
  },
  'safety-valve': { meaning: 'The safety valve.', parts: (car) => [car.spec.boiler['safety-valve']] },
};

const otherDuties: Readonly<Record<string, Duty>> = {
  'every-valve': {
    meaning: 'Every valve, in the order of the spec.',
    parts: (car) => Object.keys(car.spec.valves),
  },
  'other-control': {
    meaning: 'Controls of kind `switch` or `other` that neither light a burner nor heat a vaporizer.',
    parts: (car) =>
      keysWhere(
        car.spec.controls,
        (control, id) =>
          (control.kind === 'switch' || control.kind === 'other') &&
          !igniters(car).includes(id) &&
          !heaters(car).includes(id),
      ),
  },
};

/** Every duty by name. */
export const duties: Readonly<Record<string, Duty>> = Object.fromEntries(
  Object.entries({
    ...steamDuties,
    ...waterDuties,
    ...fuelDuties,
    ...equipmentDuties,
    ...controlDuties,
    ...deviceDuties,
    ...otherDuties,
  }).map(([name, { meaning, parts }]) => [name, { meaning, parts: oncePerCar(parts) }]),
);

/** Names of the duties that a part of this car has, in the order of `duties`; `every-valve` says nothing and is left out. */
export function dutiesOf(car: Car, part: PartId): readonly string[] {
  return Object.entries(duties).flatMap(([name, duty]) =>
    name !== 'every-valve' && duty.parts(car).includes(part) ? [name] : [],
  );
}
