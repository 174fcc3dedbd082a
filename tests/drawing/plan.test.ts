import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Drawing } from '../../src/drawing/drawing';
import { drawPlan, type PlanInput, type PlanPlace } from '../../src/drawing/plan';
import type { TextShape } from '../../src/drawing/shapes';
import { toSvg } from '../../src/drawing/svg';
import { contrast } from '../../src/layout/contrast';
import { plexFonts } from '../helpers/fonts';
import { inventedRunabout, inventedTourer } from '../helpers/inventedTourer';

const place = (number: number, backM: number, rightM: number, ...items: PlanPlace['items']): PlanPlace => ({
  id: `place-${number}`,
  number,
  name: `place ${number} of the car, behind the door`,
  backM,
  rightM,
  items,
});

const car: PlanInput = {
  ...inventedTourer,
  places: [
    place(1, 0.5, 0, { tag: 'P1', name: 'pilot valve' }, { tag: 'P2', name: 'pilot needle valve' }),
    place(2, 1.5, -0.5, { tag: 'W1', name: 'bypass valve' }),
    place(3, 2.5, -0.5),
  ],
};

const texts = (drawing: Drawing): readonly TextShape[] =>
  drawing.shapes.filter((shape) => shape.kind === 'text');
const said = (drawing: Drawing): readonly string[] => texts(drawing).map(({ text }) => text);

/** A text's box: left, top, right, bottom. */
function boxOf({ x, y, text, face, sizePt, anchor }: TextShape): readonly [number, number, number, number] {
  const width = plexFonts[face].widthOf(text, sizePt);
  const left = x - width * { start: 0, middle: 0.5, end: 1 }[anchor];
  return [left, y - plexFonts[face].capHeight * sizePt, left + width, y];
}

/** Texts that run out of the drawing or into each other. The driver's seat is under the leaders and does not count. */
function clashes(drawing: Drawing): readonly string[] {
  const boxes = texts(drawing)
    .filter(({ text }) => text !== 'driver')
    .map((shape) => [shape.text, boxOf(shape)] as const);
  return boxes.flatMap(([text, [left, top, right, bottom]], index) => [
    ...(left < 0 || top < 0 || right > drawing.widthPt || bottom > drawing.heightPt
      ? [`${text} runs out`]
      : []),
    ...boxes
      .slice(0, index)
      .flatMap(([other, [l, t, r, b]]) =>
        left < r - 0.01 && l < right - 0.01 && top < b && t < bottom ? [`${text} runs into ${other}`] : [],
      ),
  ]);
}

/** The dots at the ends of leaders, in order of the places. */
const dots = (drawing: Drawing) =>
  drawing.shapes.filter((shape) => shape.kind === 'circle' && shape.r === 2.3);

