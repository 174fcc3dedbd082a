import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type DipstickInput, depthY, drawDipstick, stripWidthPt } from '../../src/drawing/dipstick';
import { drawValveTag, type ValveTagInput } from '../../src/drawing/valveTag';
import { drawingFaults } from '../helpers/drawingFaults';
import { plexFonts } from '../helpers/fonts';

const strip: DipstickInput = {
  name: 'strip',
  tank: 'water tank',
  units: ['US gal', 'L'],
  marks: [
    { depthMm: 25.4, left: '2', right: '8' },
    { depthMm: 76.2, left: '', right: '' },
    { depthMm: 127, left: '10', right: '38' },
  ],
  cannotBeDrawnMm: 12,
  reserveMm: 40,
  fromMm: 0,
  toMm: 150,
  note: '',
};

/** Level lines that begin at the left edge, by height. */
const levels = (input: DipstickInput) =>
  drawDipstick(input, plexFonts).shapes.flatMap((shape) => {
    if (shape.kind !== 'path') return [];
    const [from, to] = shape.pieces;
    return from && to && 'x' in from && 'x' in to && from.x === 0 && from.y === to.y && to.x < 20
      ? [from.y]
      : [];
  });

describe('a dipstick strip', () => {
  it('has its marks at their true distances: four inches are 288 points', () => {
    const [low = 0, middle = 0, high = 0] = levels(strip);
    expect(low - high).toBeCloseTo(288, 9);
    expect(low - middle).toBeCloseTo(144, 9);
    expect(depthY(strip, 0) - depthY(strip, 100)).toBeCloseTo((100 * 72) / 25.4, 9);
    expect(drawDipstick(strip, plexFonts).widthPt).toBeCloseTo((40 * 72) / 25.4, 9);
  });

  it('has a rule of a hundred millimetres to check the print with', () => {
    const rule = drawDipstick(strip, plexFonts).shapes.flatMap((shape) => {
      if (shape.kind !== 'path') return [];
      const [from, to] = shape.pieces;
      const upright =
        from && to && 'x' in from && 'x' in to && from.x === to.x && from.x === stripWidthPt / 2;
      return upright ? [Math.abs(to.y - from.y)] : [];
    });
    expect(rule).toHaveLength(1);
    expect(rule[0]).toBeCloseTo((100 * 72) / 25.4, 9);
  });

  it('goes on over several sheets, each with its own marks', () => {
    expect(levels({ ...strip, fromMm: 50 })).toHaveLength(2);
    expect(drawDipstick({ ...strip, fromMm: 50 }, plexFonts).alt).toContain('10 US gal at 127.0 mm');
    expect(() => drawDipstick({ ...strip, fromMm: 150 }, plexFonts)).toThrow(RangeError);
  });

  it('stays in its frame, words apart', () => {
    expect(drawingFaults(drawDipstick(strip, plexFonts))).toEqual([]);
  });
});

const tag: ValveTagInput = {
  name: 'tag',
  form: 'round',
  side: 'front',
  tag: 'F1',
  valve: 'main fuel tank valve',
  does: 'Lets main fuel out of the main tank.',
  parked: 'Parked: shut',
};
const forms = ['round', 'oblong'] as const;
const sides = ['front', 'back'] as const;

describe('a valve tag', () => {
  it('has its true size', () => {
    const round = drawValveTag(tag, plexFonts);
    expect([round.widthPt, round.heightPt].map((size) => (size * 25.4) / 72)).toEqual([50, 50]);
  });

  it('says on its front which valve it is, on its back what it does and how it is parked', () => {
    for (const form of forms) {
      const words = (side: 'front' | 'back') =>
        drawValveTag({ ...tag, form, side }, plexFonts)
          .shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []))
          .join(' ');
      expect(words('front')).toBe('F1 main fuel tank valve');
      expect(words('back')).toBe('Lets main fuel out of the main tank. Parked: shut');
    }
  });

  it('fits its words inside at 8 points or more, or refuses', () => {
    const some = fc.array(fc.constantFrom('valve', 'main', 'superheater', 'of', 'left-hand'), {
      minLength: 1,
      maxLength: 12,
    });
    let drawn = 0;
    fc.assert(
      fc.property(
        some,
        some,
        fc.constantFrom(...forms),
        fc.constantFrom(...sides),
        (valve, does, form, side) => {
          const input = { ...tag, valve: valve.join(' '), does: does.join(' '), form, side };
          try {
            const drawing = drawValveTag(input, plexFonts);
            drawn += 1;
            expect(drawingFaults(drawing)).toEqual([]);
            for (const shape of drawing.shapes)
              if (shape.kind === 'text') expect(shape.sizePt).toBeGreaterThanOrEqual(8);
          } catch (error) {
            expect(error).toBeInstanceOf(RangeError);
          }
        },
      ),
      { numRuns: 100 },
    );
    expect(drawn).toBeGreaterThan(50);
  });
});
