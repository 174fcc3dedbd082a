import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type TankEnd, twoToOneEnd } from '../../../src/calc/tank/ends';
import { shapeFaults, type TankShape, withinWalls } from '../../../src/calc/tank/shape';
import { chartByDepth, chartByVolume } from '../../../src/calc/tank/stick-chart';
import { tankOf } from '../../../src/calc/tank/tank';

const inch = 0.0254;
const usGallon = 3.785411784e-3;
const relative = (found: number, expected: number): number => Math.abs(found / expected - 1);
const flat: TankEnd = { kind: 'flat' };

const lying = (diameterIn: number, lengthIn: number, end: TankEnd): TankShape => ({
  kind: 'horizontal-cylinder',
  diameterM: diameterIn * inch,
  lengthM: lengthIn * inch,
  ends: [end, end],
});
const gallons = (shape: TankShape, depthIn: number): number =>
  tankOf(shape).volumeAtDepthM3(depthIn * inch) / usGallon;

describe('D. Jones, "Calculating Tank Volume" (2003): D 108 in, L 156 in, lying', () => {
  const depth = 42 * inch;
  it.each<[string, TankEnd, number[]]>([
    ['flat ends', flat, [1805.188288, 3093.285567, 5162.892974, 6186.571133]],
    [
      'ellipsoidal ends',
      { kind: 'ellipsoidal', depthM: depth },
      [2380.956542, 4203.69577, 7103.445236, 8407.39154],
    ],
    [
      'spherical ends',
      { kind: 'spherical', depthM: depth },
      [2303.961512, 4094.025626, 6935.163365, 8188.051253],
    ],
    [
      'conical ends',
      { kind: 'conical', depthM: depth },
      [2041.192358, 3648.490668, 6180.540774, 7296.981336],
    ],
    [
      'torispherical ends f 1, k 0.06',
      { kind: 'torispherical', dishRadiusShare: 1, cornerRadiusShare: 0.06 },
      [2028.626671, 3534.997331, 5939.89791, 7069.994663],
    ],
  ])('%s', (_, end, expected) => {
    for (const [index, depthIn] of [36, 54, 84, 108].entries()) {
      expect(relative(gallons(lying(108, 156, end), depthIn), expected[index] ?? Number.NaN)).toBeLessThan(
        1e-9,
      );
    }
  });
});

describe('D. Jones, "Calculating Tank Volume" (2003): D 132 in, standing, bottom 33 in deep', () => {
  it.each<['ellipsoidal' | 'spherical' | 'conical', number, number]>([
    ['ellipsoidal', 783.358168, 2902.831612],
    ['spherical', 583.601835, 2658.460583],
    ['conical', 250.674614, 2251.175536],
  ])('%s bottom', (kind, at24, at60) => {
    const shape: TankShape = {
      kind: 'vertical-cylinder',
      diameterM: 132 * inch,
      heightM: 100 * inch,
      bottom: { kind, depthM: 33 * inch },
      top: flat,
    };
    expect(relative(gallons(shape, 24), at24)).toBeLessThan(1e-8);
    expect(relative(gallons(shape, 60), at60)).toBeLessThan(1e-9);
  });
});

