/** What a spec says of the body, seen in plan and side view. */
import { describe, expect, it } from 'vitest';
import { bodyOf, wheelsOf } from '../../src/drawing/carBody';
import { carOutline } from '../../src/drawing/carOutline';
import { inks } from '../../src/drawing/carScale';
import type { Drawing, Shape } from '../../src/drawing/drawing';
import { drawPlan, type PlanInput } from '../../src/drawing/plan';
import { sideOutline } from '../../src/drawing/sideOutline';
import { isRoofed, type Outline, outlines } from '../../src/spec/schema/identity';
import { drawingFaults } from '../helpers/drawingFaults';
import { plexFonts } from '../helpers/fonts';
import { inventedRunabout, inventedTourer } from '../helpers/inventedTourer';

const touring: PlanInput = { ...inventedTourer, places: [] };
const runabout: PlanInput = { ...touring, ...inventedRunabout };
const cars = [
  ['a touring car', touring],
  ['a runabout', runabout],
] as const;

/** One point a metre, so that what is drawn reads in metres. */
const plain = { ptPerM: 1, at: (back: number, right: number) => ({ x: right, y: back }) };
const upright = { ptPerM: 1, at: (back: number, up: number) => ({ x: back, y: up }) };

const pointsOf = (shape: Shape): readonly { readonly x: number; readonly y: number }[] =>
  shape.kind === 'path' ? shape.pieces.flatMap((piece) => ('x' in piece ? [piece] : [])) : [];

const tyres = (input: PlanInput) =>
  carOutline(input, plain).flatMap((shape) =>
    shape.kind === 'rect' && shape.paint.fill === inks.tyre
      ? [{ back: shape.y + shape.height / 2, right: shape.x + shape.width / 2 }]
      : [],
  );

const highest = (input: PlanInput & { readonly heightM: number }) =>
  Math.max(...sideOutline(input, upright).flatMap((shape) => pointsOf(shape).map(({ y }) => y)));

describe.each(cars)('%s', (_, car) => {
  const rear = car.frontAxleBackM + car.wheelbaseM;

  it('stands on four wheels, in pairs on its axles', () => {
    const wheels = tyres(car);
    expect(wheels).toHaveLength(4);
    expect(wheels.map(({ back }) => back.toFixed(6))).toEqual(
      [car.frontAxleBackM, car.frontAxleBackM, rear, rear].map((back) => back.toFixed(6)),
    );
    expect(wheels.reduce((sum, { right }) => sum + right, 0)).toBeCloseTo(0, 9);
    expect(wheels.every(({ right }) => Math.abs(right) > car.widthM / 4)).toBe(true);
  });

  it.each(['front', 'rear'] as const)('stands on three, the one at the %s in the middle', (singleWheel) => {
    const wheels = tyres({ ...car, singleWheel });
    expect(wheels).toHaveLength(3);
    const alone = wheels.filter(({ right }) => Math.abs(right) < 1e-9);
    expect(alone).toHaveLength(1);
    expect(alone[0]?.back).toBeCloseTo(singleWheel === 'front' ? car.frontAxleBackM : rear, 9);
  });

  it('has its body behind a front wheel that stands alone, and everybody behind the dash', () => {
    const alone = { ...car, singleWheel: 'front' as const };
    const body = bodyOf(alone);
    expect(body.nose).toBeGreaterThan(car.frontAxleBackM + body.wheel * 0.4);
    expect(body.dash).toBeGreaterThan(body.nose);
    for (const { back } of body.seatRows) expect(back - 0.23).toBeGreaterThan(body.dash);
    expect(wheelsOf(alone, body)).toHaveLength(3);
  });

  it('has mudguards over its wheels unless it is bare', () => {
    const guards = (outline: Outline) =>
      carOutline({ ...car, outline }, plain).filter(
        (shape) => shape.kind === 'rect' && shape.paint.fill === inks.paper,
      ).length;
    expect(guards('open')).toBe(4);
    expect(guards('bare')).toBe(0);
  });

  it.each(outlines)('is roofed from above if it is (%s)', (outline) => {
    const longest = Math.max(
      0,
      ...carOutline({ ...car, outline }, plain)
        .filter((shape) => shape.kind === 'path' && shape.paint.stroke?.dashPt !== undefined)
        .map(
          (shape) =>
            Math.max(...pointsOf(shape).map(({ y }) => y)) - Math.min(...pointsOf(shape).map(({ y }) => y)),
        ),
    );
    if (!isRoofed(outline)) return expect(longest).toBe(0);
    const { seatRows } = bodyOf({ ...car, outline });
    expect(longest).toBeGreaterThan((seatRows.at(-1)?.back ?? 0) - (seatRows[0]?.back ?? 0) + 0.5);
    expect(longest).toBeLessThan(car.lengthM);
  });

  it.each(outlines.filter(isRoofed))('has its roof at its height from the side (%s)', (outline) => {
    for (const heightM of [1.9, 2.4]) expect(highest({ ...car, outline, heightM })).toBeCloseTo(heightM, 9);
  });

  it.each(outlines)('stays inside its drawing (%s)', (outline) => {
    for (const singleWheel of [undefined, 'front', 'rear'] as const) {
      const drawing: Drawing = drawPlan({ ...car, outline, singleWheel }, plexFonts);
      expect(drawingFaults({ ...drawing, shapes: drawing.shapes.filter(isNotDriver) })).toEqual([]);
    }
  });
});

const isNotDriver = (shape: Shape): boolean => shape.kind !== 'text' || shape.text !== 'driver';

it('a van has its driver far forward, and a wall behind him that no seat is behind', () => {
  const [open, van] = [bodyOf(touring), bodyOf({ ...touring, outline: 'van' })];
  expect(van.seatRows).toHaveLength(1);
  expect(van.seatRows[0]?.back).toBeLessThan((open.seatRows[0]?.back ?? 0) - 0.3);
  const walls = carOutline({ ...touring, outline: 'van' }, plain).flatMap((shape) => {
    const [a, b] = pointsOf(shape);
    const isWall =
      pointsOf(shape).length === 2 && a && b && a.y === b.y && a.y > (van.seatRows[0]?.back ?? 0);
    return isWall && Math.abs(b.x - a.x - 2 * van.tubHalf) < 1e-9 ? [a.y] : [];
  });
  expect(walls).toHaveLength(1);
});
