/** A car with two water tanks: the range counts what runs to the boiler, and says what has to be worked for the rest. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { fillingM3 } from '../../src/calc/figures/planning';
import { type ReadyCar, setOnePaper } from '../../src/kettlebook';
import { carFrom, goodOf, root, specText, workshop } from './made';
import { wordsOfPaper } from './partWords';

const shop = await workshop();
const gallonM3 = 0.003785411784;

const sideTank = `
  side-tank:
    name: side water tank
    tag: T9
    place: running-board-left
    holds: water
    capacity: 10 US gal
    unusable: 0.5 US gal
    reserve: 1.5 US gal
    vent: hole in the lid
    filler: { place: running-board-left, cap: screw cap }
    read: not-read
`;

const crossValve = `
  cross-valve:
    name: cross valve
    tag: W19
    place: running-board-left
    kind: gate
    opens: anticlockwise
    turns: 4 turns
    parked: shut
    does: Lets water from the side tank run to the pumps.
`;

/** Marigold with a second water tank, and a line from it. */
async function withSideTank(line: string, more: Readonly<Record<string, string>> = {}): Promise<ReadyCar> {
  const text = Object.entries({
    '\ntanks:\n': sideTank,
    '\nlines:\n': `  - { carries: water, name: side tank, through: [${line}] }\n`,
    ...more,
  }).reduce((spec, [head, added]) => {
    if (!spec.includes(head)) throw new Error(`no ${head} in the spec`);
    return spec.replace(head, `${head}${added.replace(/^\n/, '')}`);
  }, specText('marigold'));
  return goodOf(await carFrom(text));
}

const cars = {
  joined: () => withSideTank('side-tank, water-tank'),
  byValve: () => withSideTank('side-tank, cross-valve, water-strainer', { '\nvalves:\n': crossValve }),
  // what overflows from the tank that is read runs into it, and there is no way back
  apart: () => withSideTank('water-tank, side-tank'),
};

const rangeTableOf = (ready: ReadyCar): string => {
  const paper = shop.papers.find(({ name }) => name === 'range-table');
  if (paper === undefined) throw new Error('there is no range table');
  return wordsOfPaper(goodOf(setOnePaper(ready, paper, shop)));
};

const plain = goodOf(await carFrom(specText('marigold')));
const chartOf = ({ figures: { water } }: ReadyCar) => {
  if (water === undefined) throw new Error('no water chart');
  return water;
};
const levelBetween = ({ figures }: ReadyCar) =>
  figures.planning.byTerrain.find(({ terrain }) => terrain === 'level')?.betweenStopsM ?? 0;
const figureOf = ({ figures }: ReadyCar, id: string) => figures.all.find((figure) => figure.id === id);

describe.each(Object.entries(cars))('a side tank, %s', (_, make) => {
  test('leaves the rows by the stick of the tank that is read as they are', async () => {
    const ready = await make();
    expect(chartOf(ready).model.id).toBe('water-tank');
    expect(chartOf(ready).rows).toEqual(chartOf(plain).rows);
  });
});

test('joined, it runs by itself: full tanks go farther by all that can be drawn from it', async () => {
  const ready = await cars.joined();
  expect(chartOf(ready).others).toMatchObject([{ id: 'side-tank', way: { kind: 'open' } }]);
  // 10 gal less 0.5 that cannot be drawn and 1.5 kept back
  expect((fillingM3(chartOf(ready)) - fillingM3(chartOf(plain))) / gallonM3).toBeCloseTo(8, 9);
  expect(levelBetween(ready)).toBeGreaterThan(levelBetween(plain));
  expect(rangeTableOf(ready)).toContain('side water tank runs by itself 8 US gal');
});

test('behind a valve, it is told which valve must be open, and is in no promise of full tanks', async () => {
  const ready = await cars.byValve();
  expect(chartOf(ready).others).toMatchObject([{ way: { kind: 'valves', valves: ['cross-valve'] } }]);
  expect(fillingM3(chartOf(ready))).toBe(fillingM3(chartOf(plain)));
  expect(levelBetween(ready)).toBe(levelBetween(plain));
  const words = rangeTableOf(ready);
  expect(words).toContain('only with the cross valve (W19) open');
  expect(words).toContain('a further tank counts only where it runs by itself');
  const figure = figureOf(ready, 'water-from-side-tank');
  expect(figure?.inputs.map(({ value }) => value)).toContain('only with these open: cross valve W19');
  // worked by hand: 8 gal at what is planned with on level road
  const { planPerM = 0 } = chartOf(ready).use.byTerrain.level;
  const miles = Math.floor((8 * gallonM3) / planPerM / 1609.344);
  expect(figure?.value.kind === 'table' && figure.value.rows[0]?.[0]).toBeCloseTo(miles * 1609.344, 6);
});

test('with no line from it, it is not counted and the table says so', async () => {
  const ready = await cars.apart();
  expect(chartOf(ready).others).toMatchObject([{ way: { kind: 'none' } }]);
  expect(levelBetween(ready)).toBe(levelBetween(plain));
  expect(rangeTableOf(ready)).toContain('Not counted here: the side water tank.');
  const { value } = figureOf(ready, 'water-from-side-tank') ?? {};
  expect(value?.kind === 'table' ? value.rows.flat() : undefined).toEqual([0, 0, 0]);
});

test('the larger tank is not the one that is read if no line leads from it', async () => {
  const text = specText('marigold')
    .replace(
      '\ntanks:\n',
      `\ntanks:${sideTank.replace('10 US gal', '60 US gal').replace('read: not-read', 'read: stick\n    shape: { kind: rectangular, length: 60 in, width: 21 in, height: 11 in }')}`,
    )
    .replace(
      '\nlines:\n',
      '\nlines:\n  - { carries: water, name: overflow, through: [water-tank, side-tank] }\n',
    );
  expect(chartOf(goodOf(await carFrom(text))).model.id).toBe('water-tank');
});

test('in German the table says it too', async () => {
  const text = readFileSync(join(root, 'cars', 'de', 'fingerhut.yaml'), 'utf8')
    .replace('\ntanks:\n', `\ntanks:${sideTank.replaceAll('running-board-left', 'back-deck')}`)
    .replace(
      '\nlines:\n',
      '\nlines:\n  - { carries: water, name: side, through: [side-tank, water-tank] }\n',
    );
  const words = rangeTableOf(goodOf(await carFrom(text)));
  expect(words).toContain('läuft von selbst');
  expect(words).toContain('ein weiterer Tank zählt nur, wo er von selbst nachläuft');
});
