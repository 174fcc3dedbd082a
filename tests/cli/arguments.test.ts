import { describe, expect, test } from 'vitest';
import { readArguments } from '../../src/cli/arguments';

describe('what is understood', () => {
  test('make with papers and a folder', () => {
    expect(
      readArguments([
        'make',
        'a.yaml',
        '--paper',
        'range-table',
        '--paper',
        'owners-manual',
        '--out',
        'there',
      ]),
    ).toEqual({ kind: 'make', spec: 'a.yaml', papers: ['range-table', 'owners-manual'], out: 'there' });
  });
  test('other paper in the printer', () => {
    expect(readArguments(['make', 'a.yaml', '--on', 'a4'])).toMatchObject({ sheet: 'a4' });
  });
  test('check, for people and for machines', () => {
    expect(readArguments(['check', 'a.yaml'])).toEqual({ kind: 'check', spec: 'a.yaml', json: false });
    expect(readArguments(['check', '--json', 'a.yaml'])).toEqual({
      kind: 'check',
      spec: 'a.yaml',
      json: true,
    });
  });
  test.each([
    [['--help'], 'help'],
    [['-h'], 'help'],
    [['help'], 'help'],
    [['--version'], 'version'],
    [['papers'], 'papers'],
  ])('%j', (args, kind) => {
    expect(readArguments(args)).toEqual({ kind });
  });
});

describe('what is not', () => {
  test.each([
    [[], /nothing was asked/],
    [['prepare'], /no command `prepare`/],
    [['make'], /needs the file of a car/],
    [['make', 'a', 'b'], /`b` is too many/],
    [['make', 'a', '--on', 'a5'], /not `a5`/],
    [['make', 'a', '--json'], /does not take `--json`/],
    [['papers', 'a', 'b'], /`b` is too many/],
    [['steps', 'a', 'b', 'c'], /too many/],
    [['check', 'a', '--out', 'x'], /does not take `--out`/],
    [['make', 'a', '--colour'], /--colour/],
    [['make', 'a', '--out'], /out/],
  ])('%j', (args, why) => {
    const asked = readArguments(args);
    expect(asked.kind).toBe('wrong-use');
    expect(asked.kind === 'wrong-use' ? asked.why : '').toMatch(why);
  });
});
