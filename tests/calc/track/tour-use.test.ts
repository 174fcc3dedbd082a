import { describe, expect, it } from 'vitest';
import type { TrackPoint } from '../../../src/calc/track/gpx';
import { profileOf } from '../../../src/calc/track/profile';
import { stretchesOf, usedAlong } from '../../../src/calc/track/tour-use';

/** 6 km level, then 6 km climbing at 3 in 100. */
const track = Array.from({ length: 121 }, (_, i): TrackPoint => {
  const at = i * 100;
  return { latitude: at / 110574, longitude: 0, elevationM: at <= 6000 ? 100 : 100 + (at - 6000) * 0.03 };
});

describe('use along a way', () => {
  const stretches = stretchesOf(profileOf(track));

  it('tells the country of each stretch by its climbing', () => {
    expect(stretches.map(({ terrain }) => terrain)).toEqual(['level', 'level', 'hilly', 'hilly']);
    expect(stretches.reduce((sum, { climbM }) => sum + climbM, 0)).toBeCloseTo(180, 0);
  });

  it('adds up from stretch to stretch and never falls', () => {
    const used = usedAlong(stretches, { level: 1e-6, rolling: 2e-6, hilly: 4e-6 });
    const end = stretches.at(-1)?.toM ?? Number.NaN;
    expect(used(0)).toBe(0);
    expect(used(end / 2)).toBeCloseTo((end / 2) * 1e-6, 12);
    expect(used(end)).toBeCloseTo((end / 2) * 5e-6, 12);
    expect(used(end + 1000)).toBe(used(end));
  });
});
