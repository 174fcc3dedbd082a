import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { foundGood, recallTexts, textsToKeep } from '../../src/cli/keptTexts';
import { openShared } from '../../src/cli/openShared';
import { readSharedFiles } from '../../src/cli/sharedFiles';
import type { SharedFiles } from '../../src/kettlebook';

const root = join(import.meta.dirname, '..', '..');
const shared = readSharedFiles(root);

/** The shared files with one text or template otherwise. */
function changed(kind: 'texts' | 'templates', name: string, change: (text: string) => string): SharedFiles {
  const text = shared[kind].get(name);
  if (text === undefined) throw new Error(`no ${name}`);
  return { ...shared, [kind]: new Map(shared[kind]).set(name, change(text)) };
}

/** Codes of the problems of a workshop that cannot be opened; none of one that can. */
function codesOf(files: SharedFiles): readonly string[] {
  const opened = openShared(files);
  return opened.ok ? [] : opened.problems.map(({ code }) => code);
}

const misnamed = changed('texts', 'procedures/20-water.yaml', (text) =>
  text.replace(/duty: /, 'duty: no-such-'),
);
const formless = changed('texts', 'liquids.yaml', (text) => `${text}\nno-such-key: 1\n`);
const formlessTheme = changed('texts', 'themes/plain.yaml', (text) => `${text}\nno-such-key: 1\n`);
const unclosed = changed('templates', 'owners-manual', (text) => `${text}{{#if title}}`);
const unknownPiece = changed('templates', 'owners-manual', (text) => `${text}{{> no-such-piece}}`);

describe('what the build keeps of the shared texts', () => {
  let folder = '';
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'kept-'));
    const file = join(folder, 'shared.json');
    writeFileSync(file, textsToKeep(root));
    recallTexts(file);
  });
  afterAll(() => rmSync(folder, { recursive: true }));

  it('knows the files it was made from', () => {
    expect(foundGood(shared)).toBe(true);
    expect(codesOf(shared)).toEqual([]);
  });

  it.each([
    ['a letter of the library', changed('texts', 'cautions.yaml', (text) => text.replace('e', 'E'))],
    ['a letter of a template', changed('templates', 'owners-manual', (text) => text.replace('e', 'E'))],
    ['one more text', { ...shared, texts: new Map(shared.texts).set('procedures/more.yaml', '') }],
    ['one more template', { ...shared, templates: new Map(shared.templates).set('more', '') }],
    ['one text less', { ...shared, texts: new Map([...shared.texts].slice(1)) }],
    ['one template less', { ...shared, templates: new Map([...shared.templates].slice(1)) }],
  ])('does not know them with %s', (_, files) => {
    expect(foundGood(files)).toBe(false);
  });

  it.each([
    ['a name that does not exist', misnamed, 'library-unknown'],
    ['a key that does not exist', formless, 'spec-unknown-key'],
    ['a key of a theme that does not exist', formlessTheme, 'theme-shape'],
    ['a block that is not closed', unclosed, 'template-syntax'],
    ['a piece that is not there', unknownPiece, 'template-unknown'],
  ])('does not keep %s from being found', (_, files, code) => {
    expect(codesOf(files)).toContain(code);
  });
});
