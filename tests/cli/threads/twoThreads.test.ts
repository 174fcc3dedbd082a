/** Papers made by two threads: the same to the letter as by one, and the same words where something is wrong. */
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, describe, expect, test, vi } from 'vitest';
import { main } from '../../../src/cli/main';
import { root, specText } from '../../whole/made';
import { putLogs } from '../run';

const folder = mkdtempSync(join(tmpdir(), 'kettlebook-threads-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
afterEach(() => {
  vi.unstubAllEnvs();
  vi.restoreAllMocks();
});
putLogs(folder);

/** The command as a keeper runs it, with so many threads, into a folder of its own. */
function command(threads: 1 | 2, name: string, text: string, ...more: string[]) {
  const spec = join(folder, `${name}.yaml`);
  writeFileSync(spec, text);
  mkdirSync(join(folder, String(threads)), { recursive: true });
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    [join(root, 'bin', 'kettlebook.mjs'), 'make', spec, '--out', 'out', ...more],
    {
      cwd: join(folder, String(threads)),
      encoding: 'utf8',
      env: { ...process.env, KETTLEBOOK_THREADS: String(threads) },
    },
  );
  return { status, stdout, stderr };
}

function filesOf(threads: 1 | 2, name: string): ReadonlyMap<string, string> {
  const at = join(folder, String(threads), 'out', name);
  return new Map(
    readdirSync(at)
      .sort()
      .map((file) => [file, readFileSync(join(at, file), 'latin1')]),
  );
}

describe('two threads', () => {
  test('make the same papers as one, and say the same', () => {
    const [one, two] = ([1, 2] as const).map((threads) => command(threads, 'thimble', specText('thimble')));
    expect(two).toEqual(one);
    expect(two?.status).toBe(0);
    const papers = filesOf(2, 'thimble');
    expect(papers.size).toBeGreaterThan(40);
    expect([...papers.keys()]).toEqual([...filesOf(1, 'thimble').keys()]);
    for (const [file, bytes] of filesOf(1, 'thimble')) expect(papers.get(file) === bytes, file).toBe(true);
  });

  test('make a single paper alike, with its page for a screen', () => {
    const [one, two] = ([1, 2] as const).map((threads) =>
      command(threads, 'one-paper', specText('thimble'), '--paper', 'owners-manual'),
    );
    expect(two).toEqual(one);
    expect(two?.status).toBe(0);
    expect([...filesOf(2, 'one-paper').keys()]).toEqual(['owners-manual.html', 'owners-manual.pdf']);
    expect(filesOf(2, 'one-paper')).toEqual(filesOf(1, 'one-paper'));
  });

  test('tell once what is to be told of the figures, whoever works them out', () => {
    const lapwing = readFileSync(join(root, 'tests', 'fixtures', 'cars', 'lapwing.yaml'), 'utf8');
    const [one, two] = ([1, 2] as const).map((threads) =>
      command(threads, 'lapwing', lapwing, '--paper', 'owners-manual'),
    );
    expect(two).toEqual(one);
    expect(two?.stderr.match(/remark\[figure-draught-short\]/g)).toHaveLength(1);
  });

  test.each([
    ['one paper', ['--paper', 'owners-manual']],
    ['every paper', []],
  ])('refuse %s where what the guide says does not fit the car', (_, more) => {
    const spoilt = specText('marigold').replace(/instead-of: .*/, 'instead-of: no-such-point');
    const [one, two] = ([1, 2] as const).map((threads) => command(threads, 'oiled', spoilt, ...more));
    expect(two).toEqual(one);
    expect(two?.status).toBe(1);
    expect(two?.stderr).toContain('no-such-point');
  });

  test('say of the issue before that it is the one at fault', () => {
    const older = join(folder, 'older.yaml');
    const spec = specText('marigold');
    const letter = spec.replace('  letter: C', '  letter: B').replace(/^ {2}earlier:\n(?: {4}.*\n)+/m, '');
    writeFileSync(older, letter.replace(/instead-of: .*/, 'instead-of: no-such-point'));
    const [one, two] = ([1, 2] as const).map((threads) =>
      command(threads, 'newer', spec, '--paper', 'owners-manual', '--since', older),
    );
    expect(two).toEqual(one);
    expect(two?.status).toBe(1);
    expect(two?.stderr.replace(/\s+/g, ' ')).toMatch(/no-such-point.*The manual marks what reads otherwise/);
  });

  test.each([
    ['a spec that is no spec', (text: string) => text.replace(/allowed-pressure: .*/, 'allowed-pressure: 1')],
    ['papers that are refused', (text: string) => text.replace(/^( {2}card: ).*$/m, '$1 20 mm x 20 mm')],
  ])('refuse %s as one does, and leave earlier papers', (_, spoil) => {
    const before = filesOf(2, 'thimble');
    const spoilt = spoil(specText('thimble'));
    const [one, two] = ([1, 2] as const).map((threads) => command(threads, 'thimble', spoilt));
    expect(two).toEqual(one);
    expect(two?.status).toBe(1);
    expect(two?.stderr).toContain('Nothing was made');
    expect(filesOf(2, 'thimble')).toEqual(before);
  });
});

describe('a second thread that comes to an end', () => {
  const ends = async (script: string) => {
    const spec = join(folder, 'ended.yaml');
    writeFileSync(spec, specText('thimble'));
    const file = join(folder, 'mate.cjs');
    writeFileSync(file, script);
    vi.stubEnv('KETTLEBOOK_THREADS', '2');
    vi.spyOn(process.stderr, 'write').mockReturnValue(true);
    const out = join(folder, 'ended-out');
    await expect(main(['make', spec, '--out', out], root, file)).rejects.toThrow('a thread of it ended');
    expect(readdirSync(join(out, 'ended'))).toEqual([]);
  };

  test('by a fault is told, and nothing is made', () => ends("throw new Error('no memory is left');"));
  test('without a word likewise', () => ends(''));
});
