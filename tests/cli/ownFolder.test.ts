import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeEach, describe, expect, test } from 'vitest';
import { openCar } from '../../src/cli/openCar';
import { setOnePaper } from '../../src/kettlebook';
import { root, specText } from '../whole/made';
import { putLogs, run } from './run';

const folder = mkdtempSync(join(tmpdir(), 'kettlebook-own-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const spec = join(folder, 'thimble.yaml');
putLogs(folder);
const own = join(folder, 'museum');
const card = 'card-running';

beforeEach(() => {
  rmSync(own, { recursive: true, force: true });
  cpSync(join(import.meta.dirname, 'fixtures', 'museum'), own, { recursive: true });
  writeFileSync(spec, specText('thimble').replace('  theme: plain', '  theme: plain\n  folder: museum'));
});

function put(name: string, text: string): void {
  mkdirSync(join(own, name, '..'), { recursive: true });
  writeFileSync(join(own, name), text);
}

const shared = (name: string) => readFileSync(join(root, name), 'utf8');

/** The words of the card and how its car was opened. */
async function cardWords(): Promise<{ words: string; letterPt: number }> {
  const opened = await openCar(spec, root);
  if (!opened.ok) throw new Error(opened.problems.map(({ message }) => message).join('\n'));
  const { ready, workshop } = opened.value;
  const paper = workshop.papers.find(({ name }) => name === card);
  if (paper === undefined) throw new Error(`there is no ${card}`);
  const set = setOnePaper(ready, paper, workshop);
  if (!set.ok) throw new Error(set.problems.map(({ message }) => message).join('\n'));
  const texts = set.value.laidOut.pages.flatMap(({ items }) =>
    items.flatMap((item) => (item.kind === 'text' ? [item] : [])),
  );
  return {
    words: texts.map(({ text }) => text).join(' '),
    letterPt: Math.max(...texts.map(({ sizePt }) => sizePt)),
  };
}

async function refusedWith(): Promise<string> {
  const { code, complained } = await run('make', spec, '--paper', card, '--out', join(folder, 'out'));
  expect(code).toBe(1);
  return complained.replace(/\s+/g, ' ');
}

describe('a folder of the museum’s own', () => {
  test('its template takes the place of the program’s', async () => {
    expect((await cardWords()).words).toContain('Tidewater Motor Museum.');
  });

  test('its theme is used when the spec names it', async () => {
    const plain = await cardWords();
    put(
      'themes/large-heads.yaml',
      shared('shared/themes/plain.yaml').replace('  title: 1.25', '  title: 1.6'),
    );
    writeFileSync(spec, readFileSync(spec, 'utf8').replace('theme: plain', 'theme: large-heads'));
    expect((await cardWords()).letterPt).toBeGreaterThan(plain.letterPt);
  });

  test('its plans give the cards other titles', async () => {
    put(
      'papers.yaml',
      shared('shared/papers.yaml').replace('title: Running and short stops', 'title: Out with visitors'),
    );
    expect((await cardWords()).words).toContain('Out with visitors');
  });

  test('its words are checked as the program’s are, and told where they stand', async () => {
    put('languages/en/words.yaml', shared('shared/languages/en/words.yaml').replace(/^fluids:/m, 'fluid:'));
    const told = await refusedWith();
    expect(told).toMatch(/museum\/languages\/en\/words\.yaml:\d+:\d+ error\[spec-/);
  });

  test('a template with a value that does not exist is refused at its place', async () => {
    put('templates/card.hbs', '<h1>{{card.title}}</h1>\n<p>{{card.curator}}</p>\n');
    expect(await refusedWith()).toMatch(/museum\/templates\/card\.hbs:2:\d+ error\[template-missing\]/);
  });
});

describe('a paper of one’s own', () => {
  const plan = (read: string) =>
    `${shared('shared/papers.yaml')}own:\n  - { name: ours, title: Ours, what: ours, read: ${read} }\n`;

  test.each(['dash', 'lap', 'wall', 'desk'])('is laid out to be read at the %s', async (read) => {
    put('papers.yaml', plan(read));
    put('templates/ours.hbs', '<h1>{{car.name}}</h1>\n<p>Ask at the gate.</p>\n');
    const { code, said, complained } = await run(
      'make',
      spec,
      '--paper',
      'ours',
      '--out',
      join(folder, 'out'),
    );
    expect(code, complained).toBe(0);
    expect(said).toMatch(/^Ours .* 1 /m);
  });

  test('prints a procedure whole, or is refused', async () => {
    put('papers.yaml', plan('desk'));
    put(
      'templates/ours.hbs',
      '<h1>{{car.name}}</h1>\n<ol class="steps">{{#each procedures}}{{#each steps}}{{#if @first}}<li><p class="action">{{> pieces/text say}}</p></li>{{/if}}{{/each}}{{/each}}</ol>\n',
    );
    const { code, complained } = await run('make', spec, '--paper', 'ours', '--out', join(folder, 'out'));
    expect(code).toBe(1);
    expect(complained).toContain('error[template-drops-step]');
  });
});

describe('what a template may not do', () => {
  test('drop a caution', async () => {
    put(
      'templates/pieces/card-steps.hbs',
      shared('templates/pieces/card-steps.hbs').replace(/^.*pieces\/caution.*$/m, ''),
    );
    expect(await refusedWith()).toContain('error[template-drops-caution]');
  });

  test('drop a step', async () => {
    const text = shared('templates/pieces/card-steps.hbs');
    const [start, end] = ['{{#each steps}}', '{{/each}}\n</ol>'];
    put(
      'templates/pieces/card-steps.hbs',
      text.replace(start, `${start}{{#unless @last}}`).replace(end, `{{/unless}}${end}`),
    );
    expect(await refusedWith()).toContain('error[template-drops-step]');
  });

  test('leave a whole procedure out: that it may', async () => {
    put('templates/card.hbs', '<h1>{{card.title}}</h1>\n<p>Ask the workshop.</p>\n');
    expect((await cardWords()).words).toContain('Ask the workshop.');
  });
});

describe('refused', () => {
  test('a folder that is not there', async () => {
    rmSync(own, { recursive: true });
    expect(await refusedWith()).toMatch(/thimble\.yaml:\d+:\d+ error\[folder-absent\]/);
  });

  test.each(['cautions.yaml', 'procedures/10-before.yaml', 'languages/en/qq.yaml', 'card.hbs'])(
    'a file that takes no place: %s',
    async (name) => {
      put(name, 'a: 1\n');
      expect(await refusedWith()).toContain('error[folder-strange]');
    },
  );

  test('a template of no paper, unless another one of the folder calls it', async () => {
    put('templates/rope-sign.hbs', '<p>Hands off.</p>\n');
    expect(await refusedWith()).toMatch(/error\[folder-strange\] no paper is made from `.*rope-sign\.hbs`/);
    put('templates/card.hbs', '<h1>{{card.title}}</h1>\n{{> rope-sign}}\n');
    expect((await cardWords()).words).toContain('Hands off.');
  });

  test('a paper of one’s own by the name of another', async () => {
    put(
      'papers.yaml',
      `${shared('shared/papers.yaml')}own:\n  - { name: range-table, title: Ours, what: ours, read: desk }\n`,
    );
    expect(await refusedWith()).toMatch(/papers\.yaml:\d+:\d+ error\[spec-name-twice\]/);
  });

  test('a picture that is more than plain shapes, at its place in the folder', async () => {
    put('pictures/badge.svg', '<svg viewBox="0 0 1 1"><title>A</title>\n<image/></svg>\n');
    expect(await refusedWith()).toMatch(/museum\/pictures\/badge\.svg:2:\d+ error\[picture-form\]/);
  });

  test('a theme that is not there, with those that are', async () => {
    writeFileSync(spec, readFileSync(spec, 'utf8').replace('theme: plain', 'theme: brass'));
    const told = await refusedWith();
    expect(told).toMatch(/error\[theme-unknown\] there is no theme `brass`/);
    expect(told).toContain('`plain`');
  });
});
