import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readGpx, type TrackPoint } from '../../../src/calc/track/gpx';
import { climbBetweenM, profileOf, stepM } from '../../../src/calc/track/profile';

const gpx = (body: string): string =>
  `<?xml version="1.0"?><gpx version="1.1" creator="invented" xmlns="http://www.topografix.com/GPX/1/1">${body}</gpx>`;

describe('reading GPX 1.1', () => {
  it('reads tracks in order, with heights where there are any', () => {
    const read = readGpx(
      gpx(
        '<wpt lat="9" lon="9"/><trk><name>Tour</name><trkseg><trkpt lat="45.0" lon="7"><ele>200.5</ele><time>2025-06-01T10:00:00Z</time></trkpt><trkpt lat="45.01" lon="7.01"/></trkseg></trk>',
      ),
      'tour.gpx',
    );
    expect(read).toMatchObject({
      ok: true,
      value: [
        { latitude: 45, longitude: 7, elevationM: 200.5 },
        { latitude: 45.01, longitude: 7.01 },
      ],
    });
  });

  it('reads a route where there is no track', () => {
    const read = readGpx(gpx('<rte><rtept lat="1" lon="2"/><rtept lat="1" lon="3"/></rte>'), 'tour.gpx');
    expect(read.ok && read.value).toHaveLength(2);
  });

  it('reads names with a prefix, several tracks and segments, comments, CDATA and extensions', () => {
    const read = readGpx(
      `<?xml version="1.0" encoding="UTF-8"?>
<g:gpx version="1.1" creator="invented" xmlns:g="http://www.topografix.com/GPX/1/1" xmlns:x="urn:invented">
<g:trk><g:name><![CDATA[A & B]]></g:name>
<g:trkseg><g:trkpt lat="45" lon="7"><g:ele> 100 </g:ele><g:extensions><x:ele>9999</x:ele></g:extensions></g:trkpt><!-- lost --></g:trkseg>
<g:trkseg><g:trkpt lat="45.01" lon="7"><g:ele>1.1e2</g:ele></g:trkpt></g:trkseg></g:trk>
<g:trk><g:trkseg/><g:trkseg><g:trkpt lon="7" lat="45.02"></g:trkpt></g:trkseg></g:trk>
</g:gpx>`,
      'tour.gpx',
    );
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    expect(read.value.map(({ latitude, elevationM }) => [latitude, elevationM])).toEqual([
      [45, 100],
      [45.01, 110],
      [45.02, undefined],
    ]);
    // a gap between segments is road that was driven while nothing was recorded
    expect(profileOf(read.value).lengthM / (0.02 * 111_132)).toBeCloseTo(1, 3);
  });

  it('a file with a mark of byte order before it', () => {
    expect(
      readGpx(
        `\uFEFF${gpx('<trk><trkseg><trkpt lat="1" lon="1"/><trkpt lat="1" lon="2"/></trkseg></trk>')}`,
        'a.gpx',
      ).ok,
    ).toBe(true);
  });

  it('50,000 points, one of them broken, are read and the broken one named by its line', () => {
    const points = Array.from(
      { length: 50_000 },
      (_, i) =>
        `<trkpt lat="${(45 + i * 1e-5).toFixed(5)}" lon="7"><ele>${i === 40_000 ? 'x' : i % 100}</ele></trkpt>`,
    );
    const read = readGpx(gpx(`<trk><trkseg>\n${points.join('\n')}\n</trkseg></trk>`), 'long.gpx');
    expect(read.ok ? [] : read.problems.map(({ code, at }) => [code, at?.line])).toEqual([
      ['track-value', 40_002],
    ]);
  });

  it.each([
    ['not XML', 'hello', 'track-form'],
    ['cut short', '<gpx><trk>', 'track-form'],
    ['no way in it', gpx(''), 'track-form'],
    [
      'a point off the earth',
      gpx('<trk><trkseg><trkpt lat="95" lon="7"/><trkpt lat="1" lon="1"/></trkseg></trk>'),
      'track-value',
    ],
    [
      'a point without a place',
      gpx('<trk><trkseg><trkpt lon="7"/><trkpt lat="1" lon="1"/></trkseg></trk>'),
      'track-value',
    ],
    [
      'a height that is none',
      gpx(
        '<trk><trkseg><trkpt lat="1" lon="7"><ele>high</ele></trkpt><trkpt lat="1" lon="1"/></trkseg></trk>',
      ),
      'track-value',
    ],
  ])('refuses %s', (_, text, code) => {
    const read = readGpx(text, 'tour.gpx');
    expect(read).toMatchObject({ ok: false, problems: [{ code, at: { file: 'tour.gpx' } }] });
  });

  it('never expands what a document type declares', () => {
    const bomb =
      '<!DOCTYPE gpx [<!ENTITY a "1234567890"><!ENTITY b "&a;&a;&a;&a;">]><gpx><trk><trkseg><trkpt lat="1" lon="1"><ele>&b;</ele></trkpt></trkseg></trk></gpx>';
    expect(readGpx(bomb, 'tour.gpx').ok).toBe(false);
  });
});

