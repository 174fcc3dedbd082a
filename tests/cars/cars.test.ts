/** The demo cars are specs like any keeper's: each must load without a problem and say that it is invented. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { loadSpec } from '../../src/spec/load';

const libraryLiquids = ['kerosene', 'gasoline', 'naphtha'];
const demoCars = ['marigold', 'thimble', 'heron'] as const;

function load(name: string) {
  const file = `cars/${name}.yaml`;
  return loadSpec(readFileSync(new URL(`../../${file}`, import.meta.url), 'utf8'), file, libraryLiquids);
}

describe.each(demoCars)('%s', (name) => {
  test('loads without an error or a remark', () => {
    const outcome = load(name);
    expect(outcome.ok ? outcome.remarks : outcome.problems).toEqual([]);
  });
});