describe('small tanks', () => {
  it('MathWorld, "Spherical Cap": a sphere of diameter 1 filled to 0.7', () => {
    for (const end of [{ kind: 'hemispherical' }, { kind: 'spherical', depthM: 0.5 }] as const) {
      const lyingSphere = tankOf({ kind: 'horizontal-cylinder', diameterM: 1, lengthM: 0, ends: [end, end] });
      const standing = tankOf({ kind: 'vertical-cylinder', diameterM: 1, heightM: 0, bottom: end, top: end });
      expect(Math.abs(lyingSphere.volumeAtDepthM3(0.7) - 0.4105014400690663)).toBeLessThan(1e-12);
      expect(Math.abs(standing.volumeAtDepthM3(0.7) - 0.4105014400690663)).toBeLessThan(1e-12);
    }
  });

  it.each([
    [0.1, 0.052044],
    [0.2, 0.142378],
    [0.25, 0.195501],
    [0.3, 0.252316],
    [0.4, 0.37353],
  ])(
    'MathWorld, "Circular Segment": a lying cylinder filled to %d of its height is %d full',
    (height, share) => {
      const tank = tankOf({ kind: 'horizontal-cylinder', diameterM: 1, lengthM: 1, ends: [flat, flat] });
      expect(Math.abs(tank.volumeAtDepthM3(height) / tank.capacityM3 - share)).toBeLessThan(1e-6);
    },
  );

  it.each<[string, TankEnd, [number, number][]]>([
    [
      'flat',
      flat,
      [
        [3, 3.4458],
        [4, 5.143],
        [6, 8.8128],
        [9, 14.1797],
        [12, 17.6256],
      ],
    ],
    [
      '2:1 ellipsoidal',
      twoToOneEnd(12 * inch),
      [
        [3, 3.7518],
        [6, 9.792],
        [12, 19.584],
      ],
    ],
    [
      'hemispherical',
      { kind: 'hemispherical' },
      [
        [3, 4.0578],
        [12, 21.5423],
      ],
    ],
  ])('D 12 in, L 36 in with %s ends (worked from the Jones formulas)', (_, end, rows) => {
    for (const [depthIn, expected] of rows)
      expect(Math.abs(gallons(lying(12, 36, end), depthIn) - expected)).toBeLessThan(1e-4);
  });

  it('one full 2:1 ellipsoidal end holds π D³/24', () => {
    const end = twoToOneEnd(12 * inch);
    const shape: TankShape = {
      kind: 'vertical-cylinder',
      diameterM: 12 * inch,
      heightM: 0,
      bottom: end,
      top: end,
    };
    expect(tankOf(shape).capacityM3 / 2 / inch ** 3).toBeCloseTo(226.195, 3);
  });

  it.each([
    [2.5, 3.5894],
    [5, 9.18],
    [7.5, 14.7706],
    [10, 18.36],
  ])(
    'elliptical section 18 in wide, 10 in high, 30 in long at %d in (circle of the height, stretched)',
    (depthIn, expected) => {
      const shape: TankShape = {
        kind: 'elliptical',
        widthM: 18 * inch,
        heightM: 10 * inch,
        lengthM: 30 * inch,
      };
      expect(Math.abs(gallons(shape, depthIn) - expected)).toBeLessThan(1e-4);
    },
  );

  it('one inch in a 20 × 12 in box is 1.038961 US gal, in a 14 in standing cylinder 0.666398 US gal', () => {
    const box: TankShape = { kind: 'rectangular', lengthM: 20 * inch, widthM: 12 * inch, heightM: 10 * inch };
    const drum: TankShape = {
      kind: 'vertical-cylinder',
      diameterM: 14 * inch,
      heightM: 10 * inch,
      bottom: flat,
      top: flat,
    };
    expect(gallons(box, 1)).toBeCloseTo(1.038961, 6);
    expect(gallons(drum, 1)).toBeCloseTo(0.666398, 6);
  });

  it('a wedge: half of it is below 0.7071 of its height if sharp below', () => {
    const tank = tankOf({ kind: 'wedge', bottomLengthM: 0, topLengthM: 0.4, widthM: 0.3, heightM: 0.2 });
    expect(tank.capacityM3).toBeCloseTo((0.4 * 0.3 * 0.2) / 2, 12);
    expect(tank.depthAtVolumeM(tank.capacityM3 / 2)).toBeCloseTo(0.2 * Math.SQRT1_2, 10);
  });

  it('a sloping top: a box up to its low end, half a box more up to its high end', () => {
    const tank = tankOf({
      kind: 'sloping-top',
      lengthM: 0.8,
      widthM: 0.3,
      lowHeightM: 0.15,
      highHeightM: 0.25,
    });
    expect(tank.volumeAtDepthM3(0.15)).toBeCloseTo(0.8 * 0.3 * 0.15, 12);
    expect(tank.volumeAtDepthM3(0.2)).toBeCloseTo(0.8 * 0.3 * (0.15 + 0.05 * 0.75), 12);
    expect(tank.capacityM3).toBeCloseTo(0.8 * 0.3 * 0.2, 12);
  });

  it('takes walls off outside measures: the round twice, each flat end once', () => {
    const shape = withinWalls(lying(12, 36, flat), 0.1 * inch);
    expect(shape).toMatchObject({
      diameterM: expect.closeTo(11.8 * inch, 12),
      lengthM: expect.closeTo(35.8 * inch, 12),
    });
  });
});

