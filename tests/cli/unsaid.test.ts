import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { root, specText } from '../whole/made';
import { putLogs, run } from './run';

const folder = mkdtempSync(join(tmpdir(), 'kettlebook-unsaid-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const german = join(root, 'cars', 'de', 'fingerhut.yaml');
const even = (text: string) => text.replace(/\s+/g, ' ');

describe('a paper that is not yet said in the language of a car', () => {
  test('is refused with the reason and what lacks, and nothing is made', async () => {
    const out = join(folder, 'out');
    const { code, complained } = await run('make', german, '--paper', 'log-sheet', '--out', out);
    expect(code).toBe(1);
    expect(even(complained)).toContain('the paper `log-sheet` is not yet said in Deutsch');
    expect(even(complained)).toContain('“Log of a day of steam”');
    expect(existsSync(out)).toBe(false);
  });

  test('is left out when all are checked, which is told at the line of the spec', async () => {
    const { code, complained } = await run('check', german);
    expect(code).toBe(0);
    expect(complained).toMatch(/fingerhut\.yaml:\d+:\d+ remark\[language-left-out\]/);
    expect(complained).toContain('`owners-manual`');
  });
});

describe('what lacks', () => {
  test('is nothing where a paper is whole, and a paper there is not is wrong use', async () => {
    const whole = await run('unsaid', german, '--paper', 'visiting-driver');
    expect([whole.code, whole.said]).toEqual([
      0,
      '# Deutsch says every text of these papers for this car.\n',
    ]);
    expect((await run('unsaid', german, '--paper', 'visiting-drivr')).complained).toContain(
      '`visiting-driver`',
    );
  });

  test('filled in makes the paper, in a language that stands in a keeper’s folder and nowhere else', async () => {
    const spec = join(folder, 'car.yaml');
    const own = join(folder, 'words', 'languages', 'xx');
    putLogs(folder);
    writeFileSync(spec, specText('thimble').replace('language: en-US', 'language: xx\n  folder: words'));
    mkdirSync(own, { recursive: true });
    for (const file of ['language', 'words', 'phrases', 'messages', 'furniture'])
      cpSync(join(root, 'shared', 'languages', 'en', `${file}.yaml`), join(own, `${file}.yaml`));
    const about = readFileSync(join(own, 'language.yaml'), 'utf8');
    const card = 'card-shut-everything';
    writeFileSync(
      join(own, 'language.yaml'),
      about.replace('name: English', 'name: Exish').replace('papers: all', `papers: [${card}]`),
    );

    const asked = ['make', spec, '--paper', card, '--out', join(folder, 'out')];
    expect(even((await run(...asked)).complained)).toContain('cannot be made in Exish, which does not say');

    const { said } = await run('unsaid', spec, '--paper', card);
    expect(said).toMatch(/^# What Exish does not say: \d+ texts/);
    writeFileSync(join(own, 'cards.yaml'), said);
    expect((await run(...asked)).complained).toMatch(/languages.xx.cards\.yaml:\d+:\d+ error/);

    const filled = said.replace(/english: '(.*)'\n {4}say: ''/g, "english: '$1'\n    say: '$1 Xx'");
    writeFileSync(join(own, 'cards.yaml'), filled);
    expect(await run(...asked)).toMatchObject({ code: 0 });
    const page = readFileSync(join(folder, 'out', 'car', `${card}.html`), 'utf8');
    expect(page).toContain('<html lang="xx"');
    expect(page).toContain('Shut everything Xx');
  });
});
