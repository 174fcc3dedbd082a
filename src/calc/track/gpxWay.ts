/** A way to be driven from a GPX 1.1 file: country from its heights, stops from its waypoints. */
import { type Diagnostic, good, type Outcome } from '../../diagnostic/diagnostic';
import type { Way } from '../stops/way';
import { readGpx } from './gpx';
import { profileOf } from './profile';
import { stretchesOf } from './tour-use';
import { placesOnTrack, readWaypoints } from './waypoints';

/** Heights are averaged over so much road each side of a place, m. */
const windowM = 100;

/** Read it. A track without heights is taken as hilly all along, which errs to using more, and is remarked on. */
export function readGpxWay(text: string, file: string): Outcome<Way> {
  const read = readGpx(text, file);
  if (!read.ok) return read;
  const profile = profileOf(read.value, windowM);
  const cut = stretchesOf(profile);
  const { places, missed } = placesOnTrack(read.value, readWaypoints(text));
  const end = { name: 'end', atM: profile.lengthM, water: false, fuel: false, note: '' };
  const remarks: readonly Diagnostic[] = [
    ...(profile.withoutHeights
      ? [
          {
            code: 'tour-no-heights',
            severity: 'remark',
            message: 'the track has no heights; it is planned as hilly all along',
            found: 'no heights',
            mend: 'save it with heights, or write a list of legs',
          } as const,
        ]
      : []),
    ...missed.map(
      (name) =>
        ({
          code: 'tour-off-track',
          severity: 'remark',
          message: `the track does not come near \`${name}\`, so that it is not counted on`,
          expected: 'a waypoint no more than 300 m from the track',
          mend: 'move the waypoint onto the road, or lead the track there',
        }) as const,
    ),
  ];
  return good(
    {
      lengthM: profile.lengthM,
      stretches: profile.withoutHeights ? cut.map((stretch) => ({ ...stretch, terrain: 'hilly' })) : cut,
      places: [...places.filter(({ atM }) => atM > 0 && atM < profile.lengthM), end],
      heights: profile.withoutHeights
        ? { kind: 'none' }
        : { kind: 'smoothed', windowM, climbM: profile.climbM },
    },
    remarks,
  );
}