describe('measured tanks', () => {
  const points = [
    { depthM: 0.1, volumeM3: 0.01 },
    { depthM: 0.2, volumeM3: 0.05 },
    { depthM: 0.3, volumeM3: 0.05 },
    { depthM: 0.4, volumeM3: 0.06 },
  ];

  it('goes through every reading, level where two readings are level, and starts empty', () => {
    const tank = tankOf({ kind: 'measured', points });
    for (const { depthM, volumeM3 } of points) expect(tank.volumeAtDepthM3(depthM)).toBeCloseTo(volumeM3, 12);
    expect(tank.volumeAtDepthM3(0)).toBe(0);
    expect(tank.volumeAtDepthM3(0.25)).toBeCloseTo(0.05, 12);
  });

  it('keeps what a stick cannot reach when a reading at nought says so', () => {
    const tank = tankOf({ kind: 'measured', points: [{ depthM: 0, volumeM3: 0.004 }, ...points] });
    expect(tank.volumeAtDepthM3(0)).toBe(0.004);
  });

  it('says what is wrong with readings', () => {
    expect(shapeFaults({ kind: 'measured', points: [] })).toHaveLength(1);
    const wrong = [...points, { depthM: 0.4, volumeM3: 0.07 }, { depthM: 0.5, volumeM3: 0.01 }];
    expect(shapeFaults({ kind: 'measured', points: wrong })).toEqual([
      'reading 5 does not stand higher than the one before it',
      'reading 6 holds less than the one before it',
    ]);
  });
});

describe('shapes that are no tanks', () => {
  it.each<[string, TankShape]>([
    ['no diameter', lying(0, 30, flat)],
    ['no length between flat ends', lying(12, 0, flat)],
    ['a number that is none', { kind: 'rectangular', lengthM: Number.NaN, widthM: 1, heightM: 1 }],
    ['a dish deeper than half the diameter', lying(12, 30, { kind: 'spherical', depthM: 7 * inch })],
    [
      'a dish flatter than its own tank is wide',
      lying(12, 30, { kind: 'torispherical', dishRadiusShare: 0.4, cornerRadiusShare: 0.1 }),
    ],
    ['a wedge without length', { kind: 'wedge', bottomLengthM: 0, topLengthM: 0, widthM: 1, heightM: 1 }],
  ])('%s', (_, shape) => {
    expect(shapeFaults(shape).length).toBeGreaterThan(0);
    expect(() => tankOf(shape)).toThrow(RangeError);
  });
});

const measure = fc.double({ min: 0.05, max: 2, noNaN: true });
const part = fc.double({ min: 0.05, max: 1, noNaN: true });
const endArbitrary = (diameterM: number): fc.Arbitrary<TankEnd> =>
  fc.oneof(
    fc.constant<TankEnd>(flat),
    fc.constant<TankEnd>({ kind: 'hemispherical' }),
    part.map((share): TankEnd => ({ kind: 'ellipsoidal', depthM: share * diameterM })),
    part.map((share): TankEnd => ({ kind: 'spherical', depthM: (share * diameterM) / 2 })),
    part.map((share): TankEnd => ({ kind: 'conical', depthM: share * diameterM })),
    part.map(
      (share): TankEnd => ({
        kind: 'torispherical',
        dishRadiusShare: 0.5 + share,
        cornerRadiusShare: share * 0.4,
      }),
    ),
  );
const shapeArbitrary: fc.Arbitrary<TankShape> = fc.oneof(
  measure.chain((diameterM) =>
    fc.record({
      kind: fc.constant('horizontal-cylinder' as const),
      diameterM: fc.constant(diameterM),
      lengthM: measure,
      ends: fc.tuple(endArbitrary(diameterM), endArbitrary(diameterM)),
    }),
  ),
  measure.chain((diameterM) =>
    fc.record({
      kind: fc.constant('vertical-cylinder' as const),
      diameterM: fc.constant(diameterM),
      heightM: measure,
      bottom: endArbitrary(diameterM),
      top: endArbitrary(diameterM),
    }),
  ),
  fc.record({
    kind: fc.constant('elliptical' as const),
    widthM: measure,
    heightM: measure,
    lengthM: measure,
  }),
  fc.record({
    kind: fc.constant('rectangular' as const),
    widthM: measure,
    heightM: measure,
    lengthM: measure,
  }),
  fc.record({ lengthM: measure, widthM: measure, lowHeightM: measure, more: measure }).map(
    ({ more, ...rest }): TankShape => ({
      kind: 'sloping-top',
      ...rest,
      highHeightM: rest.lowHeightM + more,
    }),
  ),
  fc.record({
    kind: fc.constant('wedge' as const),
    bottomLengthM: measure,
    topLengthM: measure,
    widthM: measure,
    heightM: measure,
  }),
  fc
    .array(fc.tuple(part, fc.double({ min: 0, max: 0.1, noNaN: true })), { minLength: 1, maxLength: 12 })
    .map((steps): TankShape => {
      let [depthM, volumeM3] = [0, 0];
      const points = steps.map(([up, more]) => {
        depthM += up;
        volumeM3 += more;
        return { depthM, volumeM3 };
      });
      return { kind: 'measured', points };
    }),
);

