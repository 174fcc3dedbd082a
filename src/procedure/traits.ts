/** Traits: yes-or-no facts of a part or of the whole car that decide whether a step belongs in its papers. */
import type { Car, PartId } from '../car/car';
import { feedPumps, filledByTransfer, transferPumps } from '../car/waterPumps';
import { burnsOnOf } from '../spec/burnsOn';
import { duties } from './duties';
import { drainsOfGlass, waterCocksOfGlass } from './duty/waterParts';
import { burnersFor, fuelPumps, lastValvesTo, pumpedTanks, spareValvesAtBurners } from './fuelWay';

/** A yes-or-no fact of a part. */
export interface PartTrait {
  /** When it holds, in plain words, for `docs/procedures.md`. */
  readonly meaning: string;
  readonly holds: (car: Car, part: PartId) => boolean;
}

/** A yes-or-no fact of the car. */
export interface CarTrait {
  readonly meaning: string;
  readonly holds: (car: Car) => boolean;
}

function reachOf(car: Car, part: PartId): string | undefined {
  const place = car.parts.get(car.spec.pumps[part]?.['switched-by'] ?? part)?.place;
  return place === undefined ? undefined : car.places.get(place)?.reach;
}

function igniterKind(car: Car, burner: PartId): string | undefined {
  return car.parts.get(car.spec.burners[burner]?.['lit-by'] ?? '')?.kind;
}

/** The first heater of a vaporizer that is not a main burner: what heats it before there is a main fire. */
function firstHeater(car: Car, vaporizer: PartId): PartId | undefined {
  return car.spec.vaporizers?.[vaporizer]?.['heated-by'].find((id) => car.spec.burners[id]?.job !== 'main');
}

function mainVaporizers(car: Car): readonly PartId[] {
  return Object.values(car.spec.burners).flatMap((burner) =>
    burner.job === 'main' && burner.vaporizer !== undefined ? [burner.vaporizer] : [],
  );
}

function readBy(car: Car, tank: PartId): string | undefined {
  return car.spec.tanks[tank]?.read;
}

