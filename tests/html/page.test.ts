/** Pages as a browser and a screen reader find them: structure, names, links, and that nothing is fetched. */
import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { drawSign } from '../../src/drawing/signs/signs';
import { writeScreenPage } from '../../src/html/page';
import type { Block } from '../../src/markup/block';
import {
  caution,
  contents,
  definitions,
  figure,
  group,
  heading,
  inlines,
  origin,
  paragraph,
  step,
  steps,
  table,
} from '../helpers/blocks';
import { squareFonts } from '../helpers/squareMetrics';
import { papers } from './blockText';
import { plainLook, screenOptions } from './look';
import { attribute, type Element, elementsOf, hasClass, only, textOf, within } from './readPage';
import { samples } from './samples';

const look = plainLook();
const options = { ...screenOptions, title: 'Owner’s manual' };
const pages = samples.map(({ name, blocks, options: said }) => ({
  name,
  html: writeScreenPage(blocks, { ...said, look, fonts: squareFonts }),
}));

const byTag = (elements: readonly Element[], tag: string): Element[] =>
  elements.filter(({ tagName }) => tagName === tag);
const byClass = (elements: readonly Element[], name: string): Element[] =>
  elements.filter((each) => hasClass(each, name));
const idsOf = (elements: readonly Element[]): string[] =>
  elements.flatMap((each) => attribute(each, 'id') ?? []);

