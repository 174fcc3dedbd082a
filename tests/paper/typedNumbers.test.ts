/** No number that a paper prints is typed in a template: it comes from the car, where it can be explained. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

const folder = join(import.meta.dirname, '..', '..', 'templates');
const templates = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) =>
  name.endsWith('.hbs'),
);

/** Names of standards hold numbers. */
const standards = /NFPA 30|ANSI Z535\.\d|ISO \d+/g;

/** What a template says of itself: no expressions, no tags. */
function ownWords(template: string): string {
  return template
    .replace(/\{\{!--[\s\S]*?--\}\}/g, '')
    .replace(/\{\{[\s\S]*?\}\}/g, '')
    .replace(/<[^>]*>/g, '')
    .replace(standards, '');
}

test('the templates are found', () => {
  expect(templates.length).toBeGreaterThan(10);
});

test.each(templates)('%s', (name) => {
  expect(ownWords(readFileSync(join(folder, name), 'utf8'))).not.toMatch(/\d/);
});

test('a typed number would be seen', () => {
  expect(ownWords('<p class="h2">Wait 15 min, then {{figure}}.</p>')).toMatch(/15/);
});