/** Facts of a part, by name. */
export const partTraits: Readonly<Record<string, PartTrait>> = {
  seated: {
    meaning: 'It is worked from the driver’s seat; for a pump with a switch, the switch is.',
    holds: (car, id) => reachOf(car, id) === 'seated',
  },
  valve: { meaning: 'It is a hand valve.', holds: (car, id) => car.parts.get(id)?.kind === 'valve' },
  gauge: {
    meaning: 'It is a gauge, glass or indicator.',
    holds: (car, id) => car.parts.get(id)?.kind === 'gauge',
  },
  stick: { meaning: 'It is a stick.', holds: (car, id) => car.spec.gauges[id]?.kind === 'stick' },
  'blown-by-cocks': {
    meaning: 'A gauge glass that is shut off from the water by one cock and blown through by another.',
    holds: (car, id) => waterCocksOfGlass(car, id).length > 0 && drainsOfGlass(car, id).length > 0,
  },
  control: {
    meaning: 'It is a control, such as a switch.',
    holds: (car, id) => car.parts.get(id)?.kind === 'control',
  },
  'brakes-itself': {
    meaning: 'A brake with a work of its own; what only keeps another one on has none.',
    holds: (car, id) => {
      const control = car.spec.controls[id];
      return control !== undefined && control['keeps-on'] === undefined;
    },
  },
  'behind-cover': {
    meaning: 'Something has to be opened before it is reached.',
    holds: (car, id) => {
      const place = car.places.get(car.parts.get(id)?.place ?? '');
      return place?.reach === 'opened' || place?.how !== undefined;
    },
  },
  'spare-at-burner': {
    meaning:
      'A fuel valve worked where a burner is lit, while another, worked from the seat, cuts all that comes through it.',
    holds: (car, id) => spareValvesAtBurners(car).includes(id),
  },
  'parked-open': {
    meaning: 'A valve that stands open when the car is put away.',
    holds: (car, id) => car.spec.valves[id]?.parked === 'open',
  },
  'parked-shut': {
    meaning: 'A valve that stands shut when the car is put away.',
    holds: (car, id) => car.spec.valves[id]?.parked === 'shut',
  },
  'air-charged': {
    meaning: 'A tank with a pressure band.',
    holds: (car, id) => car.spec.tanks[id]?.pressure !== undefined,
  },
  'pumped-up': {
    meaning: 'A tank that a pump fills from another tank.',
    holds: (car, id) => pumpedTanks(car).includes(id),
  },
  'read-from-seat': {
    meaning: 'A tank whose pressure gauge is read from the driver’s seat.',
    holds: (car, id) =>
      Object.entries(car.spec.gauges).some(
        ([key, gauge]) => gauge.of === id && gauge.reads === 'pressure' && reachOf(car, key) === 'seated',
      ),
  },
  'has-standing-fuel-pump': {
    meaning: 'A pressure tank that a hand or motor pump fills.',
    holds: (car, id) => fuelPumps(car, id).some((pump) => car.spec.pumps[pump]?.drive !== 'engine'),
  },
  'has-air-pump': {
    meaning: 'A tank that an air pump of the car charges.',
    holds: (car, id) =>
      Object.values(car.spec.pumps).some((pump) => pump.moves === 'air' && pump.charges === id),
  },
  'filled-by-transfer': {
    meaning: 'A tank that a pump fills with water from another tank.',
    holds: (car, id) => transferPumps(car).some((pump) => filledByTransfer(car, pump).includes(id)),
  },
  'read-by-stick': { meaning: 'A tank read with a stick.', holds: (car, id) => readBy(car, id) === 'stick' },
  'read-by-gauge': {
    meaning: 'A tank read on a gauge or glass.',
    holds: (car, id) => readBy(car, id) === 'gauge' || readBy(car, id) === 'glass',
  },
  'not-read': {
    meaning: 'A tank whose content cannot be read.',
    holds: (car, id) => readBy(car, id) === 'not-read',
  },
  'further-burner': {
    meaning: 'A main burner that is lit after another one.',
    holds: (car, id) => burnersFor(car, 'main').indexOf(id) > 0,
  },
  'lit-by-switch': {
    meaning: 'A burner lit by a switch.',
    holds: (car, id) => igniterKind(car, id) === 'control',
  },
  'lit-by-torch': {
    meaning: 'A burner lit with a torch or other equipment.',
    holds: (car, id) => igniterKind(car, id) === 'equipment',
  },
  'burns-on': {
    meaning: 'A burner that burns on for a while after its fuel is shut.',
    holds: (car, id) => burnsOnOf(car.spec.burners[id]) !== undefined,
  },
  'has-last-valve': {
    meaning: 'A burner with a hand valve on its way.',
    holds: (car, id) => lastValvesTo(car, id).length > 0,
  },
  'soak-said': {
    meaning: 'A pilot whose soak is given.',
    holds: (car, id) => car.spec.burners[id]?.soak !== undefined,
  },
  'heated-by-pilot': {
    meaning: 'A vaporizer heated first by a pilot.',
    holds: (car, id) => car.parts.get(firstHeater(car, id) ?? '')?.kind === 'burner',
  },
  'heated-by-torch': {
    meaning: 'A vaporizer heated first with a torch.',
    holds: (car, id) => car.parts.get(firstHeater(car, id) ?? '')?.kind === 'equipment',
  },
  'heated-by-switch': {
    meaning: 'A vaporizer heated first by electricity.',
    holds: (car, id) => car.parts.get(firstHeater(car, id) ?? '')?.kind === 'control',
  },
  'warm-said': {
    meaning: 'A vaporizer whose time of warming is given.',
    holds: (car, id) => car.spec.vaporizers?.[id]?.['warm-first'] !== undefined,
  },
  'heats-main-vaporizer': {
    meaning: 'A pilot that heats a main burner’s vaporizer before there is a main fire.',
    holds: (car, id) => mainVaporizers(car).some((vaporizer) => firstHeater(car, vaporizer) === id),
  },
  'tube-tap': {
    meaning: 'A tap on which a clear tube is put to read the level cold.',
    holds: (car, id) => duties['tube-tap']?.parts(car).includes(id) === true,
  },
  'needs-torch': {
    meaning: 'A burner that a torch lights, or whose vaporizer a torch heats first.',
    holds: (car, id) =>
      igniterKind(car, id) === 'equipment' ||
      car.parts.get(firstHeater(car, car.spec.burners[id]?.vaporizer ?? '') ?? '')?.kind === 'equipment',
  },
  'steam-driven': {
    meaning: 'A pump driven by its own steam.',
    holds: (car, id) => car.spec.pumps[id]?.drive === 'steam',
  },
  equipment: {
    meaning: 'It is equipment, such as a torch.',
    holds: (car, id) => car.parts.get(id)?.kind === 'equipment',
  },
  'test-said': {
    meaning: 'A device whose spec says how it is tested.',
    holds: (car, id) => car.spec.devices[id]?.test !== undefined,
  },
  'tested-without-fire': {
    meaning: 'A device whose test is made with every fire out, before the boiler is filled.',
    holds: (car, id) => car.spec.devices[id]?.['test-without-fire'] === 'yes',
  },
};

