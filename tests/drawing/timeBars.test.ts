import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Drawing } from '../../src/drawing/drawing';
import { drawTimeBars, type TimeBar, type TimeBarsInput } from '../../src/drawing/timeBars';
import { contrast } from '../../src/layout/contrast';
import { drawingFaults } from '../helpers/drawingFaults';
import { plexFonts } from '../helpers/fonts';

const start: TimeBarsInput = {
  name: 'start',
  alt: 'the start-up',
  lanes: [
    {
      name: 'look over',
      bars: [{ from: -60, to: -30, kind: 'plain', least: { from: -40, to: -20 } }],
    },
    { name: 'raise steam', bars: [{ from: -30, to: 0, kind: 'hatched', least: { from: -20, to: 0 } }] },
  ],
  counts: 'minutes before',
  minute: (minute) => String(Math.abs(minute)),
  clock: (minute) => `09:${60 + minute}`,
  key: [
    { of: 'plain', says: 'in good time' },
    { of: 'hatched', says: 'with fire' },
    { of: 'least', says: 'at the least' },
  ],
};

const rects = ({ shapes }: Drawing) => shapes.flatMap((shape) => (shape.kind === 'rect' ? [shape] : []));
/** Where the scale has a number, by the number. */
const tickX = ({ shapes }: Drawing, number: string): number => {
  const [tick] = shapes.flatMap((shape) => (shape.kind === 'text' && shape.text === number ? [shape.x] : []));
  if (tick === undefined) throw new Error(`no ${number} on the scale`);
  return tick;
};

describe('bars over time', () => {
  it('begin and end where the scale has their minutes, what is the least below what is good', () => {
    const drawing = drawTimeBars(start, plexFonts);
    const [good, least, fire] = rects(drawing);
    if (!good || !least || !fire) throw new Error('a bar is gone');
    expect(good.x).toBeCloseTo(tickX(drawing, '60'), 6);
    expect(good.x + good.width).toBeCloseTo(tickX(drawing, '30'), 6);
    expect(least.x).toBeCloseTo(tickX(drawing, '40'), 6);
    expect(least.x + least.width).toBeCloseTo(tickX(drawing, '20'), 6);
    expect(least.y).toBeGreaterThan(good.y + good.height);
    expect(fire.x).toBeCloseTo(good.x + good.width, 6);
    expect(fire.x + fire.width).toBeCloseTo(tickX(drawing, '0'), 6);
  });

  it('have the clock above the minutes they stand for', () => {
    const drawing = drawTimeBars(start, plexFonts);
    expect(tickX(drawing, '09:30')).toBe(tickX(drawing, '30'));
  });

  it('are seen even if they have no length', () => {
    const bars: TimeBar[] = [{ from: 5, to: 5, kind: 'plain' }];
    const drawing = drawTimeBars({ ...start, lanes: [{ name: 'now', bars }], key: [] }, plexFonts);
    expect(rects(drawing).map(({ width }) => width)).toEqual([2]);
  });

  it('stand out from the lines of the scale, which carry nothing that its numbers do not', () => {
    const drawing = drawTimeBars(start, plexFonts);
    const edges = rects(drawing).flatMap(({ paint }) => paint.stroke?.colour ?? []);
    const left = tickX(drawing, '50');
    const grid = drawing.shapes.flatMap((shape) => {
      const [first] = shape.kind === 'path' ? shape.pieces : [];
      return shape.kind === 'path' && first && 'x' in first && first.x === left
        ? (shape.paint.stroke?.colour ?? [])
        : [];
    });
    expect(grid).toHaveLength(1);
    for (const colour of grid) expect(contrast(colour, '#ffffff')).toBeLessThan(2);
    for (const colour of edges) expect(contrast(colour, '#ffffff')).toBeGreaterThan(7);
  });

  it('lie in their frame, no words over others, whatever their names and lengths', () => {
    const name = fc
      .array(fc.constantFrom('driver', 'the helper', 'soak', 'of the main vaporizer'), {
        minLength: 1,
        maxLength: 9,
      })
      .map((words) => words.join(' '));
    const bar = fc
      .tuple(fc.integer({ min: -900, max: 900 }), fc.nat({ max: 400 }), fc.boolean())
      .map(([from, long, fire]): TimeBar => ({ from, to: from + long, kind: fire ? 'hatched' : 'plain' }));
    const lane = fc.record({ name, bars: fc.array(bar, { minLength: 1, maxLength: 4 }) });
    fc.assert(
      fc.property(fc.array(lane, { minLength: 1, maxLength: 8 }), (lanes) => {
        const input = {
          ...start,
          lanes,
          clock: () => '23:59',
          minute: (minute: number) => `${minute < 0 ? '−' : '+'}${Math.abs(minute)}`,
        };
        expect(drawingFaults(drawTimeBars(input, plexFonts))).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });
});
