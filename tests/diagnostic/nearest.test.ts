/** Finding the name that was meant. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { editDistance, nearest } from '../../src/diagnostic/nearest';

describe('editDistance', () => {
  test.each([
    ['valve', 'valve', 0],
    ['valve', 'valv', 1],
    ['valve', 'vallve', 1],
    ['valve', 'value', 1],
    ['valve', 'vavle', 1],
    ['', 'pump', 4],
    ['pump', '', 4],
    ['kitten', 'sitting', 3],
  ])('%s → %s is %i', (a, b, edits) => {
    expect(editDistance(a, b)).toBe(edits);
  });

  test('is the same both ways, nothing only for equals, and no more than the longer word', () => {
    const word = fc.string({ unit: fc.constantFrom('a', 'b', 'c'), maxLength: 8 });
    fc.assert(
      fc.property(word, word, (a, b) => {
        const edits = editDistance(a, b);
        expect(edits).toBe(editDistance(b, a));
        expect(edits === 0).toBe(a === b);
        expect(edits).toBeLessThanOrEqual(Math.max(a.length, b.length));
        expect(edits).toBeGreaterThanOrEqual(Math.abs(a.length - b.length));
      }),
    );
  });
});

describe('nearest', () => {
  const names = ['pilot-valve', 'pilot-tank', 'throttle', 'drip', 'dash'];

  test.each([
    ['pilot-vlave', 'pilot-valve'],
    ['Throttle', 'throttle'],
    ['trottel', 'throttle'],
    ['drop', 'drip'],
    ['dahs', 'dash'],
    ['chimney', undefined],
    ['', undefined],
  ])('%s → %s', (word, meant) => {
    expect(nearest(word, names)).toBe(meant);
  });

  test('the first of equals', () => {
    expect(nearest('bar', ['bat', 'car'])).toBe('bat');
  });

  test('is the nearest of all that are near enough', () => {
    const word = fc.string({ unit: fc.constantFrom('a', 'b', 'c'), maxLength: 7 });
    fc.assert(
      fc.property(word, fc.array(word, { maxLength: 8 }), (meant, others) => {
        const limit = Math.max(1, Math.floor(meant.length / 3));
        const near = others.filter((each) => editDistance(meant, each) <= limit);
        const least = Math.min(...near.map((each) => editDistance(meant, each)));
        expect(nearest(meant, others)).toBe(near.find((each) => editDistance(meant, each) === least));
      }),
    );
  });
});