/** Facts of the car, by name. */
export const carTraits: Readonly<Record<string, CarTrait>> = {
  'draws-full': {
    meaning: 'The boiler draws itself full as it cools.',
    holds: (car) => car.spec.boiler['draws-full'] === 'yes',
  },
  'draws-full-not-known': {
    meaning: 'It is not known whether the boiler draws itself full.',
    holds: (car) => car.spec.boiler['draws-full'] === 'not-known',
  },
  'cold-limit': {
    meaning: 'The spec says how high the level of the cold boiler may stand before a fire.',
    holds: (car) => car.spec.boiler['highest-level-cold'] !== undefined,
  },
  'superheater-in-fire': {
    meaning: 'The superheater stands in the fire.',
    holds: (car) => car.spec.superheater?.['in-the-fire'] === true,
  },
  condensing: {
    meaning: 'The exhaust goes to a condenser.',
    holds: (car) => car.spec.engine.exhaust === 'condenser',
  },
  monotube: { meaning: 'The boiler is a monotube.', holds: (car) => car.spec.boiler.kind === 'monotube' },
  'coil-fed-by-hand': {
    meaning: 'The boiler is a monotube, and nothing but a hand pump feeds it while the car stands.',
    holds: (car) =>
      car.spec.boiler.kind === 'monotube' &&
      standingDrives(car).includes('hand') &&
      !standingDrives(car).includes('electric'),
  },
  'blow-down-pressure-said': {
    meaning: 'The spec gives the pressure for blowing down.',
    holds: (car) => car.spec.boiler['blow-down-pressure'] !== undefined,
  },
  'level-called': {
    meaning:
      'Somebody beside the driver can read the level while the car moves: there is a second seat, and the first way that works under steam is no cock.',
    holds: ({ spec }) => {
      const [first] = spec.boiler.level.filter((way) => way.when !== 'cold');
      return spec.car.seats > 1 && first !== undefined && !(first.gauge in spec.valves);
    },
  },
  'two-readings-cold': {
    meaning: 'The level can be read in two ways with the boiler cold.',
    holds: (car) => waysWhen(car, 'cold') > 1,
  },
  'two-readings-steaming': {
    meaning: 'The level can be read in two ways under steam.',
    holds: (car) => waysWhen(car, 'steaming') > 1,
  },
};

/** What drives the feed pumps that can be worked while the car stands. */
function standingDrives(car: Car): readonly (string | undefined)[] {
  return feedPumps(car).map((id) => car.spec.pumps[id]?.drive);
}

function waysWhen(car: Car, when: 'cold' | 'steaming'): number {
  return new Set(
    car.spec.boiler.level.filter((way) => way.when === when || way.when === 'both').map((way) => way.gauge),
  ).size;
}
