import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { airingUnknownRemarks } from '../../src/procedure/airingUnknown';
import { alikeByHandRemarks } from '../../src/procedure/alikeByHand';
import { carFrom, demo, demoNames, goodOf, root, specText } from '../whole/made';

/** Names of the valves of a car that the remark is about. */
async function alike(text: string): Promise<readonly (string | undefined)[]> {
  const { car, proof } = goodOf(await carFrom(text));
  return alikeByHandRemarks(car, proof.procedures, 'shut-everything').map(({ found }) => found);
}

test.each(demoNames)('%s says how its valves feel, and how long it airs', async (name) => {
  const { car, proof } = await demo(name);
  expect(alikeByHandRemarks(car, proof.procedures, 'shut-everything')).toEqual([]);
  expect(airingUnknownRemarks(car)).toEqual([]);
});

describe('a valve shut in a hurry', () => {
  const spec = specText('thimble');

  test('that stands beside another and has no `feel` is told, at its place in the spec', async () => {
    const without = spec.replace(/^ {4}feel: .*\n/gm, '');
    const { car, proof } = goodOf(await carFrom(without));
    const told = alikeByHandRemarks(car, proof.procedures, 'shut-everything');
    const throttle = told.find(({ message }) =>
      message.includes(car.spec.valves['throttle-valve']?.name ?? '?'),
    );
    expect(throttle?.code).toBe('procedure-by-feel');
    expect(throttle?.found).toContain('reverse lever');
    expect(throttle?.at?.file).toBe('car.yaml');
    expect(throttle?.at?.line).toBe(
      without.split('\n').findIndex((line) => line.startsWith('  throttle-valve:')) + 1,
    );
  });

  test('that stands alone is not', async () => {
    const alone = spec.replace(/^ {4}feel: .*\n/gm, '');
    const { car, proof } = goodOf(await carFrom(alone));
    const places = Object.values(car.spec.valves).map(({ place }) => place);
    for (const { at } of alikeByHandRemarks(car, proof.procedures, 'shut-everything'))
      expect(at).toBeDefined();
    const solitary = Object.entries(car.spec.valves).filter(
      ([, { place }]) =>
        places.filter((each) => each === place).length === 1 &&
        Object.values(car.spec.controls).every((control) => control.place !== place),
    );
    const told = alikeByHandRemarks(car, proof.procedures, 'shut-everything').map(({ message }) => message);
    expect(solitary.length).toBeGreaterThan(0);
    for (const [, { name }] of solitary) expect(told.filter((each) => each.includes(name))).toEqual([]);
  });

  test('beside a wheel, a pedal or a horn alone is not either', async () => {
    const marigold = specText('marigold').replace(/^ {4}feel: .*\n/gm, '');
    const told = await alike(marigold);
    expect(told.length).toBeGreaterThan(0);
    for (const found of told) expect(found).not.toMatch(/wheel|foot brake|horn/);
  });
});

test('a car none of whose burners says how long it airs is told once', async () => {
  const lapwing = readFileSync(join(root, 'tests', 'fixtures', 'cars', 'lapwing.yaml'), 'utf8');
  const { car } = goodOf(await carFrom(lapwing));
  expect(airingUnknownRemarks(car).map(({ code, at }) => [code, at?.file])).toEqual([
    ['procedure-airing', 'car.yaml'],
  ]);
});
