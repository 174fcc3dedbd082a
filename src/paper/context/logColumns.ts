/** The columns of the keeper’s log of trips, as the range fit reads them, in the keeper’s units. */
import type { UnitSystem } from '../../quantity/dimension';

const units: Readonly<Record<UnitSystem, { readonly distance: string; readonly volume: string }>> = {
  us: { distance: 'mi', volume: 'US gal' },
  imperial: { distance: 'mi', volume: 'imp gal' },
  metric: { distance: 'km', volume: 'L' },
};

/** The head of the log, cell by cell: copied into a file with commas between, it is the head that `readTripLog` reads. */
export function logColumns(system: UnitSystem): readonly string[] {
  const { distance, volume } = units[system];
  return [
    'date',
    `distance (${distance})`,
    `water used (${volume})`,
    `fuel used (${volume})`,
    'terrain',
    'stops',
    'note',
  ];
}