describe.each(pages)('the page of the sample $name', ({ html }) => {
  const elements = elementsOf(html);

  test('is a whole document with language and title', () => {
    expect(html.startsWith('<!DOCTYPE html>\n')).toBe(true);
    expect(attribute(only(elements, 'html'), 'lang')).toBe('en-US');
    expect(textOf(only(within(only(elements, 'head')), 'title'))).toMatch(/^Pipit: \S/);
  });

  test('has one of each landmark, and a link past its head', () => {
    for (const landmark of ['header', 'main', 'footer']) expect(byTag(elements, landmark)).toHaveLength(1);
    const [first] = byTag(elements, 'a');
    expect(first && attribute(first, 'href')).toBe(`#${attribute(only(elements, 'main'), 'id')}`);
  });

  test('has every id once', () => {
    const ids = idsOf(elements);
    expect(new Set(ids).size).toBe(ids.length);
  });

  test('has nothing that refers to what is not there', () => {
    const ids = new Set(idsOf(elements));
    const named = ['aria-labelledby', 'aria-describedby', 'for', 'data-list'];
    const references = elements.flatMap((each) =>
      named.flatMap((name) => attribute(each, name)?.split(' ') ?? []),
    );
    const links = byTag(elements, 'a').map((link) =>
      decodeURIComponent(attribute(link, 'href')?.slice(1) ?? ''),
    );
    expect(references.length).toBeGreaterThan(10);
    expect([...references, ...links].filter((name) => !ids.has(name))).toEqual([]);
  });

  test('needs nothing from outside itself', () => {
    const addresses = elements.flatMap((each) =>
      each.attrs
        .filter(({ name }) => ['src', 'href', 'srcset', 'action', 'data', 'poster'].includes(name))
        .map(({ value }) => value),
    );
    expect(addresses.filter((address) => !/^(#|data:)/.test(address))).toEqual([]);
    expect(html).not.toMatch(/url\(|@import/);
    expect(html.replaceAll('http://www.w3.org/2000/svg', '')).not.toMatch(/https?:/);
  });

  test('lets no script run but its own, by its hash (W3C CSP 3)', () => {
    const policy = elements.find((each) => attribute(each, 'http-equiv') === 'Content-Security-Policy');
    const hash = createHash('sha256')
      .update(textOf(only(elements, 'script')))
      .digest('base64');
    expect(policy && attribute(policy, 'content')).toContain(`script-src 'sha256-${hash}';`);
    expect(policy && attribute(policy, 'content')).toContain("default-src 'none'");
  });

  test('has headings that never skip a level on the way down, the title first', () => {
    const levels = elements.flatMap(({ tagName }) => (/^h[1-6]$/.test(tagName) ? [Number(tagName[1])] : []));
    expect(levels.filter((level) => level === 1)).toEqual([1]);
    expect(levels[0]).toBe(1);
    const skips = levels.filter((level, index) => level > (levels[index - 1] ?? 0) + 1);
    expect(skips).toEqual([]);
  });

  test('gives every step a box with a name', () => {
    const boxes = byTag(elements, 'input');
    const names = boxes.map((box) => attribute(box, 'aria-labelledby')?.split(' ') ?? []);
    const said = names.map((ids) =>
      ids.map((id) => textOf(elements.find((each) => attribute(each, 'id') === id) as Element)).join(' '),
    );
    expect(boxes.length).toBeGreaterThan(4);
    for (const name of said) expect(name).toMatch(/^Step \d+ \S/);
    expect(new Set(idsOf(boxes)).size).toBe(boxes.length);
  });

  test('gives every cell that heads something its scope, and every frame a name', () => {
    const heads = byTag(elements, 'th');
    expect(heads.length).toBeGreaterThan(3);
    expect(heads.filter((head) => !['col', 'row'].includes(attribute(head, 'scope') ?? ''))).toEqual([]);
    const frames = byClass(elements, 'frame');
    expect(
      frames.filter((frame) => !attribute(frame, 'aria-label') && !attribute(frame, 'aria-labelledby')),
    ).toEqual([]);
  });
});

describe('one thing at a time', () => {
  const of = (...blocks: Parameters<typeof writeScreenPage>[0]): Element[] =>
    elementsOf(writeScreenPage(blocks, options));

  test('the page says which car, paper and issue it is, and that the car is invented', () => {
    const head = textOf(only(of(), 'header'));
    for (const words of ['Pipit', 'Owner’s manual', 'Issue B, 2026-05-01', '7GKX-4MRT', look.words.invented])
      expect(head).toContain(words);
    const real = elementsOf(writeScreenPage([], { ...options, invented: false }));
    expect(textOf(only(real, 'header'))).not.toContain(look.words.invented);
  });

  test('a caution has its signal word and the alert symbol; a notice has no symbol', () => {
    for (const signal of ['danger', 'warning', 'caution', 'notice'] as const) {
      const [note] = byClass(of(caution(signal, 'Hot brass.')), 'caution');
      if (note === undefined) throw new Error('no caution');
      expect(textOf(note)).toBe(`${look.signals[signal].word}Hot brass.`);
      const symbols = byTag(within(note), 'svg').map((svg) => attribute(svg, 'aria-label'));
      expect(symbols).toEqual(signal === 'notice' ? [] : [look.words.alert]);
      expect(attribute(note, 'role')).toBe('note');
    }
  });

  test('a caution of a step stands before its box, in the same item', () => {
    const [item] = byTag(
      within(only(of(steps([step('Light it.', { cautions: [caution('danger', 'Fire.')] })])), 'ol')),
      'li',
    );
    const inside = item === undefined ? [] : within(item);
    const at = (holds: (each: Element) => boolean): number => inside.findIndex(holds);
    expect(at((each) => hasClass(each, 'caution'))).toBeGreaterThan(0);
    expect(at((each) => hasClass(each, 'caution'))).toBeLessThan(at(({ tagName }) => tagName === 'input'));
  });

  test('a critical step says so in words, and its box is described by them', () => {
    const elements = of(steps([step('Shut it.', { critical: true, result: 'shut' }), step('Wait.')]));
    const flags = byClass(elements, 'flag');
    expect(flags.map((flag) => textOf(flag))).toEqual([look.words.critical]);
    const [critical, plain] = byTag(elements, 'input').map((box) => attribute(box, 'aria-describedby'));
    expect(critical?.split(' ')).toContain(idsOf(flags)[0]);
    expect(plain).toBeUndefined();
  });

  test('steps carry on from the number they start at', () => {
    const elements = of(steps([step('One.'), step('Two.')], 'number', 9));
    expect(byClass(elements, 'number').map((each) => textOf(each))).toEqual(['Step 9', 'Step 10']);
    expect(attribute(only(elements, 'ol'), 'start')).toBe('9');
  });

  test('contents are nested as the headings are, down to their depth', () => {
    const nav = only(
      of(contents(2), heading(1, 'One'), heading(2, 'One, first'), heading(3, 'Deep'), heading(1, 'Two')),
      'nav',
    );
    const depth = (target: Element): number =>
      byTag(within(nav), 'ol').filter((list) => within(list).includes(target)).length;
    const links = byTag(within(nav), 'a').map((link) => [textOf(link), depth(link)]);
    expect(links).toEqual([
      ['One', 1],
      ['One, first', 2],
      ['Two', 1],
    ]);
  });

  test('a table has its caption, and repeats nothing that heads nothing', () => {
    const elements = of(table({ caption: 'Valves', head: ['', 'Open'], rows: [['1', 'yes']] }));
    expect(textOf(only(elements, 'caption'))).toBe('Valves');
    expect(byTag(elements, 'th').map((head) => [textOf(head), attribute(head, 'scope')])).toEqual([
      ['Open', 'col'],
    ]);
  });

  test('a table of sentences can stand row by row on a narrow screen, each cell with its head, and stays a table', () => {
    const long = 'open the fuel return valve until the gauge stands on its pin';
    const text = { head: ['Tag', 'Tank', 'Vented'], rows: [['T1', 'main tank', long]] };
    const elements = of(table(text));
    const cells = byTag(elements, 'td').map((each) => [
      attribute(each, 'data-label'),
      attribute(each, 'role'),
    ]);
    expect(cells).toEqual([
      ['Tag', 'cell'],
      ['Tank', 'cell'],
      ['Vented', 'cell'],
    ]);
    expect(byTag(elements, 'th').map((each) => attribute(each, 'role'))).toEqual([
      'columnheader',
      'columnheader',
      'columnheader',
    ]);
    const roles = ['table', 'thead', 'tbody', 'tr'].flatMap((tag) =>
      byTag(elements, tag).map((each) => attribute(each, 'role')),
    );
    expect(roles).toEqual(['table', 'rowgroup', 'rowgroup', 'row', 'row']);
    const figures = of(table({ ...text, rows: [['T1', 'main tank', 'yes']] }));
    expect(byClass(figures, 'stacks')).toEqual([]);
    const two = of(table({ head: ['Tank', 'Vented'], rows: [['main tank', long]] }));
    expect(byClass(two, 'stacks')).toEqual([]);
  });

  test('a figure is drawn in the page, with its title and what it shows in words', () => {
    const elements = of(figure(100, 50, 'The plan'));
    const svg = only(elements, 'svg');
    expect(textOf(only(within(svg), 'title'))).toBe('The plan');
    expect(textOf(only(within(svg), 'desc'))).toBe('a drawing');
    expect(attribute(svg, 'role')).toBe('img');
    // one letter of 10 pt in a square font: held to 10, whatever font the reader has
    expect(byTag(elements, 'text').map((each) => attribute(each, 'textLength'))).toEqual(['10']);
  });

  test('a figure at true size says that a screen does not show it so', () => {
    const plain = figure(100, 50, 'The strip');
    expect(byClass(of(plain), 'note')).toEqual([]);
    const [note] = byClass(of({ ...plain, trueSize: true } as Block), 'note');
    expect(note && textOf(note)).toMatch(/^Not to scale on a screen/);
  });

  test('letters of a drawing are never shown under 11 px: 10 pt letters are 13.3 px, so 100 pt may shrink to 110 px', () => {
    const [frame] = byClass(of(figure(100, 50)), 'drawing');
    expect(frame && attribute(frame, 'style')).toBe('--least:110px');
  });

  test('safety signs are pictures with words, and their numbers are not read twice', () => {
    const sign = drawSign('W021', 'Safety sign W021: flammable material');
    const warned = { ...caution('danger', 'Fuel'), signs: [sign] };
    const list = {
      kind: 'signs',
      origin: origin(),
      items: [{ sign, content: inlines('fuel here') }],
    } as const;
    const elements = elementsOf(writeScreenPage([warned, list], options));
    const pictures = byClass(elements, 'sign');
    expect(pictures.length).toBe(2);
    for (const picture of pictures) {
      const [svg] = byTag(within(picture), 'svg');
      expect(svg && attribute(svg, 'role')).toBe('img');
      expect(textOf(picture)).toContain(sign.alt);
      const [number] = byClass(within(picture), 'number');
      expect(number && [textOf(number), attribute(number, 'aria-hidden')]).toEqual(['W021', 'true']);
    }
    expect(byClass(elements, 'signs').map((each) => byTag(within(each), 'li').length)).toEqual([1]);
  });

  test('what stands in columns is in one element that the style sets in columns', () => {
    const html = writeScreenPage([group([definitions([['bypass', 'a valve']])], 'columns')], options);
    const [columns] = byClass(elementsOf(html), 'columns');
    expect(columns && byTag(within(columns), 'dt').map((each) => textOf(each))).toEqual(['bypass']);
    expect(look.style).toMatch(/^\.columns \{ columns: 2 /m);
  });

  test('a paper without steps keeps no ticks and says nothing of them', () => {
    const ids = idsOf(of(paragraph('Only words.')));
    expect(ids).not.toContain('_ticks');
    expect(ids).not.toContain('_bar');
  });
});

test('the same paper gives the same page, letter for letter', () => {
  fc.assert(
    fc.property(papers, (blocks) => {
      const copy = structuredClone(blocks);
      expect(writeScreenPage(copy, { ...options, look: plainLook() })).toBe(writeScreenPage(blocks, options));
    }),
    { numRuns: 30 },
  );
});
