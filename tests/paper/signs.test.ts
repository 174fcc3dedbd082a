import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { openWorkshop, worldOf } from '../../src/kettlebook';
import { readSigns } from '../../src/paper/signs';
import { demo, shared, workshop } from '../whole/made';

const text = readFileSync(new URL('../../shared/signs.yaml', import.meta.url), 'utf8');

function problemsOf(changed: string) {
  expect(changed).not.toBe(text);
  const read = readSigns(changed, 'signs.yaml');
  return read.ok ? [] : read.problems;
}

describe('signs.yaml', () => {
  test('has words for every sign that can be drawn', () => {
    expect(readSigns(text, 'signs.yaml').ok).toBe(true);
  });

  test('may name no sign that cannot be drawn, and leave none out', () => {
    const strange = problemsOf(text.replace('  W021:', '  W099:'));
    expect(strange.map(({ code, at, message }) => [code, at?.line, message])).toEqual([
      ['shared-sign', expect.any(Number), 'there is no safety sign `W099` to be drawn'],
      ['shared-sign', expect.any(Number), 'the safety sign `W021` has no words'],
    ]);
    expect(problemsOf(text.replace('means: hot steam, ', ''))[0]).toMatchObject({ code: 'spec-missing' });
  });
});

describe('a caution', () => {
  test('that names a sign there is not is told at its place, with what may be meant', async () => {
    const files = await shared();
    const cautions = files.texts.get('cautions.yaml') ?? '';
    const changed = cautions.replace('signs: [W080, M009]', 'signs: [W080, M099]');
    expect(changed).not.toBe(cautions);
    const opened = openWorkshop({ ...files, texts: new Map(files.texts).set('cautions.yaml', changed) });
    const line = cautions.split('\n').findIndex((each) => each.includes('signs: [W080, M009]')) + 1;
    expect(opened.ok ? [] : opened.problems).toMatchObject([
      {
        code: 'shared-sign',
        at: { file: 'cautions.yaml', line },
        found: '`M099`',
        mend: 'did you mean `M009`?',
      },
    ]);
  });
});

test('a sign says number, meaning and picture to those who cannot see it', async () => {
  const { signs } = worldOf(await demo('marigold'), await workshop());
  expect(signs.get('W021')?.alt).toBe(
    'Safety sign W021 of ISO 7010: flammable material. It shows a flame above a line in a yellow triangle.',
  );
});
