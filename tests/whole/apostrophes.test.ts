/** No printed word has the typewriter’s apostrophe, whoever typed it: the keeper, the library, the program. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { makePapers, readCar } from '../../src/kettlebook';
import { demoNames, goodOf, inWords, logs, root, workshop } from './made';

const shop = await workshop();
const utf8 = new TextDecoder();

/** What a page for a screen says, without its styles and its program. */
const said = (html: string) =>
  html
    .replace(/<(style|script)\b[\s\S]*?<\/\1>/g, '')
    .replace(/&#x27;|&#39;|&apos;/g, "'")
    .match(/(?:title|alt|aria-label)="[^"]*"|(?<=>)[^<]+/g) ?? [];

/** A typed apostrophe in a word or at its end. */
const typed = /\p{L}'/u;

/** The spec, its car called after somebody. */
const calledAfter = (text: string) => text.replace(/^( {2}name: )(\w+)$/m, "$1Nobody's $2");

describe.each([...demoNames.map((name) => `cars/${name}.yaml`), 'cars/de/fingerhut.yaml'])('%s', (file) => {
  test('has curly apostrophes in every word of every paper, printed and on a screen', async () => {
    const text = readFileSync(join(root, file), 'utf8');
    expect(calledAfter(text)).not.toBe(text);
    const ready = goodOf(readCar({ file, text: calledAfter(text), beside: logs() }, shop));
    const found = new Set<string>();
    let [papers, curly] = [0, 0];
    const made = await makePapers(ready, ready.papers, shop, (paper) => {
      papers += 1;
      const pages = [paper.laidOut, paper.sheets?.laidOut].flatMap((set) => set?.pages ?? []);
      const printed = pages.flatMap(({ items }) =>
        items.flatMap((item) => (item.kind === 'text' ? [item.text] : [])),
      );
      const shown = paper.screen === undefined ? [] : said(utf8.decode(paper.screen.bytes));
      for (const words of [...printed, ...shown]) {
        if (typed.test(words)) found.add(`${paper.name}: ${words}`);
        if (/\p{L}’/u.test(words)) curly += 1;
      }
    });
    expect(made.ok ? [] : made.problems.map(inWords)).toEqual([]);
    expect(papers).toBeGreaterThan(10);
    if (!file.includes('/de/')) expect(curly).toBeGreaterThan(10);
    expect([...found]).toEqual([]);
  });
});
