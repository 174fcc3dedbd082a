import { describe, expect, it } from 'vitest';
import { drawSign, leastSignMm, type SignNumber, signNumbers } from '../../src/drawing/signs/signs';
import { safetyColours } from '../../src/drawing/signs/surrounds';
import { trace } from '../../src/drawing/signs/trace';
import { asGrey, contrast } from '../../src/layout/contrast';
import { drawingFaults } from '../helpers/drawingFaults';
import { painted, sharesOf } from '../helpers/painted';

const { red, yellow, green, blue, black, white } = safetyColours;
const all = signNumbers.map((number) => [number, drawSign(number, 'words')] as const);
const ofKind = (letter: string) => all.filter(([number]) => number.startsWith(letter));

describe('safety signs', () => {
  it.each(all)('%s lies within its frame and has words for those who cannot see it', (number, sign) => {
    expect(drawingFaults(sign)).toEqual([]);
    expect(sign).toMatchObject({ name: number, alt: 'words' });
  });

  // BGV A8 (Germany, 2002), section 4: red at least 35 % of a prohibition's surface, the safety colour at least half of
  // that of any other sign
  it.each(all)('%s has enough of its safety colour', (number, sign) => {
    const shares = sharesOf(sign);
    const [colour, least] = (
      { W: [yellow, 0.5], P: [red, 0.35], M: [blue, 0.5], E: [green, 0.5], F: [red, 0.5] } as const
    )[number.charAt(0) as 'W' | 'P' | 'M' | 'E' | 'F'];
    const surface = 1 - (shares.get('none') ?? 0);
    expect((shares.get(colour) ?? 0) / surface).toBeGreaterThanOrEqual(least);
    // and enough of the symbol to be seen
    const ink = number.startsWith('W') || number.startsWith('P') ? black : white;
    expect((shares.get(ink) ?? 0) / surface).toBeGreaterThan(0.04);
  });

  it.each(ofKind('W'))('%s is a triangle of 60°, its border 0.06 of its base', (_, sign) => {
    const at = painted(sign.shapes);
    expect(sign.heightPt / sign.widthPt).toBeCloseTo(Math.sqrt(3) / 2, 6);
    const foot = sign.heightPt;
    expect([at(12, foot - 0.5), at(12, foot - 5.5), at(12, foot - 6.5)]).toEqual([black, black, yellow]);
    // half way up, the sides lie a quarter of the base from the edges of the frame
    const y = sign.heightPt / 2;
    expect([at(24.6, y), at(25.4, y), at(74.6, y), at(75.4, y)]).toEqual([
      undefined,
      black,
      black,
      undefined,
    ]);
  });

  it.each(ofKind('P'))(
    '%s is a disc with a ring of 0.1, and a bar of 0.08 that nothing interrupts',
    (_, sign) => {
      const at = painted(sign.shapes);
      expect([at(50, 0.5), at(50, 9.5), at(99.5, 50), at(1, 1)]).toEqual([red, red, red, undefined]);
      // the bar falls from the upper left to the lower right at 45°, red on its whole way
      for (let along = -49; along <= 49; along += 1) {
        const step = along / Math.SQRT2;
        expect(at(50 + step, 50 + step), `${along}`).toBe(red);
        for (const off of [-3.9, 3.9])
          expect(at(50 + step + off / Math.SQRT2, 50 + step - off / Math.SQRT2), `${along}`).toBe(red);
      }
      // 4.1 off its middle there is no red but where the ring is
      for (let along = -38; along <= 38; along += 1) {
        const step = along / Math.SQRT2;
        for (const off of [-4.2, 4.2])
          expect(at(50 + step + off / Math.SQRT2, 50 + step - off / Math.SQRT2), `${along}`).not.toBe(red);
      }
    },
  );

  it('can be told from each other without colour: what touches contrasts in grey too', () => {
    const pairs = [
      [black, yellow],
      [white, red],
      [white, blue],
      [white, green],
      [black, white],
    ] as const;
    for (const [one, other] of pairs) {
      expect(contrast(one, other)).toBeGreaterThanOrEqual(4.5);
      expect(contrast(asGrey(one), asGrey(other))).toBeGreaterThanOrEqual(4.5);
    }
    // the shape says what kind a sign is: triangle, disc, square
    const kind = (number: SignNumber) => {
      const at = painted(drawSign(number, '').shapes);
      return [at(2, 2) === undefined, at(98, 50) === undefined].join();
    };
    expect(new Set(ofKind('W').map(([number]) => kind(number)))).toEqual(new Set(['true,true']));
    expect(new Set([...ofKind('P'), ...ofKind('M')].map(([number]) => kind(number)))).toEqual(
      new Set(['true,false']),
    );
    expect(new Set([...ofKind('E'), ...ofKind('F')].map(([number]) => kind(number)))).toEqual(
      new Set(['false,false']),
    );
  });

  // ASR A1.3 (Germany, 2022), table 3: discs and squares of 12.5 mm are recognised from 0.5 m, of 25 mm from 1 m
  it.each([
    [0.5, 12.5],
    [1, 25],
  ])('are recognised from %d m if they are %d mm high', (distanceM, heightMm) => {
    expect(leastSignMm(distanceM)).toBe(heightMm);
  });
});

describe('an outline in short', () => {
  it('is read piece by piece, and refused where it cannot be read', () => {
    expect(trace('M 1 2 L 3 4 C 1 2 3 4 5 6 Z')).toEqual([
      { op: 'move', x: 1, y: 2 },
      { op: 'line', x: 3, y: 4 },
      { op: 'curve', x1: 1, y1: 2, x2: 3, y2: 4, x: 5, y: 6 },
      { op: 'close' },
    ]);
    expect(() => trace('M 1 x')).toThrow(RangeError);
    expect(() => trace('Q 1 2 3 4')).toThrow(RangeError);
  });
});
