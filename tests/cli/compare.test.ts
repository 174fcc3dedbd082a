import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { type Edit, edited, nextIssue } from '../compare/issues';
import { specText } from '../whole/made';
import { putLogs, run } from './run';

const folder = mkdtempSync(join(tmpdir(), 'kettlebook-compare-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const [old, now] = [join(folder, 'old.yaml'), join(folder, 'new.yaml')];
const text = specText('thimble');
writeFileSync(old, text);
putLogs(folder);

test('tells what changed and puts the slip beside the papers of the new issue', async () => {
  writeFileSync(now, edited(text, [...nextIssue, ['reserve: 1.5 US gal', 'reserve: 2 US gal']]));
  const { code, said, complained } = await run('compare', old, now, '--out', folder);
  expect(complained).toBe('');
  expect(code).toBe(0);
  expect(said).toContain('water tank: reserve: 1.5 US gal (5.7 L) → 2 US gal (7.6 L)');
  expect(said).toMatch(/Slip: .*reprint-slip\.pdf/);
  expect(readdirSync(join(folder, 'new'))).toEqual(['reprint-slip.pdf']);
});

test('the same letter with changes: told, as JSON too, but no slip', async () => {
  writeFileSync(now, edited(text, [['reserve: 1.5 US gal', 'reserve: 2 US gal']]));
  const out = join(folder, 'kept');
  const { code, said } = await run('compare', old, now, '--out', out, '--json');
  expect(code).toBe(1);
  const told = JSON.parse(said) as { slip: null; changes: unknown[]; problems: { code: string }[] };
  expect(told.slip).toBeNull();
  expect(told.changes.length).toBeGreaterThan(0);
  expect(told.problems.map((each) => each.code)).toEqual(['compare-letter-kept']);
  expect(readdirSync(folder)).not.toContain('kept');
});

test('two cars are refused; one spec is wrong use', async () => {
  writeFileSync(now, specText('marigold'));
  const refused = await run('compare', old, now, '--out', folder);
  expect(refused.code).toBe(1);
  expect(refused.complained).toContain('error[compare-other-car]');
  expect((await run('compare', old)).code).toBe(2);
  expect((await run('compare', old, now, old)).code).toBe(2);
});

describe('make against the issue before', () => {
  const change: readonly Edit[] = [...nextIssue, ['reserve: 1.5 US gal', 'reserve: 2 US gal']];
  const recorded: Edit = [
    '  earlier:\n    - letter: A',
    '  earlier:\n    - letter: B\n      date: 2026-02-07\n      changed: [New chain.]\n      spec: old.yaml\n    - letter: A',
  ];

  test('the manual has bars and a list if the record of issues names the older spec', async () => {
    writeFileSync(now, edited(text, [...change, recorded]));
    const out = join(folder, 'bars');
    const { code, complained } = await run('make', now, '--paper', 'owners-manual', '--out', out);
    expect(complained).not.toContain('error[');
    expect(code).toBe(0);
    const page = readFileSync(join(out, 'new', 'owners-manual.html'), 'utf8');
    expect(page).toContain('What changed since issue B');
    expect(page).toContain('class="changed"');
  });

  test('an older spec that is not there is told at the line that names it', async () => {
    writeFileSync(
      now,
      edited(text, [...change, [recorded[0], recorded[1].replace('old.yaml', 'lost.yaml')]]),
    );
    const { code, complained } = await run('check', now);
    expect(code).toBe(1);
    expect(complained).toMatch(/new\.yaml:\d+:\d+ error\[file-unreadable\].*lost\.yaml/s);
    expect(complained.replace(/\s+/g, ' ')).toContain('take `spec` out of the record of issues');
  });

  test('the same by name: another car is refused', async () => {
    writeFileSync(now, edited(text, change));
    const other = join(folder, 'other.yaml');
    writeFileSync(
      other,
      edited(text, [
        ['name: Thimble', 'name: Other'],
        ['body 58', 'body 59'],
      ]),
    );
    const refused = await run('make', now, '--paper', 'owners-manual', '--since', other);
    expect(refused.code).toBe(1);
    expect(refused.complained).toContain('error[compare-other-car]');
  });
});