describe('lengths on WGS 84: length of a degree (published tables, from memory)', () => {
  it.each([
    [0, 110.574, 111.32],
    [15, 110.649, 107.55],
    [30, 110.852, 96.486],
    [45, 111.132, 78.847],
    [60, 111.412, 55.8],
  ])('at %d°: %d km of latitude, %d km of longitude', (latitude, north, east) => {
    expect(
      Math.abs(
        stepM({ latitude: latitude - 0.5, longitude: 0 }, { latitude: latitude + 0.5, longitude: 0 }) / 1000 -
          north,
      ),
    ).toBeLessThan(0.002);
    expect(
      Math.abs(stepM({ latitude, longitude: 0 }, { latitude, longitude: 1 }) / 1000 - east),
    ).toBeLessThan(0.002);
  });

  it('does not go round the world to cross the date line', () => {
    expect(stepM({ latitude: 0, longitude: 179.99 }, { latitude: 0, longitude: -179.99 })).toBeLessThan(2300);
  });
});

describe('climbing', () => {
  const degreesPerM = 1 / 110574;
  const road = (heights: readonly (number | undefined)[], spacingM: number): TrackPoint[] =>
    heights.map((height, i) => ({
      latitude: i * spacingM * degreesPerM,
      longitude: 0,
      ...(height === undefined ? {} : { elevationM: height }),
    }));

  it('an even slope keeps its climb, but for what is smoothed at its ends', () => {
    const profile = profileOf(
      road(
        Array.from({ length: 201 }, (_, i) => i * 0.5),
        10,
      ),
    );
    expect(profile.climbM).toBeCloseTo(100, 6);
    expect(profile.fallM).toBeCloseTo(0, 6);
    expect(climbBetweenM(profile, 0, profile.lengthM / 2)).toBeCloseTo(50, 2);
  });

  it('jitter of a metre up and down on a level road adds up to next to nothing', () => {
    const heights = Array.from({ length: 1001 }, (_, i) => 300 + (i % 2));
    const raw = profileOf(road(heights, 10), 0);
    expect(raw.climbM).toBe(500);
    expect(profileOf(road(heights, 10)).climbM).toBeLessThan(25);
  });

  it('a known climb: 400 m over 8 km and down again, recorded with 3 m of noise every 10 m, comes out within 3 in 100', () => {
    // Seeded noise: the same every time. Raw heights would add up to many times the climb.
    let state = 12345;
    const noise = (): number => {
      state = (state * 48271) % 2147483647;
      return (state / 2147483647 - 0.5) * 6;
    };
    const hill = Array.from({ length: 1601 }, (_, i) => 200 + 400 * (1 - Math.abs(i - 800) / 800) + noise());
    expect(profileOf(road(hill, 10), 0).climbM).toBeGreaterThan(1000);
    expect(Math.abs(profileOf(road(hill, 10)).climbM / 400 - 1)).toBeLessThan(0.03);
  });

  it('an even sine of hills of 80 m keeps its climb within 3 in 100', () => {
    const hills = Array.from({ length: 2001 }, (_, i) => 300 + 40 * Math.sin((2 * Math.PI * i * 10) / 4000));
    expect(Math.abs(profileOf(road(hills, 10)).climbM / (5 * 80) - 1)).toBeLessThan(0.03);
  });

  it('fills gaps between known heights, and says when none is known', () => {
    expect(profileOf(road([100, undefined, 110], 500), 0).points.map((point) => point.elevationM)).toEqual([
      100,
      expect.closeTo(105, 3),
      110,
    ]);
    expect(profileOf(road([undefined, undefined], 500))).toMatchObject({ withoutHeights: true, climbM: 0 });
  });

  it('smoothing stays between the lowest and the highest, and climbs no more than the raw heights; standing still does no harm', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.double({ min: 0, max: 500, noNaN: true }), fc.constantFrom(0, 5, 80)), {
          minLength: 2,
          maxLength: 60,
        }),
        (raw) => {
          let at = 0;
          const track = raw.map(([height, step]): TrackPoint => {
            at += step;
            return { latitude: at * degreesPerM, longitude: 0, elevationM: height };
          });
          const profile = profileOf(track);
          const heights = raw.map(([height]) => height);
          for (const point of profile.points) {
            expect(point.elevationM).toBeGreaterThanOrEqual(Math.min(...heights) - 1e-6);
            expect(point.elevationM).toBeLessThanOrEqual(Math.max(...heights) + 1e-6);
          }
          expect(profile.climbM).toBeLessThanOrEqual(profileOf(track, 0).climbM + 1e-6);
        },
      ),
    );
  });
});
