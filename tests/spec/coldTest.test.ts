/** `test-without-fire`: which devices may be tested without one. */
import { describe, expect, test } from 'vitest';
import { spoiled } from '../helpers/tinySpec';
import { told } from './told';

const device = (kind: string, more: string) =>
  spoiled([
    'kind: steam-automatic, does: Shuts the main fuel at its figure. }',
    `kind: ${kind}, does: Shuts the main fuel., ${more} }`,
  ]);

describe('test-without-fire', () => {
  test('a low-water cut-off that says its test may have it', () => {
    expect(told(device('low-water-cut-off', 'test: no fuel passes, test-without-fire: "yes"'))).not.toContain(
      'spec-test-without-fire',
    );
  });

  test('not one that says no test', () => {
    expect(told(device('low-water-cut-off', 'test-without-fire: "yes"'))).toContain(
      'nothing says how the steam automatic is tested without a fire',
    );
  });

  test('not one that is tested by its own fire', () => {
    expect(told(device('steam-automatic', 'test: it goes out, test-without-fire: "yes"'))).toContain(
      [
        '153:147 error spec-test-without-fire at “"yes" }”',
        '  the steam automatic is tested with the fire lit',
        '  expected: `test-without-fire` at a device of `kind: low-water-cut-off`',
        '  mend: take the line out; the papers ask for its test while steam is raised',
      ].join('\n'),
    );
    expect(told(device('steam-automatic', 'test: it goes out, test-without-fire: "no"'))).not.toContain(
      'spec-test-without-fire',
    );
  });
});
