/** Duties of equipment, controls, devices and of valves as a whole. */
import type { Car } from '../../car/car';
import type { Duties } from './duty';
import { heaters, igniters } from './fuel';
import { keysWhere } from './pick';

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

const equipmentDuties: Duties = Object.fromEntries(
  equipmentKinds.map((kind) => [
    kind,
    {
      meaning: `Equipment of kind \`${kind}\`.`,
      parts: (car: Car) => keysWhere(car.spec.equipment, (each) => each.kind === kind),
    },
  ]),
);

const controlKinds = ['brake', 'parking-brake', 'steering', 'horn', 'lamps'] as const;

const controlDuties: Duties = Object.fromEntries(
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

/** Duties of what is carried and handled, by name. */
export const carriedDuties: Duties = {
  ...equipmentDuties,
  ...controlDuties,
  ...deviceDuties,
  ...otherDuties,
};
