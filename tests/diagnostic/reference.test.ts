/** The page of problems lists every code, and the catalogue is fit to be listed. */
import { expect, test } from 'vitest';
import { catalogue } from '../../src/diagnostic/catalogue';
import { printForTerminal } from '../../src/diagnostic/print/terminal';
import { diagnosticsReference, groupsWithoutWords } from '../../src/diagnostic/reference';
import { gallons } from './examples';

test('every code stands on the page once, with its meaning', () => {
  const rows = diagnosticsReference().match(/^\| `[^`]+` \| .+ \|$/gm) ?? [];
  expect(rows).toHaveLength(Object.keys(catalogue).length);
  for (const [code, meaning] of Object.entries(catalogue))
    expect(rows).toContain(`| \`${code}\` | ${meaning} |`);
});

test('every group has a heading in words', () => {
  expect(groupsWithoutWords()).toEqual([]);
});

test('codes are lower-case words joined by hyphens, meanings are sentences', () => {
  for (const [code, meaning] of Object.entries(catalogue)) {
    expect(code).toMatch(/^[a-z]+(-[a-z0-9]+)+$/);
    expect(meaning).toMatch(/^\p{Lu}.*\.$/su);
  }
});

test('the example on the page is what is printed', () => {
  const shown = { ...gallons, at: { file: 'pipkin.yaml', line: 63, column: 15 } };
  const printed = printForTerminal([shown], 110).split('\n\n')[0] ?? '';
  expect(diagnosticsReference()).toContain(printed);
});
