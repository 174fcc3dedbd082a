/** The callouts of plan and side view on every car there is: no leader over another, none through a word or a number. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { Shape } from '../../src/drawing/drawing';
import { drawPlan } from '../../src/drawing/plan';
import { drawSide } from '../../src/drawing/side';
import { worldOf } from '../../src/kettlebook';
import { sideInputs } from '../../src/paper/context/drawingsSide';
import { planInput } from '../../src/paper/context/plan';
import { calloutFaults } from '../helpers/calloutFaults';
import { carFrom, goodOf, root, workshop } from '../whole/made';

const files = ['cars', join('cars', 'de'), join('tests', 'fixtures', 'cars')].flatMap((folder) =>
  readdirSync(join(root, folder))
    .filter((name) => name.endsWith('.yaml'))
    .map((name) => join(folder, name)),
);

describe.each(files)('%s', (file) => {
  test('has callouts that do not cross', async () => {
    const world = worldOf(goodOf(await carFrom(readFileSync(join(root, file), 'utf8'))), await workshop());
    const drawings = [
      drawPlan(planInput(world), world.fonts),
      ...sideInputs(world).map((input) => drawSide(input, world.fonts)),
    ];
    expect(
      drawings.flatMap((drawing) => calloutFaults(drawing).map((fault) => `${drawing.name}: ${fault}`)),
    ).toEqual([]);
  });
});

test('callouts that cross, that run over a dot or through a word are found', () => {
  const leader = (from: number, to: number, end: number): Shape => ({
    kind: 'path',
    pieces: [
      { op: 'move', x: 0, y: from },
      { op: 'line', x: 8, y: from },
      { op: 'line', x: end, y: to },
    ],
    paint: { stroke: { colour: '#000000', widthPt: 0.5 } },
  });
  const faultsOf = (...shapes: readonly Shape[]) =>
    calloutFaults({ name: 'x', widthPt: 200, heightPt: 200, alt: 'x', shapes });
  const word: Shape = {
    kind: 'text',
    x: 60,
    y: 13,
    text: 'driver',
    face: 'narrow',
    sizePt: 9,
    colour: '#000000',
    anchor: 'middle',
  };
  expect(faultsOf(leader(10, 10, 100), leader(50, 50, 100))).toEqual([]);
  expect(faultsOf(leader(10, 50, 100), leader(50, 10, 100))).toHaveLength(1);
  expect(faultsOf(leader(10, 10, 100), leader(50, 11, 60))).toHaveLength(1);
  expect(faultsOf(leader(10, 10, 100), word)).toHaveLength(1);
});