describe('the plan of a car', () => {
  it('numbers and names every place, with the tags of the parts found there', () => {
    const words = said(drawPlan(car, plexFonts)).join('|');
    for (const wanted of ['|1|', '|2|', '|3|', '|P1, P2|', '|W1|', 'front', 'driver'])
      expect(`|${words}|`).toContain(wanted);
  });

  it('says the same in words', () => {
    expect(drawPlan(car, plexFonts).alt).toContain(
      '2, place 2 of the car, behind the door: W1 bypass valve. 3,',
    );
  });

  it('has its places to the scale of its bar, front upwards', () => {
    const drawing = drawPlan(car, plexFonts);
    const places = dots(drawing).map((dot) => (dot.kind === 'circle' ? [dot.cx, dot.cy] : []));
    const [lower, upper] = places
      .filter(([x = 0]) => x < drawing.widthPt / 2 - 20)
      .sort(([, a = 0], [, b = 0]) => b - a);
    const metre = (lower?.[1] ?? 0) - (upper?.[1] ?? 0);
    const bar = drawing.shapes.findIndex((shape) => shape.kind === 'text' && shape.text === '1 m') - 4;
    const [line] = drawing.shapes.slice(bar);
    const ends = line?.kind === 'path' ? line.pieces.map((piece) => ('x' in piece ? piece.x : 0)) : [];
    expect(metre).toBeGreaterThan(50);
    expect((ends[1] ?? 0) - (ends[0] ?? 0)).toBeCloseTo(metre, 6);
  });

  it('has the driver on the right side', () => {
    const xOf = (more: Partial<PlanInput>): number =>
      texts(drawPlan({ ...car, ...more }, plexFonts)).find(({ text }) => text === 'driver')?.x ?? Number.NaN;
    expect(xOf({ driverSide: 'left' })).toBeLessThan(240);
    expect(xOf({ driverSide: 'right' })).toBeGreaterThan(240);
    expect(xOf({ driverSide: 'centre', seats: 1 })).toBeCloseTo(240, 6);
  });

  it('is drawn with a tiller too, and without any place', () => {
    const wheel = toSvg(drawPlan({ ...car, places: [] }, plexFonts));
    const tiller = toSvg(drawPlan({ ...car, ...inventedRunabout, places: [] }, plexFonts));
    expect(tiller).not.toBe(wheel);
  });

  it('grows when its labels need more room than it has', () => {
    const many = Array.from({ length: 60 }, (_, index) =>
      place(index + 1, 0.1 + index * 0.07, (index % 9) / 10 - 0.4, { tag: `V${index}`, name: 'valve' }),
    );
    const drawing = drawPlan({ ...car, places: many }, plexFonts);
    expect(drawing.heightPt).toBeGreaterThan(drawPlan(car, plexFonts).heightPt);
    expect(clashes(drawing)).toEqual([]);
  });

  it('has a steering wheel paler than the leaders that cross it, and still to be seen', () => {
    const { shapes } = drawPlan(car, plexFonts);
    const rims = shapes.flatMap((shape) =>
      shape.kind === 'circle' && shape.paint.fill === undefined ? (shape.paint.stroke ?? []) : [],
    );
    const rim = rims.find(({ widthPt }) => widthPt === 2.4);
    const leaders = shapes.flatMap((shape) =>
      shape.kind === 'path' && shape.paint.stroke?.widthPt === 0.5 ? [shape.paint.stroke.colour] : [],
    );
    expect(contrast(rim?.colour ?? '#ffffff', '#ffffff')).toBeGreaterThan(2);
    expect(contrast(rim?.colour ?? '#000000', '#ffffff')).toBeLessThan(4.5);
    expect(leaders.length).toBeGreaterThan(1);
    for (const colour of leaders) expect(contrast(colour, '#ffffff')).toBeGreaterThan(7);
  });

  it('is the same for the same car', () => {
    expect(toSvg(drawPlan(car, plexFonts))).toBe(toSvg(drawPlan(car, plexFonts)));
  });

  it('has no words over others or over its edge, wherever the places are', () => {
    const somewhere = fc.record({
      backM: fc.double({ min: -0.2, max: 4.6, noNaN: true }),
      rightM: fc.double({ min: -1.2, max: 1.2, noNaN: true }),
      items: fc.array(
        fc.constantFrom({ tag: 'W10', name: 'left blow-down tap' }, { tag: 'F3', name: 'valve' }),
        { maxLength: 4 },
      ),
    });
    fc.assert(
      fc.property(
        fc.array(somewhere, { maxLength: 40 }),
        fc.constantFrom('wheel', 'tiller'),
        (where, steering) => {
          const places = where.map(({ backM, rightM, items }, index) =>
            place(index + 1, backM, rightM, ...items),
          );
          const drawing = drawPlan({ ...car, steering, places }, plexFonts);
          expect(clashes(drawing)).toEqual([]);
          expect(toSvg(drawing)).not.toContain('NaN');
        },
      ),
      { numRuns: 60, endOnFailure: true },
    );
  });
});
