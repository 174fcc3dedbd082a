import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { specText } from '../whole/made';
import { putLogs, run } from './run';

const folder = mkdtempSync(join(tmpdir(), 'kettlebook-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const spec = join(folder, 'thimble.yaml');
putLogs(folder);
const good = specText('thimble');
const spoilt = good.replace(/allowed-pressure: .*/, 'allowed-pressure: 10 psi');

describe('make', () => {
  test('makes what is asked for, says paper, pages, size and file, and leaves nothing else behind', async () => {
    writeFileSync(spec, good);
    const { code, said } = await run('make', spec, '--paper', 'range-table', '--out', folder);
    expect(code).toBe(0);
    expect(said).toMatch(
      /Fuel and water range\s+\d+\s+letter, 8.5 × 11 in, turned on the long edge\s+.*range-table\.pdf/,
    );
    expect(readdirSync(join(folder, 'thimble'))).toEqual(['range-table.html', 'range-table.pdf']);
  });

  test('prints on other paper when told to', async () => {
    const { said } = await run(
      'make',
      spec,
      '--paper',
      'range-table',
      '--out',
      join(folder, 'a4'),
      '--on',
      'a4',
    );
    expect(said).toContain('A4, 210 × 297 mm');
  });

  test('with a spoilt spec makes nothing, and leaves earlier papers as they were', async () => {
    const paper = join(folder, 'thimble', 'range-table.pdf');
    const before = readFileSync(paper);
    writeFileSync(spec, spoilt);
    const { code, said, complained } = await run('make', spec, '--out', folder);
    expect(code).toBe(1);
    expect(said).toBe('');
    expect(complained).toMatch(/thimble\.yaml:\d+:\d+ error\[spec-quantity\]/);
    expect(complained).not.toMatch(/\bat .*\.ts:\d+/);
    expect(readFileSync(paper).equals(before)).toBe(true);
    expect(readdirSync(join(folder, 'thimble'))).toEqual(['range-table.html', 'range-table.pdf']);
  });

  test('where papers cannot be written, says so', async () => {
    writeFileSync(spec, good);
    writeFileSync(join(folder, 'a-file'), '');
    const { code, complained } = await run(
      'make',
      spec,
      '--paper',
      'range-table',
      '--out',
      join(folder, 'a-file'),
    );
    expect(code).toBe(1);
    expect(complained).toContain('error[file-unwritable]');
    expect(complained.replace(/\s+/g, ' ')).toContain('a file stands where a folder is needed');
  });

  test.runIf(existsSync('/proc/self'))('where no folder can be made, says so and ends', async () => {
    writeFileSync(spec, good);
    const { code, complained } = await run(
      'make',
      spec,
      '--paper',
      'range-table',
      '--out',
      '/proc/none/there',
    );
    expect(code).toBe(1);
    expect(complained).toContain('error[file-unwritable]');
  });

  test('a paper there is not is wrong use, with the nearest name', async () => {
    const { code, complained } = await run('make', spec, '--paper', 'range-tabel');
    expect(code).toBe(2);
    expect(complained).toContain('did you mean `range-table`?');
  });

  test('an earlier good paper outlives a paper of the set that is refused', async () => {
    const paper = join(folder, 'thimble', 'range-table.pdf');
    const before = readFileSync(paper);
    writeFileSync(spec, good.replace(/^( {2}card: ).*$/m, '$1 20 mm x 20 mm'));
    const { code } = await run('make', spec, '--out', folder);
    expect(code).toBe(1);
    expect(readFileSync(paper).equals(before)).toBe(true);
    expect(readdirSync(join(folder, 'thimble'))).toEqual(['range-table.html', 'range-table.pdf']);
  });
});

/** Writes a file when it is asked for, and says where. */
const written = (name: string, content: string | Uint8Array) => () => {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
};

describe('check', () => {
  test('a good spec', async () => {
    writeFileSync(spec, good);
    const { code, said } = await run('check', spec);
    expect(code).toBe(0);
    expect(said).toMatch(/is good: \d+ valves, \d+ procedures of \d+ steps, \d+ figures\./);
  });

  test('a spoilt one, for machines: the same problems as JSON on standard output, and nothing beside', async () => {
    writeFileSync(spec, spoilt);
    const { code, said, complained } = await run('check', '--json', spec);
    expect(code).toBe(1);
    expect(complained).toBe('');
    const report: unknown = JSON.parse(said);
    expect(JSON.stringify(report)).toContain('spec-quantity');
  });

  test.each([
    ['no such file', () => join(folder, 'nowhere.yaml'), 'there is no such file'],
    ['a folder', () => folder, 'it is a folder'],
    [
      'bytes that are no text',
      written('bytes.yaml', Buffer.from([0x6e, 0xf6, 0x74, 0x69, 0x67])),
      'some of its letters are not written in UTF-8',
    ],
    ['a paper', written('paper.pdf', '%PDF-1.7\n'), 'it is a PDF'],
    [
      'a document of a word processor',
      written('letter.odt', Buffer.from([0x50, 0x4b, 0x03, 0x04, 0x14])),
      'it is a document of a word processor',
    ],
    ['text in UTF-16', written('wide.yaml', Buffer.from('\ufeffkettlebook: 1\n', 'utf16le')), 'UTF-16'],
    [
      'a spec of a newer form',
      written('newer.yaml', good.replace(/^kettlebook: 1$/m, 'kettlebook: 2')),
      'read it with the newer program',
    ],
    [
      'an empty file',
      () => {
        mkdirSync(join(folder, 'empty'), { recursive: true });
        const path = join(folder, 'empty', 'car.yaml');
        writeFileSync(path, '');
        return path;
      },
      'spec-empty',
    ],
  ])('%s', async (_, path, words) => {
    const { code, complained } = await run('check', path());
    expect(code).toBe(1);
    expect(complained.replace(/\s+/g, ' ')).toContain(words);
  });
});

test('a folder that is called as a table would be is not in the way', async () => {
  writeFileSync(spec, good);
  mkdirSync(join(folder, 'old.csv'), { recursive: true });
  const { code, complained } = await run('check', spec);
  rmSync(join(folder, 'old.csv'), { recursive: true });
  expect(code, complained).toBe(0);
});

test('a log of trips that a spreadsheet saved in UTF-16 is read', async () => {
  writeFileSync(spec, good);
  const log = join(folder, 'thimble-trips.csv');
  const plain = readFileSync(log);
  writeFileSync(log, Buffer.from(`\ufeff${plain.toString('utf8')}`, 'utf16le'));
  const { code, complained } = await run('check', spec);
  writeFileSync(log, plain);
  expect(code, complained).toBe(0);
});

describe('explain', () => {
  test('one figure, with the lines its inputs came from', async () => {
    writeFileSync(spec, good);
    const { code, said } = await run('explain', spec, 'water-range');
    expect(code).toBe(0);
    expect(said).toContain('water-range: ');
    expect(said).toMatch(/thimble\.yaml:\d+ tanks\./);
    expect(said).toContain('source');
  });

  test('all of them for machines', async () => {
    const { said } = await run('explain', spec, '--json');
    const { figures } = JSON.parse(said) as { figures: readonly { id: string; doubt: string }[] };
    expect(figures.length).toBeGreaterThan(10);
    for (const figure of figures) expect(figure.doubt).toMatch(/^(measured|computed|estimated|unknown): /);
  });

  test('a figure there is not', async () => {
    const { code, complained } = await run('explain', spec, 'water-rang');
    expect(code).toBe(2);
    expect(complained).toContain('did you mean `water-range`?');
  });
});

test('papers lists every paper with what it is for; version and help say their piece', async () => {
  const { said } = await run('papers');
  for (const name of ['card-cold-start', 'range-table', 'owners-manual']) expect(said).toContain(name);
  expect((await run('--version')).said).toMatch(/^\d+\.\d+\.\d+\n$/);
  expect((await run()).code).toBe(2);
});

describe('steps', () => {
  test('the procedures of a car, and the steps of one by the names that changes call them by', async () => {
    writeFileSync(spec, good);
    const all = await run('steps', spec);
    expect(all.code).toBe(0);
    expect(all.said).toMatch(/^walk-round +Walk-round, \d+ steps$/m);
    const one = await run('steps', spec, 'walk-round');
    const [title = '', ...lines] = one.said.trimEnd().split('\n');
    expect(title).toBe('walk-round: Walk-round');
    const steps = lines.filter((line) => /^[a-z]/.test(line));
    expect(all.said).toContain(`Walk-round, ${steps.length} steps`);
    // a change before all others knows only the steps of the library
    const ofLibrary = steps.filter((line) => !line.endsWith('(changed)'));
    for (const name of ofLibrary.map((line) => line.split(' ')[0] ?? '').slice(0, 3)) {
      const changed = join(folder, 'changed.yaml');
      writeFileSync(
        changed,
        good.replace(
          /^changes:$/m,
          `changes:\n  - in: walk-round\n    add: { id: of-ours, act: look, say: Look at the moon. }\n    before: ${name}\n    because: It is there.`,
        ),
      );
      const { said } = await run('steps', changed, 'walk-round');
      expect(said).toMatch(/^of-ours .*Look at the moon\. {2}\(changed\)$/m);
    }
  });

  test('a procedure there is not', async () => {
    const { code, complained } = await run('steps', spec, 'walk-rond');
    expect(code).toBe(2);
    expect(complained).toContain('did you mean `walk-round`?');
  });
});
