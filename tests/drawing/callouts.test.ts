import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { meet } from '../../src/drawing/calloutColumn';
import {
  type Callout,
  type CalloutPoint,
  type CalloutRoom,
  type CalloutStyle,
  placeCallouts,
} from '../../src/drawing/callouts';
import { squareFonts } from '../helpers/squareMetrics';

/** Every letter is as wide as the type is high: ten letters of 8 pt are 80 pt wide. */
const style: CalloutStyle = {
  fonts: squareFonts,
  sizePt: 8,
  leadingPt: 10,
  gapPt: 4,
  sharePt: 1,
};
const room: CalloutRoom = { left: 200, right: 340, top: 20, bottom: 620, labelWidthPt: 160, stubPt: 8 };

const texts = ({ lines }: Callout): readonly string[] => lines.map(({ text }) => text);
const at = (x: number, y: number, ...lines: string[]): CalloutPoint => ({
  x,
  y,
  lines: (lines.length > 0 ? lines : ['V1']).map((text) => ({ text, face: 'narrow' }) as const),
});

/** Pairs that touch or overlap, in words. */
function clashes(callouts: readonly Callout[]): readonly string[] {
  return callouts.flatMap((a, index) =>
    callouts.slice(0, index).flatMap((b) => {
      const below = a.top >= b.top + b.heightPt || b.top >= a.top + a.heightPt;
      const [, portA, anchorA] = a.leader;
      const [, portB, anchorB] = b.leader;
      return [
        ...(a.side === b.side && !below ? [`labels at ${a.top} and ${b.top} overlap`] : []),
        ...(meet(portA, anchorA, portB, anchorB)
          ? [`leaders to ${anchorA.x},${anchorA.y} and ${anchorB.x},${anchorB.y} meet`]
          : []),
      ];
    }),
  );
}

describe('two straight lines', () => {
  it('meet when they cross or touch', () => {
    const p = (x: number, y: number) => ({ x, y });
    expect(meet(p(0, 0), p(2, 2), p(0, 2), p(2, 0))).toBe(true);
    expect(meet(p(0, 0), p(2, 0), p(1, 0), p(1, 5))).toBe(true);
    expect(meet(p(0, 0), p(2, 0), p(1, 1), p(1, 5))).toBe(false);
    expect(meet(p(0, 0), p(1, 0), p(2, 0), p(3, 0))).toBe(false);
  });
});

