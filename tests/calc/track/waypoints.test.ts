/** Waypoints of a GPX file that offer water or fuel, and where the track passes them. */
import { expect, test } from 'vitest';
import { readGpxWay } from '../../../src/calc/track/gpxWay';
import { placesOnTrack, readWaypoints } from '../../../src/calc/track/waypoints';

const wpt = (lat: number, fields: string) => `<wpt lat="${lat}" lon="7">${fields}</wpt>`;
const track = (height: (i: number) => string, count = 400) =>
  `<trk><trkseg>${Array.from({ length: count }, (_, i) => `<trkpt lat="${45 + i * 0.001}" lon="7">${height(i)}</trkpt>`).join('')}</trkseg></trk>`;
const gpx = (inside: string) => `<gpx version="1.1">${inside}</gpx>`;

test('type tells what there is; sym does where there is no type; others are passed over', () => {
  const text = gpx(
    wpt(45.1, '<name>Well</name><type>water</type>') +
      wpt(45.2, '<name>Depot</name><sym>fuel and water</sym>') +
      wpt(45.3, '<name>View</name><type>scenic</type>'),
  );
  expect(readWaypoints(text)).toMatchObject([
    { name: 'Well', water: true, fuel: false },
    { name: 'Depot', water: true, fuel: true },
  ]);
});

test('a place that is passed twice counts twice; one far off not at all', () => {
  const there = Array.from({ length: 60 }, (_, i) => ({ latitude: 45 + i * 0.001, longitude: 7 }));
  const waypoint = (name: string, latitude: number) => ({
    name,
    point: { latitude, longitude: 7 },
    water: true,
    fuel: false,
  });
  const { places, missed } = placesOnTrack(
    [...there, ...[...there].reverse()],
    [waypoint('bridge', 45.02), waypoint('far', 46)],
  );
  expect(places.map(({ name }) => name)).toEqual(['bridge', 'bridge']);
  // a minute of latitude is about 1852 m
  expect(places[0]?.atM).toBeCloseTo(0.02 * 60 * 1852, -2);
  expect(missed).toEqual(['far']);
});

test('country comes from the heights, and a place missed is remarked on', () => {
  const outcome = readGpxWay(
    gpx(
      wpt(46, '<name>Far</name><type>water</type>') +
        track((i) => `<ele>${100 + (i > 200 ? (i - 200) * 8 : 0)}</ele>`),
    ),
    'way.gpx',
  );
  if (!outcome.ok) throw new Error('it is sound');
  const kinds = outcome.value.stretches.map(({ terrain }) => terrain);
  expect(kinds[0]).toBe('level');
  expect(kinds.at(-1)).toBe('hilly');
  expect(outcome.value.heights).toMatchObject({ kind: 'smoothed', windowM: 100 });
  expect(outcome.remarks.map(({ code }) => code)).toEqual(['tour-off-track']);
  expect(outcome.value.places.map(({ name }) => name)).toEqual(['end']);
});

test('without heights everything is taken as hilly, and said', () => {
  const outcome = readGpxWay(gpx(track(() => '')), 'way.gpx');
  if (!outcome.ok) throw new Error('it is sound');
  expect(new Set(outcome.value.stretches.map(({ terrain }) => terrain))).toEqual(new Set(['hilly']));
  expect(outcome.remarks.map(({ code }) => code)).toEqual(['tour-no-heights']);
});
