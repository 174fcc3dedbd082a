import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test, vi } from 'vitest';
import { readArguments } from '../../src/cli/arguments';
import type { Terminal } from '../../src/cli/terminal';
import { tour } from '../../src/cli/tour';
import { root } from '../whole/made';

const folder = mkdtempSync(join(tmpdir(), 'kettlebook-tour-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

async function run(spec: string, way: string) {
  const said = vi.fn<(text: string) => void>();
  const complained = vi.fn<(text: string) => void>();
  const terminal: Terminal = { say: said, complain: complained, columns: 100 };
  const code = await tour({ kind: 'tour', spec, way, out: folder }, root, terminal);
  const text = (calls: readonly (readonly [string])[]) => calls.map(([line]) => line).join('\n');
  return {
    code,
    said: text(said.mock.calls).replaceAll('\u00a0', ' '),
    complained: text(complained.mock.calls),
  };
}

describe('a way planned', () => {
  test('from a list of legs: a table, the stops, a card', async () => {
    const { code, said } = await run(
      join(root, 'cars', 'marigold.yaml'),
      join(root, 'cars', 'marigold-tour.csv'),
    );
    expect(code).toBe(0);
    expect(said).toMatch(/marigold-tour: 55\.0 mi\. .*; stop \d times\./);
    expect(said).toMatch(/Low Mill +14\.5 mi +8\.0 mi +rolling +\d+\.\d US gal \(\d+\.\d to \d+\.\d\)/);
    expect(said).toMatch(/Abbot’s Ford .* water$|Low Mill .* water$/m);
    expect(readdirSync(join(folder, 'marigold'))).toEqual(['tour-marigold-tour.pdf']);
  });

  test('the runabout’s own round, with one stop for water', async () => {
    const { code, said } = await run(
      join(root, 'cars', 'thimble.yaml'),
      join(root, 'cars', 'thimble-tour.csv'),
    );
    expect(code).toBe(0);
    expect(said).toMatch(/thimble-tour: 22\.4 mi\. .*; stop once\./);
    expect(said).toMatch(/^Upper mill .* water$/m);
  });

  test('from a GPX track: stops from its waypoints, and how its heights were smoothed', async () => {
    const { code, said } = await run(join(root, 'cars', 'heron.yaml'), join(root, 'cars', 'heron-tour.gpx'));
    expect(code).toBe(0);
    expect(said).toContain('Lighthouse yard');
    expect(said).toMatch(/averaged over 200 m of road before climbing is added up: \d+ m in all/);
  });
});

describe('what goes wrong', () => {
  test.each([
    ['there is no such file', () => join(folder, 'nowhere.csv'), 'cannot be read'],
    ['a list with a fault', () => fileOf('place,distance (mi),terrain\nA,no,level\n'), 'log-value'],
    ['a track that is none', () => fileOf('<gpx></gpx>'), 'track-form'],
    ['too far', () => fileOf('place,distance (mi),terrain\nA,900,level\n'), 'tour-too-far'],
  ])('%s: told, nothing made', async (_, way, words) => {
    const { code, complained } = await run(join(root, 'cars', 'thimble.yaml'), way());
    expect(code).toBe(1);
    expect(complained).toContain(words);
    expect(complained).toContain('Nothing was made.');
  });
});

test('the arguments', () => {
  expect(readArguments(['tour', 'a.yaml', 'b.csv'])).toEqual({
    kind: 'tour',
    spec: 'a.yaml',
    way: 'b.csv',
    out: 'out',
  });
  expect(readArguments(['tour', 'a.yaml'])).toMatchObject({ kind: 'wrong-use' });
  expect(readArguments(['tour', 'a.yaml', 'b', 'c'])).toMatchObject({ kind: 'wrong-use' });
});

function fileOf(text: string): string {
  const path = join(folder, 'way.csv');
  writeFileSync(path, text);
  return path;
}
