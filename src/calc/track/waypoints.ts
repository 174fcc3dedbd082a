/**
 * Waypoints of a GPX 1.1 file as places where something can be had: its `type` (or, without one, its `sym`) names water or
 * fuel. They are put on the track where it passes them.
 */
import { SaxesParser } from 'saxes';
import type { WayPlace } from '../stops/way';
import type { TrackPoint } from './gpx';
import { stepM } from './profile';

/** A waypoint of the file that offers something. */
export interface Waypoint {
  readonly name: string;
  readonly point: TrackPoint;
  readonly water: boolean;
  readonly fuel: boolean;
}

/** Every waypoint that names water or fuel. The text has been read by `readGpx`, so that its form is sound. */
export function readWaypoints(text: string): readonly Waypoint[] {
  const found: Waypoint[] = [];
  let open: { latitude: number; longitude: number; fields: Map<string, string> } | undefined;
  const path: string[] = [];
  const parser = new SaxesParser();
  parser.on('opentag', ({ name, attributes }) => {
    const local = name.replace(/^.*:/, '');
    path.push(local);
    if (local === 'wpt')
      open = { latitude: Number(attributes.lat), longitude: Number(attributes.lon), fields: new Map() };
  });
  parser.on('text', (piece) => {
    const field = path.at(-1) ?? '';
    if (open !== undefined && path.at(-2) === 'wpt')
      open.fields.set(field, `${open.fields.get(field) ?? ''}${piece}`.trim());
  });
  parser.on('closetag', () => {
    if (path.pop() !== 'wpt' || open === undefined) return;
    const { latitude, longitude, fields } = open;
    open = undefined;
    const offers = (fields.get('type') ?? fields.get('sym') ?? '').toLowerCase();
    const [water, fuel] = [/\bwater\b/.test(offers), /\bfuel\b/.test(offers)];
    if ((water || fuel) && Number.isFinite(latitude) && Number.isFinite(longitude))
      found.push({ name: fields.get('name') ?? offers, point: { latitude, longitude }, water, fuel });
  });
  parser.write(text).close();
  return found;
}

/** No farther from the track than this counts as on it, m. */
const nearM = 300;
/** Two passes of one place are told apart if the way between them is longer, m. */
const partedM = 1000;

/** Where the track passes each waypoint, in order; `missed` are those it does not come near. */
export function placesOnTrack(
  track: readonly TrackPoint[],
  waypoints: readonly Waypoint[],
): { readonly places: readonly WayPlace[]; readonly missed: readonly string[] } {
  const along = [0];
  for (const [index, point] of track.entries()) {
    const before = track[index - 1];
    if (before !== undefined) along.push((along.at(-1) ?? 0) + stepM(before, point));
  }
  const places: WayPlace[] = [];
  const missed: string[] = [];
  for (const { name, point, water, fuel } of waypoints) {
    const passes: { atM: number; offM: number }[] = [];
    for (const [index, here] of track.entries()) {
      const offM = stepM(here, point);
      if (offM > nearM) continue;
      const atM = along[index] ?? 0;
      const last = passes.at(-1);
      if (last === undefined || atM - last.atM > partedM) passes.push({ atM, offM });
      else if (offM < last.offM) passes[passes.length - 1] = { atM, offM };
    }
    if (passes.length === 0) missed.push(name);
    places.push(...passes.map(({ atM }) => ({ name, atM, water, fuel, note: '' })));
  }
  return { places: places.sort((a, b) => a.atM - b.atM), missed };
}
