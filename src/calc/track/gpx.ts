/**
 * Reading a recorded or planned way from a GPX 1.1 file (Topografix GPX 1.1 schema).
 *
 * Tracks are read first; a file without tracks may have a route instead. Names, times and extensions are left alone.
 */
import { SaxesParser } from 'saxes';
import { bad, type Diagnostic, good, type Outcome } from '../../diagnostic/diagnostic';

/** One point of a way; degrees, and metres above the sea if the file says. */
export interface TrackPoint {
  readonly latitude: number;
  readonly longitude: number;
  readonly elevationM?: number;
}

interface Found {
  readonly point: { latitude: number; longitude: number; elevationM?: number };
  readonly kind: string;
}

/** Read the points of a GPX text in order. Every faulty point is reported at its place. */
export function readGpx(text: string, file: string): Outcome<readonly TrackPoint[]> {
  const found: Found[] = [];
  const problems: Diagnostic[] = [];
  const parser = new SaxesParser();
  const open: string[] = [];
  const tell = (
    message: string,
    wrong: string,
    expected: string,
    mend: string,
    code: Diagnostic['code'] = 'track-value',
  ): void => {
    const at = { file, line: parser.line, column: parser.column + 1 };
    problems.push({ code, severity: 'error', at, message, found: wrong, expected, mend });
  };
  let elevation = '';
  parser.on('error', (error) => {
    if (problems.some((problem) => problem.code === 'track-form')) return;
    tell(
      'the file is not well-formed XML',
      error.message.replace(/^\d+:\d+: /, ''),
      'a GPX 1.1 file',
      'save the track again from the device or map it came from',
      'track-form',
    );
  });
  parser.on('opentag', ({ name, attributes }) => {
    const local = name.replace(/^.*:/, '');
    open.push(local);
    if (local === 'trkpt' || local === 'rtept') {
      const [latitude, longitude] = [degrees(attributes.lat, 90), degrees(attributes.lon, 180)];
      if (latitude === undefined || longitude === undefined) {
        tell(
          'a point of the track has no place',
          `lat="${attributes.lat ?? ''}" lon="${attributes.lon ?? ''}"`,
          'latitude from -90 to 90 and longitude from -180 to 180',
          'take the point out, or correct it',
        );
      }
      found.push({ kind: local, point: { latitude: latitude ?? 0, longitude: longitude ?? 0 } });
    }
    if (local === 'ele') elevation = '';
  });
  parser.on('text', (piece) => {
    if (open.at(-1) === 'ele') elevation += piece;
  });
  parser.on('closetag', () => {
    const local = open.pop();
    const last = found.at(-1);
    if (local !== 'ele' || !last || open.at(-1) !== last.kind) return;
    const metres = Number(elevation.trim() || Number.NaN);
    if (Number.isFinite(metres)) last.point.elevationM = metres;
    else
      tell(
        'a height of the track is not a number',
        `\`${elevation.trim()}\``,
        'metres above the sea',
        'take the height out, or correct it',
      );
  });
  parser.write(text).close();
  if (problems.length > 0) return bad(problems);
  const kind = found.some((each) => each.kind === 'trkpt') ? 'trkpt' : 'rtept';
  const points = found.filter((each) => each.kind === kind).map((each) => each.point);
  if (points.length >= 2) return good(points);
  tell(
    'the file holds no way',
    `${points.length} points`,
    'a track or a route of two points or more',
    'save the way as a track in GPX 1.1',
    'track-form',
  );
  return bad(problems);
}

function degrees(text: string | undefined, most: number): number | undefined {
  const value = Number(text?.trim() || Number.NaN);
  return Math.abs(value) <= most ? value : undefined;
}
