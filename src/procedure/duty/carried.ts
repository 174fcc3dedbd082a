/** Duties of equipment, controls, devices and of valves as a whole. */
import type { Car } from '../../car/car';
import type { Duties } from './duty';
import { keysWhere } from './pick';

const equipmentKinds = ['extinguisher', 'torch', 'chocks', 'gloves', 'tube'] as const;

const equipmentDuties: Duties = Object.fromEntries(
  equipmentKinds.map((kind) => [
    kind,
    {
      meaning: `Equipment of kind \`${kind}\`.`,
      parts: (car: Car) => keysWhere(car.spec.equipment, (each) => each.kind === kind),
    },
  ]),
);

const controlKinds = ['brake', 'parking-brake', 'feed', 'main-switch', 'steering', 'horn', 'lamps'] as const;

const controlDuties: Duties = Object.fromEntries(
  controlKinds.map((kind) => [
    kind,
    {
      meaning: `Controls of kind \`${kind}\`.`,
      parts: (car: Car) => keysWhere(car.spec.controls, (each) => each.kind === kind),
    },
  ]),
);

const deviceKinds = ['steam-automatic', 'low-water-cut-off', 'relief-valve', 'temperature-cut-off'] as const;

const deviceDuties: Duties = Object.fromEntries(
  deviceKinds.map((kind) => [
    kind,
    {
      meaning: `Devices of kind \`${kind}\`.`,
      parts: (car: Car) => keysWhere(car.spec.devices, (each) => each.kind === kind),
    },
  ]),
);

const otherDuties: Duties = {
  'every-valve': {
    meaning: 'Every valve, in the order of the spec.',
    parts: (car) => Object.keys(car.spec.valves),
  },
};

/** Duties of what is carried and handled, by name. */
export const carriedDuties: Duties = {
  ...equipmentDuties,
  ...controlDuties,
  ...deviceDuties,
  ...otherDuties,
};
