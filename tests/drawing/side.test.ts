import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { meet } from '../../src/drawing/calloutColumn';
import type { Drawing } from '../../src/drawing/drawing';
import { drawSide, type SideInput } from '../../src/drawing/side';
import { drawingFaults } from '../helpers/drawingFaults';
import { english } from '../helpers/english';
import { plexFonts } from '../helpers/fonts';

const car: SideInput = {
  name: 'Invented Tourer',
  say: english.messages.say,
  lengthM: 4.4,
  widthM: 1.7,
  heightM: 2.1,
  wheelbaseM: 3,
  frontAxleBackM: 0.7,
  seats: 5,
  driverSide: 'left',
  steering: 'wheel',
  outline: 'open',
  singleWheel: undefined,
  places: [
    { number: 1, backM: 0.5, upM: 0.5, height: '20 in', items: [{ tag: 'P1', name: 'pilot valve' }] },
    { number: 2, backM: 2.5, upM: 1.5, height: '59 in', items: [{ tag: 'G1', name: 'steam gauge' }] },
  ],
};

const dots = (drawing: Drawing) =>
  drawing.shapes.flatMap((shape) => (shape.kind === 'circle' && shape.r === 2.3 ? [shape] : []));

/** Leaders, less their level ends. */
const leaders = ({ shapes }: Drawing) =>
  shapes.flatMap((shape) => {
    if (shape.kind !== 'path' || shape.paint.stroke?.widthPt !== 0.5 || shape.pieces.length !== 3) return [];
    const [, from, to] = shape.pieces;
    return from && to && 'x' in from && 'x' in to ? [[from, to] as const] : [];
  });

describe('the side view of a car', () => {
  it('has its places to scale, front to the left', () => {
    const [first, second] = dots(drawSide(car, plexFonts));
    if (!first || !second) throw new Error('no places');
    expect(second.cx).toBeGreaterThan(first.cx);
    // two metres back, one metre up
    expect((second.cx - first.cx) / (first.cy - second.cy)).toBeCloseTo(2, 9);
  });

  it('says every height, on the drawing and in words', () => {
    const drawing = drawSide(car, plexFonts);
    const words = drawing.shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []));
    expect(words).toEqual(expect.arrayContaining(['P1', '20 in up', 'G1', '59 in up']));
    expect(drawing.alt).toContain('2, 59 in above the ground: G1 steam gauge');
  });

  it('has no words over others and no leaders that cross, wherever the places are', () => {
    const somewhere = fc.record({
      backM: fc.double({ min: 0, max: 4.4, noNaN: true }),
      upM: fc.double({ min: 0, max: 2.2, noNaN: true }),
      tags: fc.integer({ min: 1, max: 9 }),
    });
    fc.assert(
      fc.property(
        fc.array(somewhere, { maxLength: 40 }),
        fc.constantFrom('wheel', 'tiller'),
        (where, steering) => {
          const places = where.map(({ backM, upM, tags }, index) => ({
            number: index + 1,
            backM,
            upM,
            height: `${Math.round(upM * 1000)} mm`,
            items: Array.from({ length: tags }, (_, tag) => ({ tag: `W${tag}`, name: 'valve' })),
          }));
          const drawing = drawSide({ ...car, steering, places }, plexFonts);
          expect(drawingFaults(drawing)).toEqual([]);
          const lines = leaders(drawing);
          const crossing = lines.filter(([a, b], index) =>
            lines.slice(0, index).some(([c, d]) => meet(a, b, c, d)),
          );
          expect(crossing).toEqual([]);
        },
      ),
      { numRuns: 60, endOnFailure: true },
    );
  });
});
