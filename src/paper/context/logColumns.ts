/** The columns of the keeper’s log of trips, as the range fit reads them, in the keeper’s units. */
import type { UnitSystem } from '../../quantity/dimension';

const units: Readonly<Record<UnitSystem, { readonly distance: string; readonly volume: string }>> = {
  us: { distance: 'mi', volume: 'US gal' },
  imperial: { distance: 'mi', volume: 'imp gal' },
  metric: { distance: 'km', volume: 'L' },
};

/** A column of the log: its head, and the end of the names of its fields on the log sheet. */
export interface LogColumn {
  readonly key: string;
  readonly head: string;
  /** How many letters its fields have room for. */
  readonly letters: number;
}

/** The columns of the log. The field of row 3 under `water-used` is called `trip-3-water-used`. */
export function logFields(system: UnitSystem): readonly LogColumn[] {
  const { distance, volume } = units[system];
  return [
    { key: 'date', head: 'date', letters: 10 },
    { key: 'distance', head: `distance (${distance})`, letters: 6 },
    { key: 'water-used', head: `water used (${volume})`, letters: 6 },
    { key: 'fuel-used', head: `fuel used (${volume})`, letters: 6 },
    { key: 'terrain', head: 'terrain', letters: 8 },
    { key: 'stops', head: 'stops', letters: 4 },
    { key: 'note', head: 'note', letters: 14 },
  ];
}

/** The head of the log, cell by cell: copied into a file with commas between, it is the head that `readTripLog` reads. */
export function logColumns(system: UnitSystem): readonly string[] {
  return logFields(system).map(({ head }) => head);
}

/** The unit that volumes of the log are written in. */
export function logVolume(system: UnitSystem): string {
  return units[system].volume;
}
