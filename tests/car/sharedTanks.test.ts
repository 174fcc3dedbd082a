import { describe, expect, test } from 'vitest';
import { connect } from '../../src/car/build';
import type { Part } from '../../src/car/car';
import { carrying } from '../../src/car/flow';
import type { Pipe } from '../../src/car/plant';
import { wayBeside } from '../../src/car/sharedTanks';

const kinds = {
  read: 'tank',
  other: 'tank',
  third: 'tank',
  cross: 'valve',
  second: 'valve',
  main: 'valve',
  lift: 'pump',
  feed: 'pump',
  check: 'device',
  boiler: 'boiler',
  ground: 'outside',
} as const;

/** A car with these lines of water; the tank that is read feeds the boiler through a valve and a pump. */
function wayOf(...lines: readonly (readonly (keyof typeof kinds)[])[]) {
  const parts = new Map(
    Object.entries(kinds).map(([id, kind]): [string, Part] => [id, { id, kind, name: id }]),
  );
  const pipes = [['read', 'main', 'feed', 'boiler'], ...lines].flatMap((line, at) =>
    line
      .slice(1)
      .map((to, step) => ({ from: line[step] ?? to, to, carries: 'water' as const, line: at, step })),
  );
  const plant = connect(pipes.map((pipe, index): Pipe => ({ ...pipe, index })));
  return wayBeside({ parts, plant }, 'other', 'read', ['boiler'], carrying('water'));
}

describe('the way of a further tank', () => {
  test.each([
    ['into the tank that is read', [['other', 'read']]],
    ['into its pipe, past a check valve', [['other', 'check', 'main']]],
    ['past a valve that is opened for the tank that is read', [['other', 'main']]],
    [
      'by one way without a valve, where another has one',
      [
        ['other', 'cross', 'read'],
        ['other', 'read'],
      ],
    ],
    [
      'through a third tank',
      [
        ['other', 'third'],
        ['third', 'read'],
      ],
    ],
  ] as const)('is open %s', (_, lines) => {
    expect(wayOf(...lines)).toEqual({ kind: 'open' });
  });

  test('names every valve of its own, and of two ways that with fewer', () => {
    expect(wayOf(['other', 'cross', 'second', 'main'])).toEqual({
      kind: 'valves',
      valves: ['cross', 'second'],
    });
    expect(wayOf(['other', 'cross', 'second', 'main'], ['other', 'second', 'read'])).toEqual({
      kind: 'valves',
      valves: ['second'],
    });
  });

  test('is pumped where a pump lifts it into a tank, with the valves on that way', () => {
    expect(wayOf(['other', 'cross', 'lift', 'read'])).toEqual({
      kind: 'pumped',
      pumps: ['lift'],
      valves: ['cross'],
    });
  });

  test('is open rather than pumped where it has both', () => {
    expect(wayOf(['other', 'lift', 'read'], ['other', 'main'])).toEqual({ kind: 'open' });
  });

  test.each([
    ['no line leads from it', []],
    ['its line leads only to the ground', [['other', 'ground']]],
    ['its line leads from the other tank to it', [['read', 'other']]],
    ['a pump of its own sends it past the tank', [['other', 'lift', 'boiler']]],
  ] as const)('is none where %s', (_, lines) => {
    expect(wayOf(...lines)).toEqual({ kind: 'none' });
  });
});
