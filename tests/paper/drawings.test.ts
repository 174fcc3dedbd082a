import { describe, expect, test } from 'vitest';
import { layOutPlumbing } from '../../src/drawing/plumbing/layOut';
import { worldOf } from '../../src/kettlebook';
import { manualDrawings } from '../../src/paper/context/drawings';
import { plumbingInputs } from '../../src/paper/context/drawingsPlumbing';
import { drawingFaults } from '../helpers/drawingFaults';
import { plumbingFaults } from '../helpers/plumbingFaults';
import { demo, demoNames, workshop } from '../whole/made';

const shop = await workshop();

/** Height left on a page of the smaller paper under running head and caption. */
const pagePt = 600;

describe.each(demoNames)('the drawings of %s', (name) => {
  test('show every pipe of the car, and nothing lies over anything', async () => {
    const world = worldOf(await demo(name), shop);
    const inputs = plumbingInputs(world);
    const layouts = inputs.map((input) => layOutPlumbing(input, world.fonts));
    expect(layouts.flatMap(plumbingFaults)).toEqual([]);
    const drawn = new Set(layouts.flatMap(({ parts }) => parts.map(({ part }) => part.id)));
    const { pipes } = world.car.plant;
    expect(drawn).toEqual(new Set(pipes.flatMap(({ from, to }) => [from, to])));
    expect(inputs.flatMap((input) => input.pipes)).toHaveLength(pipes.length);
    for (const { widthPt } of layouts) expect(widthPt).toBe(480);
  });

  test('show every gauge on what it reads, or in its pipe', async () => {
    const world = worldOf(await demo(name), shop);
    const parts = plumbingInputs(world).flatMap((input) => input.parts);
    const shown = new Set(parts.flatMap(({ tag, gauges }) => [tag, ...gauges]));
    for (const { tag, name: gauge } of Object.values(world.car.spec.gauges))
      expect(shown).toContain(tag ?? gauge);
  });

  test('fit a page, have letters of 8 points or more, and say what they show', async () => {
    const world = worldOf(await demo(name), shop);
    for (const drawing of manualDrawings(world)) {
      expect(drawing.heightPt, drawing.name).toBeLessThanOrEqual(pagePt);
      expect(drawing.widthPt, drawing.name).toBeLessThanOrEqual(480);
      expect(drawing.alt.length, drawing.name).toBeGreaterThan(40);
      for (const shape of drawing.shapes)
        if (shape.kind === 'text') expect(shape.sizePt).toBeGreaterThanOrEqual(8);
    }
  });

  test('have nothing outside their frame and no words over others', async () => {
    const world = worldOf(await demo(name), shop);
    const drawings = manualDrawings(world);
    expect(drawings.length).toBeGreaterThanOrEqual(7);
    expect(
      drawings.flatMap((drawing) => drawingFaults(drawing).map((fault) => `${drawing.name}: ${fault}`)),
    ).toEqual([]);
  });

  test('are the same when they are drawn again', async () => {
    const world = worldOf(await demo(name), shop);
    expect(JSON.stringify(manualDrawings(world))).toBe(JSON.stringify(manualDrawings(world)));
  });
});

test('a gauge whose pipe is among the lines is drawn where that joins, and not at what it reads', async () => {
  const world = worldOf(await demo('heron'), shop);
  const fuel = plumbingInputs(world).find(({ name }) => name === 'plumbing-fuel');
  const part = (id: string) => fuel?.parts.find((each) => each.id === id);
  expect(part('fuel-gauge')).toMatchObject({ symbol: 'dial', tag: 'G3' });
  expect(part('main-burner')?.gauges).toEqual([]);
  expect(fuel?.pipes.filter(({ to }) => to === 'fuel-gauge').map(({ from }) => from)).toEqual([
    'fuel-stop-tap',
  ]);
  const drawing = manualDrawings(world).find(({ name }) => name === 'plumbing-fuel');
  expect(drawing?.alt).toContain('F2 fuel stop tap to G3 fuel pressure gauge');
});
