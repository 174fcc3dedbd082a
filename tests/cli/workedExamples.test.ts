/** The worked examples of `docs` for a museum and a club: the lines that stand there make the folder, and the folder makes the papers. */
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
import { dirname, join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { openCar } from '../../src/cli/openCar';
import { setOnePaper } from '../../src/kettlebook';
import { openPdf, textOf } from '../helpers/pdfText';
import { goodOf, root } from '../whole/made';
import { wordsOfPaper } from '../whole/partWords';
import { putLogs, run } from './run';

const place = mkdtempSync(join(tmpdir(), 'kettlebook-examples-'));
afterAll(() => rmSync(place, { recursive: true, force: true }));

/** The blocks of a document that say which file they are. */
function blocksOf(doc: string): readonly { kind: string; file: string; text: string }[] {
  const text = readFileSync(join(root, 'docs', doc), 'utf8');
  return [...text.matchAll(/^```(html|diff) (\S+)\n([\s\S]*?)^```$/gm)].map(([, kind, file, body]) => ({
    kind: kind ?? '',
    file: file ?? '',
    text: body ?? '',
  }));
}

/** The file of the program that a file of the folder is copied from. */
function original(file: string): string {
  const own = file.slice(file.indexOf('/') + 1);
  const theme = own.startsWith('themes/') ? 'themes/plain.yaml' : own;
  const from = [join('cars', file), theme, join('shared', theme)].find((each) =>
    existsSync(join(root, each)),
  );
  if (from === undefined) throw new Error(`nothing to copy for ${file}`);
  return readFileSync(join(root, from), 'utf8');
}

/** Lines that begin with `-` are taken out, where they stand just so; those with `+` take their place. */
function changed(text: string, diff: string): string {
  const changes = [...diff.matchAll(/((?:^-.*\n)+)((?:^\+.*\n)+)/gm)];
  expect(changes.map(([whole]) => whole).join('')).toBe(diff);
  return changes.reduce((left, [, before, after]) => {
    const plain = (lines = '') => lines.replace(/^[-+] /gm, '');
    expect(left.split(plain(before)), plain(before)).toHaveLength(2);
    return left.replace(plain(before), () => plain(after));
  }, text);
}

/** Do what a document says, in a folder of its own. */
function follow(doc: string): string {
  const folder = join(place, doc.replace('.md', ''));
  for (const { kind, file, text } of blocksOf(doc)) {
    mkdirSync(dirname(join(folder, file)), { recursive: true });
    writeFileSync(join(folder, file), kind === 'html' ? text : changed(original(file), text));
  }
  putLogs(folder);
  return folder;
}

/** Make papers of a car in a folder; a complaint is a failure. */
async function make(folder: string, spec: string, ...papers: readonly string[]): Promise<void> {
  const { code, complained } = await run('make', join(folder, spec), ...papers, '--out', join(folder, 'out'));
  expect(code, complained).toBe(0);
}

/** The words of a paper that was made, and how many pages it has. */
async function read(folder: string, car: string, paper: string) {
  const bytes = new Uint8Array(readFileSync(join(folder, 'out', car, `${paper}.pdf`)));
  const pages = await textOf(bytes);
  const words = pages
    .flat()
    .map(({ text }) => text)
    .join(' ')
    .replace(/[\s\u00a0]+/g, ' ');
  return { words, pages: (await openPdf(bytes)).numPages };
}

describe('a museum', () => {
  const folder = follow('museum.md');

  test('writes a template, a theme, words and plans of its own', () => {
    const files = readdirSync(join(folder, 'tidewater'), { recursive: true, encoding: 'utf8' });
    expect(files.filter((file) => /\.\w+$/.test(file)).sort()).toEqual([
      'languages/en/words.yaml',
      'papers.yaml',
      'pictures/badge.svg',
      'templates/card.hbs',
      'templates/rope-sign.hbs',
      'themes/reading-room.yaml',
    ]);
  });

  test('has its cards say whose car it is, under its own title', async () => {
    await make(folder, 'heron.yaml', '--paper', 'card-running');
    const { words } = await read(folder, 'heron', 'card-running');
    expect(words).toContain('Out with visitors');
    expect(words).toContain('Tidewater Motor Museum. This car is invented.');
  }, 120_000);

  test('has a paper that the program has not got, listed with the others', async () => {
    const listed = await run('papers', join(folder, 'heron.yaml'));
    expect(listed.said).toMatch(/^rope-sign +Behind the rope: hangs on the rope round the car$/m);
    expect((await run('papers')).said).not.toContain('rope-sign');
    await make(folder, 'heron.yaml', '--paper', 'rope-sign');
    const { words, pages } = await read(folder, 'heron', 'rope-sign');
    expect(words).toContain('Please stay behind the rope');
    const screen = readFileSync(join(folder, 'out', 'heron', 'rope-sign.html'), 'utf8');
    expect(screen).toContain('a wheel above three waves');
    expect(pages).toBe(1);
  }, 120_000);

  test('has its own words and larger type in the manual', async () => {
    const { ready, workshop } = goodOf(await openCar(join(folder, 'heron.yaml'), root));
    const manual = workshop.papers.filter(({ name }) => name === 'owners-manual');
    const sets = manual.map((paper) => goodOf(setOnePaper(ready, paper, workshop)));
    const words = sets.map(wordsOfPaper).join();
    expect(words).toContain('Reached from the pit of the workshop');
    expect(words).not.toContain('lying under the car');
    const items = sets.flatMap(({ laidOut }) => laidOut.pages.flatMap((page) => page.items));
    const sizes = new Set(items.flatMap((item) => (item.kind === 'text' ? [item.sizePt] : [])));
    expect(sizes).toContain(12);
  }, 120_000);
});

describe('a club', () => {
  const folder = follow('club.md');

  test('hands over what its document says, its rules on two sides of one sheet', async () => {
    const text = readFileSync(join(root, 'docs', 'club.md'), 'utf8');
    const [, line = ''] = /^ +npx kettlebook make thimble\.yaml (--paper .*)$/m.exec(text) ?? [];
    const papers = line.split(' ').filter((word) => word !== '--paper');
    expect(papers).toContain('visiting-driver');
    await make(folder, 'thimble.yaml', ...line.split(' '));
    for (const paper of papers)
      expect(existsSync(join(folder, 'out', 'thimble', `${paper}.pdf`)), paper).toBe(true);
    const { words, pages } = await read(folder, 'thimble', 'visiting-driver');
    expect(words).toContain('On our runs the slowest car goes first');
    expect(words.indexOf('On our runs')).toBeLessThan(words.indexOf('Whom to ask'));
    expect(pages).toBe(2);
  }, 120_000);
});
