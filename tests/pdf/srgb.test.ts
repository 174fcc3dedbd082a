import { describe, expect, it } from 'vitest';
import { srgbProfile } from '../../src/pdf/srgb';

const profile = Buffer.from(srgbProfile());

/** The numbers of a tag, 16 bits after the point, from `skip` bytes on. */
function numbers(name: string, skip = 8): number[] {
  for (let entry = 0; entry < profile.readUInt32BE(128); entry += 1) {
    const at = 132 + entry * 12;
    if (profile.toString('latin1', at, at + 4) !== name) continue;
    const [start, length] = [profile.readUInt32BE(at + 4), profile.readUInt32BE(at + 8)];
    return Array.from(
      { length: (length - skip) / 4 },
      (_, index) => profile.readInt32BE(start + skip + index * 4) / 65536,
    );
  }
  throw new Error(`no tag ${name}`);
}

describe('the sRGB profile', () => {
  it('is as long as it says, with tags inside it on whole words', () => {
    expect(profile.readUInt32BE(0)).toBe(profile.length);
    for (let entry = 0; entry < profile.readUInt32BE(128); entry += 1) {
      const [start, length] = [
        profile.readUInt32BE(132 + entry * 12 + 4),
        profile.readUInt32BE(132 + entry * 12 + 8),
      ];
      expect(start % 4).toBe(0);
      expect(start + length).toBeLessThanOrEqual(profile.length);
    }
  });

  // ICC.1:2022 (profile version 4), 7.2.16: the profile connection space illuminant
  it('has the white of the profile connection space, which full red, green and blue add up to', () => {
    expect(numbers('wtpt').map((value) => value.toFixed(4))).toEqual(['0.9642', '1.0000', '0.8249']);
    for (const axis of [0, 1, 2]) {
      const sum = ['rXYZ', 'gXYZ', 'bXYZ'].reduce((total, name) => total + (numbers(name)[axis] ?? 0), 0);
      expect(sum).toBeCloseTo(numbers('wtpt')[axis] ?? 0, 3);
    }
  });

  it('has primaries that, taken back to D65, are those of IEC 61966-2-1 (ITU-R BT.709 chromaticities)', () => {
    const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0, i = 0] = numbers('chad');
    const chromaticity = (name: string): string[] => {
      const [x = 0, y = 0, z = 0] = numbers(name);
      const det = a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);
      const back = [
        (x * (e * i - f * h) + y * (c * h - b * i) + z * (b * f - c * e)) / det,
        (x * (f * g - d * i) + y * (a * i - c * g) + z * (c * d - a * f)) / det,
        (x * (d * h - e * g) + y * (b * g - a * h) + z * (a * e - b * d)) / det,
      ];
      const sum = back.reduce((total, value) => total + value, 0);
      return back.slice(0, 2).map((value) => (value / sum).toFixed(2));
    };
    expect(chromaticity('rXYZ')).toEqual(['0.64', '0.33']);
    expect(chromaticity('gXYZ')).toEqual(['0.30', '0.60']);
    expect(chromaticity('bXYZ')).toEqual(['0.15', '0.06']);
  });

  it('has the curve of IEC 61966-2-1, without a step where its two parts meet', () => {
    const [gamma = 0, a = 0, b = 0, c = 0, knee = 0] = numbers('rTRC', 12);
    expect(gamma).toBeCloseTo(2.4, 4);
    expect(knee).toBeCloseTo(0.04045, 4);
    expect((a + b) ** gamma).toBeCloseTo(1, 4);
    expect((a * knee + b) ** gamma).toBeCloseTo(c * knee, 4);
  });
});