describe('callouts', () => {
  it('stand on the side of their point, level with it, led to it', () => {
    const { callouts, overflowPt } = placeCallouts(
      [at(220, 100, 'LEFT'), at(330, 300, 'RIGHT')],
      room,
      style,
    );
    expect(overflowPt).toBe(0);
    expect(callouts).toMatchObject([
      {
        side: 'left',
        x: 192,
        top: 95,
        lines: [{ text: 'LEFT', member: 0, given: 0, first: true }],
        leader: [
          { x: 192, y: 100 },
          { x: 200, y: 100 },
          { x: 220, y: 100 },
        ],
      },
      {
        side: 'right',
        x: 348,
        top: 295,
        leader: [
          { x: 348, y: 300 },
          { x: 340, y: 300 },
          { x: 330, y: 300 },
        ],
      },
    ]);
  });

  it('of points at the same place are one, with all their lines in order', () => {
    const { callouts } = placeCallouts(
      [at(220, 100, 'A'), at(300, 100, 'B'), at(220.5, 100.5, 'C')],
      room,
      style,
    );
    expect(callouts.map((one) => [one.members, texts(one)])).toEqual([
      [
        [0, 2],
        ['A', 'C'],
      ],
      [[1], ['B']],
    ]);
  });

  it('break lines wider than their column, between words', () => {
    const { callouts } = placeCallouts([at(220, 100, 'MAIN BURNER VALVE FROM TANK')], room, style);
    expect(callouts.flatMap(texts)).toEqual(['MAIN BURNER VALVE', 'FROM TANK']);
    expect(callouts[0]?.lines.map(({ first }) => first)).toEqual([true, false]);
    expect(callouts[0]?.heightPt).toBe(20);
  });

  it('fill both columns when one is too short', () => {
    const { callouts, overflowPt } = placeCallouts(
      Array.from({ length: 60 }, (_, index) => at(210 + index / 10, 30 + index)),
      room,
      style,
    );
    expect(overflowPt).toBe(0);
    expect(new Set(callouts.map(({ side }) => side)).size).toBe(2);
  });

  it('say by how much they are too tall, and still overlap nowhere', () => {
    const { callouts, overflowPt } = placeCallouts(
      Array.from({ length: 100 }, (_, index) => at(210 + index, 30 + ((index * 37) % 500))),
      room,
      style,
    );
    expect(overflowPt).toBe(50 * 14 - 4 - 600);
    expect(clashes(callouts)).toEqual([]);
  });

  it('do not cross for points in a row that climbs towards the edge', () => {
    const row = Array.from({ length: 12 }, (_, index) => at(205 + index * 5, 100 - index * 6, `V${index}`));
    expect(clashes(placeCallouts(row, room, style).callouts)).toEqual([]);
  });

  it('do not cross for points in one level or upright line', () => {
    expect(
      clashes(
        placeCallouts(
          Array.from({ length: 14 }, (_, index) => at(205 + index * 9, 300)),
          room,
          style,
        ).callouts,
      ),
    ).toEqual([]);
    expect(
      clashes(
        placeCallouts(
          Array.from({ length: 40 }, (_, index) => at(270, 100 + index * 3)),
          room,
          style,
        ).callouts,
      ),
    ).toEqual([]);
  });

  it('do not cross where points are in one line but for the last digit', () => {
    const row = Array.from({ length: 60 }, (_, index) =>
      at(210 + index * 2, 20 + (index % 7) * 4e-15, 'MAIN BURNER VALVE OF TANK'),
    );
    const { callouts, overflowPt } = placeCallouts(row, room, style);
    expect(overflowPt).toBeGreaterThan(0);
    expect(clashes(callouts)).toEqual([]);
  });

  it('are refused for a point outside the drawing', () => {
    expect(() => placeCallouts([at(200, 100)], room, style)).toThrow(RangeError);
    expect(() => placeCallouts([at(Number.NaN, 100)], room, style)).toThrow(RangeError);
  });

  it('never overlap, never cross, name every point once and stay in the room, whatever the points', () => {
    const coordinate = (least: number, most: number) =>
      fc.oneof(fc.integer({ min: least, max: most }), fc.double({ min: least, max: most, noNaN: true }));
    const point = fc.record({
      x: coordinate(room.left + 1, room.right - 1),
      y: coordinate(room.top, room.bottom),
      lines: fc.array(
        fc
          .constantFrom('V1', 'MAIN BURNER VALVE OF TANK', 'PILOT')
          .map((text) => ({ text, face: 'narrow' }) as const),
        {
          minLength: 1,
          maxLength: 3,
        },
      ),
    });
    // a few places, used again and again
    const crowd = fc
      .array(point, { minLength: 1, maxLength: 12 })
      .chain((places) =>
        fc
          .array(fc.nat(places.length - 1), { minLength: 1, maxLength: 120 })
          .map((picks) => picks.flatMap((pick) => places[pick] ?? [])),
      );
    fc.assert(
      fc.property(
        fc.oneof(
          fc.array(point, { maxLength: 40 }),
          fc.array(point, { minLength: 80, maxLength: 120 }),
          crowd,
        ),
        (points) => {
          const { callouts, overflowPt } = placeCallouts(points, room, style);
          expect(clashes(callouts)).toEqual([]);
          expect(callouts.flatMap(({ members }) => members).sort((a, b) => a - b)).toEqual([
            ...points.keys(),
          ]);
          for (const { top, heightPt } of callouts) {
            expect(top).toBeGreaterThanOrEqual(room.top - 1e-6);
            expect(top + heightPt).toBeLessThanOrEqual(room.bottom + overflowPt + 1e-6);
          }
        },
      ),
      // a failure is told as it is found: shrinking a hundred points takes minutes
      { numRuns: 150, endOnFailure: true },
    );
  });
});