describe('invariants of every tank', () => {
  it('volume never falls with depth even within the last bits below full', () => {
    const tank = tankOf({
      kind: 'elliptical',
      widthM: 0.05,
      heightM: 0.05658433065177752,
      lengthM: 0.9774260577529563,
    });
    const [low, high] = [0.9999999999999988, 0.999999999999999].map((share) =>
      tank.volumeAtDepthM3(share * tank.fullDepthM),
    );
    expect((low ?? 0) - (high ?? 0)).toBeLessThan(1e-18);
  });

  it('volume never falls with depth, is nought at the bottom and the capacity at the top', () => {
    fc.assert(
      fc.property(
        shapeArbitrary,
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (shape, a, b) => {
          const tank = tankOf(shape);
          const [low, high] = [Math.min(a, b), Math.max(a, b)].map((share) =>
            tank.volumeAtDepthM3(share * tank.fullDepthM),
          );
          const noise = 1e-12 * Math.max(1, tank.capacityM3);
          expect(low).toBeLessThanOrEqual((high ?? 0) + noise);
          expect(Math.abs(tank.volumeAtDepthM3(0))).toBeLessThanOrEqual(noise);
          expect(tank.volumeAtDepthM3(tank.fullDepthM + 1)).toBeCloseTo(tank.capacityM3, 12);
        },
      ),
      { numRuns: 1000 },
    );
  });

  it('depth and volume turn each other back', () => {
    fc.assert(
      fc.property(shapeArbitrary, fc.double({ min: 0, max: 1, noNaN: true }), (shape, share) => {
        const tank = tankOf(shape);
        const volume = share * tank.capacityM3;
        expect(Math.abs(tank.volumeAtDepthM3(tank.depthAtVolumeM(volume)) - volume)).toBeLessThanOrEqual(
          1e-10 * Math.max(1, tank.capacityM3),
        );
      }),
      { numRuns: 1000 },
    );
  });

  it('a lying cylinder with like ends is the same upside down: f(h) + f(D − h) is the whole', () => {
    fc.assert(
      fc.property(
        measure.chain((d) => fc.tuple(fc.constant(d), endArbitrary(d))),
        measure,
        fc.double({ min: 0, max: 1, noNaN: true }),
        ([diameterM, end], lengthM, share) => {
          const tank = tankOf({ kind: 'horizontal-cylinder', diameterM, lengthM, ends: [end, end] });
          const sum = tank.volumeAtDepthM3(share * diameterM) + tank.volumeAtDepthM3((1 - share) * diameterM);
          expect(relative(sum, tank.capacityM3)).toBeLessThan(1e-9);
        },
      ),
      { numRuns: 300 },
    );
  });

  it('a full end holds the same lying and standing', () => {
    fc.assert(
      fc.property(
        measure.chain((d) => fc.tuple(fc.constant(d), endArbitrary(d))),
        ([diameterM, end]) => {
          const down = tankOf({ kind: 'horizontal-cylinder', diameterM, lengthM: 1, ends: [end, end] });
          const up = tankOf({ kind: 'vertical-cylinder', diameterM, heightM: 1, bottom: end, top: end });
          expect(relative(down.capacityM3, up.capacityM3)).toBeLessThan(1e-9);
        },
      ),
      { numRuns: 300 },
    );
  });
});

describe('stick charts', () => {
  const tank = tankOf({ kind: 'rectangular', lengthM: 0.5, widthM: 0.2, heightM: 0.3 });

  it('by depth: even steps and the full tank, said once', () => {
    expect(chartByDepth(tank, 0.1).map((row) => row.depthM)).toEqual([0, 0.1, 0.2, 0.3]);
    expect(chartByDepth(tank, 0.2).map((row) => row.depthM)).toEqual([0, 0.2, 0.3]);
  });

  it('by volume: the depth of each mark holds that volume', () => {
    for (const { depthM, volumeM3 } of chartByVolume(tank, 0.004)) {
      expect(tank.volumeAtDepthM3(depthM)).toBeCloseTo(volumeM3, 12);
    }
    expect(chartByVolume(tank, 0.004).at(-1)?.volumeM3).toBeCloseTo(0.03, 12);
  });

  it('refuses a step of nothing', () => {
    expect(() => chartByDepth(tank, 0)).toThrow(RangeError);
  });
});
