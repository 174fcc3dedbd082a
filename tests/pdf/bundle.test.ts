import { mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { toSvg } from '../../src/drawing/svg';
import { writePdf } from '../../src/pdf/write';
import { options, paper } from '../helpers/laidOut';
import type * as bundled from './fixtures/bundled';

let folder: string;
let program: typeof bundled;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'bundle-'));
  const { buildProgram } = (await import(new URL('../../bin/build.mjs', import.meta.url).href)) as {
    buildProgram: (options: { entry: string; folder: string }) => Promise<string>;
  };
  const entry = fileURLToPath(new URL('fixtures/bundled.ts', import.meta.url));
  program = createRequire(import.meta.url)(await buildProgram({ entry, folder }));
});
afterAll(() => rmSync(folder, { recursive: true }));

it('the bundle writes the same PDF as the sources', async () => {
  expect(
    Buffer.from(await program.writePdf(paper, options)).equals(Buffer.from(await writePdf(paper, options))),
  ).toBe(true);
});

it('the bundle draws and reads markup', () => {
  const drawing = { name: 'd', widthPt: 1, heightPt: 1, shapes: [], alt: 'nothing' };
  expect(program.toSvg(drawing)).toBe(toSvg(drawing));
  const templates = program.compileTemplates({ page: '<p>{{x}}</p>' });
  const made = templates.ok ? templates.value.render('page', { x: 'a & b' }) : undefined;
  expect(made?.ok && program.parseMarkup(made.value.html, 'page', { drawings: new Map() })).toMatchObject({
    ok: true,
    value: [{ content: [{ text: 'a & b' }] }],
  });
});

it('nothing has to stand beside the bundle', () => {
  expect(readdirSync(folder).sort()).toEqual([
    'engine.cjs',
    'program.cache',
    'program.cjs',
    'program.js',
    'program.js.LEGAL.txt',
  ]);
});
