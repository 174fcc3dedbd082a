import { expect, test } from 'vitest';
import { levelRemarks } from '../../../src/calc/figures/levelRemarks';
import { carFrom, demo, goodOf, specText } from '../../whole/made';

const said = async (text: string) =>
  levelRemarks(goodOf(await carFrom(text)).car).map(({ severity, message, expected }) => [
    severity,
    message,
    expected,
  ]);

test('demo cars lack no height, and a boiler without glass or try cock is asked for none', async () => {
  for (const name of ['marigold', 'thimble', 'heron'])
    expect(levelRemarks((await demo(name)).car)).toEqual([]);
});

test('without heights the remark says what this car should measure', async () => {
  const without = (text: string) => text.replace(/\n {2}heights:[^\n]*\n(?: {4}.*\n)+/, '\n');
  const [[severity, message, expected] = []] = await said(without(specText('thimble')));
  expect(severity).toBe('remark');
  expect(message).toBe('there is no drawing of the boiler’s levels, as no heights are given');
  expect(expected).toContain('the hole of each try cock');
  expect(expected).not.toContain('low-water cut-off');
  const [[, , marigold] = []] = await said(without(specText('marigold')));
  expect(marigold).toContain('where the low-water cut-off acts');
});

test('what the car has and the heights lack is asked for', async () => {
  expect(await said(specText('marigold').replace('    low-water-cut: 5 5/16 in\n', ''))).toEqual([
    [
      'remark',
      'the drawing of the boiler’s levels lacks something that the car has',
      'the level at which the low-water cut-off acts, as `low-water-cut`',
    ],
  ]);
  expect(
    await said(specText('thimble').replace('      - { valve: upper-try-cock, at: 8 in }\n', '')),
  ).toMatchObject([{ 2: 'the hole of the upper try cock, under `cocks`' }]);
});
