/**
 * The sRGB colour space as an ICC profile, which PDF/A asks for beside colours given as red, green and blue.
 *
 * A display profile of version 4 (ISO 15076-1) with one matrix and one curve, 0.5 KB. The curve is that of
 * IEC 61966-2-1; the matrix its primaries brought to the profile white D50 by the Bradford method, as in the
 * sRGB profiles of the International Color Consortium.
 */

const white = [0.9642, 1, 0.8249];
/** From D65 to D50, by rows. */
const adaptation = [1.04791, 0.02293, -0.0502, 0.0296, 0.99046, -0.01707, -0.00925, 0.01506, 0.75179];
/** CIE XYZ of full red, green and blue; together they make the white. */
const primaries = {
  rXYZ: [0.43607, 0.22249, 0.01392],
  gXYZ: [0.38515, 0.71687, 0.09708],
  bXYZ: [0.14307, 0.06061, 0.7141],
};
/** Y = ((X + 0.055) / 1.055) ^ 2.4 above 0.04045, X / 12.92 below: gamma, a, b, c, d of curve type 3. */
const curve = [2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045];

/** The profile's bytes; the same every time. */
export function srgbProfile(): Uint8Array {
  const trc = tag('para', [...short(3), ...short(0), ...curve.flatMap(fixed)]);
  const tags: readonly (readonly [string, readonly number[]])[] = [
    ['desc', text('sRGB')],
    ['cprt', text('No copyright, use freely')],
    ['wtpt', tag('XYZ ', white.flatMap(fixed))],
    ['chad', tag('sf32', adaptation.flatMap(fixed))],
    ...Object.entries(primaries).map(([name, xyz]) => [name, tag('XYZ ', xyz.flatMap(fixed))] as const),
    ['rTRC', trc],
    ['gTRC', trc],
    ['bTRC', trc],
  ];
  return assemble(tags);
}

/** Header, table of tags, tags. Equal tags share one place. */
function assemble(tags: readonly (readonly [string, readonly number[]])[]): Uint8Array {
  const table: number[] = [...long(tags.length)];
  const data: number[] = [];
  const places = new Map<readonly number[], number>();
  const start = 128 + 4 + tags.length * 12;
  for (const [name, bytes] of tags) {
    const place = places.get(bytes) ?? start + data.length;
    if (!places.has(bytes)) data.push(...bytes, ...new Array((4 - (bytes.length % 4)) % 4).fill(0));
    places.set(bytes, place);
    table.push(...letters(name), ...long(place), ...long(bytes.length));
  }
  return Uint8Array.from([...header(start + data.length), ...table, ...data]);
}

function header(size: number): number[] {
  const date = [2026, 1, 1, 0, 0, 0].flatMap(short);
  const bytes = [
    ...long(size),
    ...long(0),
    ...long(0x04200000),
    ...letters('mntrRGB XYZ '),
    ...date,
    ...letters('acsp'),
    ...new Array(28).fill(0),
    ...white.flatMap(fixed),
  ];
  return [...bytes, ...new Array(128 - bytes.length).fill(0)];
}

function tag(type: string, bytes: readonly number[]): number[] {
  return [...letters(type), ...long(0), ...bytes];
}

/** A text in one language (`mluc`). */
function text(words: string): number[] {
  const utf16 = [...words].flatMap((letter) => short(letter.charCodeAt(0)));
  return tag('mluc', [
    ...long(1),
    ...long(12),
    ...letters('enUS'),
    ...long(utf16.length),
    ...long(28),
    ...utf16,
  ]);
}

function letters(words: string): number[] {
  return [...words].map((letter) => letter.charCodeAt(0));
}

function short(value: number): number[] {
  return [(value >> 8) & 255, value & 255];
}

function long(value: number): number[] {
  return [...short(value >>> 16), ...short(value & 0xffff)];
}

/** A signed number with 16 bits after the point. */
function fixed(value: number): number[] {
  return long(Math.round(value * 65536) >>> 0);
}
