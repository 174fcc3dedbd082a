/** The files made from the program itself are those the program would make now. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { generatedFiles } from '../../src/cli/generatedFiles';

const read = (path: string) => readFileSync(join(import.meta.dirname, '..', '..', path), 'utf8');

test.each(generatedFiles)('$path is current (if not: npm run docs)', ({ path, text }) => {
  expect(read(path)).toBe(text(read));
});
