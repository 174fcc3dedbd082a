import { describe, expect, test } from 'vitest';
import { setOnePaper } from '../../src/kettlebook';
import type { Block } from '../../src/markup/block';
import { carFrom, demo, demoNames, goodOf, specText, workshop } from './made';

const shop = await workshop();

const said = (value: unknown): string => {
  if (Array.isArray(value)) return value.map(said).join('');
  if (typeof value !== 'object' || value === null) return '';
  if ('text' in value && typeof value.text === 'string') return value.text;
  return Object.values(value).map(said).join('');
};

type Table = Extract<Block, { kind: 'table' }>;

function tablesIn(blocks: readonly Block[]): readonly Table[] {
  return blocks.flatMap((block) => {
    if (block.kind === 'table') return [block];
    return 'blocks' in block ? tablesIn(block.blocks as readonly Block[]) : [];
  });
}

/** The rows of the table whose caption begins so, by their first cells. */
async function rowsOf(name: string, paper: string, caption: string): Promise<readonly (readonly string[])[]> {
  const found = shop.papers.find((each) => each.name === paper);
  if (found === undefined) throw new Error(`there is no paper ${paper}`);
  const { blocks } = goodOf(setOnePaper(await demo(name), found, shop));
  const table = tablesIn(blocks).find((each) => said(each.caption).startsWith(caption));
  return (table?.body ?? []).map(({ cells }) => cells.map(said));
}

describe.each(demoNames)('%s', (name) => {
  test.each(['docent-guide', 'owners-manual'])('every gauge has its readings in the %s', async (paper) => {
    const { car } = await demo(name);
    const rows = await rowsOf(name, paper, 'Gauges:');
    expect(rows.map(([, gauge]) => gauge)).toEqual(Object.values(car.spec.gauges).map((each) => each.name));
    for (const [, gauge, ...readings] of rows) {
      expect(readings.length, gauge).toBe(4);
      for (const reading of readings) expect(reading, gauge).toMatch(/\w/);
      expect(readings.join(' '), gauge).not.toContain('not known');
    }
  });

  test.each(['docent-guide', 'owners-manual'])('every tank is told how full, in the %s', async (paper) => {
    const { car } = await demo(name);
    const rows = await rowsOf(name, paper, 'Tanks:');
    expect(rows.map(([, tank]) => tank)).toEqual(Object.values(car.spec.tanks).map((each) => each.name));
    for (const [, tank, ...readings] of rows) {
      expect(readings.length, tank).toBe(3);
      for (const reading of readings) expect(reading, tank).toMatch(/\d/);
    }
  });
});

test('a red line, a band, a level and a reserve are those of the spec', async () => {
  const gauges = new Map((await rowsOf('marigold', 'docent-guide', 'Gauges:')).map((row) => [row[1], row]));
  const clean = (name: string) =>
    gauges
      .get(name)
      ?.slice(2)
      .map((each) => each.replaceAll('\u00a0', ' '));
  expect(clean('steam gauge')).toEqual([
    'at zero',
    '300 psi or more',
    '480 to 530 psi',
    'above 530 psi with the fire on; never past 600 psi',
  ]);
  expect(clean('water glass')?.at(-1)).toContain('under one quarter of the glass');
  const tanks = await rowsOf('marigold', 'docent-guide', 'Tanks:');
  const water = tanks.find((row) => row[1] === 'water tank')?.map((each) => each.replaceAll('\u00a0', ' '));
  // 1.1 gal cannot be drawn and 3 gal are kept back; the stick shows 4.1 gal at 1 7/8 in (docs of the dipstick: 4 gal at 1.80 in)
  expect(water?.slice(2)).toEqual([
    '25 US gal, 11 in on the stick',
    '25 US gal, 11 in on the stick',
    '4.1 US gal, 1 7/8 in on the stick; under that is the reserve',
  ]);
});

test('what the keeper wrote stands above what is usual', async () => {
  const text = specText('marigold').replace(
    '    red-line: 600 psi gauge\n',
    '    red-line: 600 psi gauge\n    cold-reads: 5 psi above its pin\n    stop-at: 510 psi, until it has been looked at\n',
  );
  const ready = goodOf(await carFrom(text));
  const [first] = ready.guide.readings.gauges;
  expect(first?.cold).toBe('at zero');
  const paper = shop.papers.find((each) => each.name === 'docent-guide');
  if (paper === undefined) throw new Error('no docent guide');
  const words = said(setOnePaper(ready, paper, shop)).replaceAll('\u00a0', ' ');
  expect(words).toContain('5 psi above its pin');
  expect(words).toContain('510 psi, until it has been looked at');
});

test('a day cannot begin with more than is filled in, nor with the reserve alone', async () => {
  const main = (amount: string) =>
    specText('marigold').replace('least-to-start: 4 1/2 US gal', `least-to-start: ${amount}`);
  for (const amount of ['18 US gal', '2.5 US gal']) {
    const outcome = await carFrom(main(amount));
    expect(outcome.ok ? [] : outcome.problems.map(({ code }) => code), amount).toContain('spec-tank');
  }
});
