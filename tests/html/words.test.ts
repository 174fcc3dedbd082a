/** No word is lost, added or moved, whatever the blocks hold; and text never becomes markup. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { writeScreenPage } from '../../src/html/page';
import type { Block, Inline } from '../../src/markup/block';
import { briefCaution, heading, paragraph, step, steps, table } from '../helpers/blocks';
import { squareFonts } from '../helpers/squareMetrics';
import { papers, wordsIn } from './blockText';
import { plainLook } from './look';
import { attribute, type Element, elementsOf, hasClass, only, textOf } from './readPage';
import { samples } from './samples';

const look = plainLook();
const options = {
  title: 'Paper',
  language: 'en',
  car: 'Car',
  issue: 'A',
  date: '2026-01-01',
  fingerprint: 'AAAA-CCCC',
  invented: false,
  look,
  fonts: squareFonts,
};

/** What the page says besides the words of the blocks. */
const own = ['heard', 'number', 'lookfor', 'flag', 'list-foot', 'signal'];

const isOwn = (element: Element): boolean =>
  element.tagName === 'svg' || element.tagName === 'nav' || own.some((name) => hasClass(element, name));

const wordsShown = (html: string): string =>
  textOf(only(elementsOf(html), 'main'), isOwn).replace(/\s+/gu, '');

describe('the words of the blocks', () => {
  test('stand on the page, each once and in order, for any blocks', () => {
    fc.assert(
      fc.property(papers, (blocks) => {
        expect(wordsShown(writeScreenPage(blocks, options))).toBe(wordsIn(blocks));
      }),
      { numRuns: 300 },
    );
  });

  test.each(samples)('stand on the page of the sample $name', ({ blocks, options: said }) => {
    expect(wordsIn(blocks).length).toBeGreaterThan(200);
    expect(wordsShown(writeScreenPage(blocks, { ...said, look, fonts: squareFonts }))).toBe(wordsIn(blocks));
  });

  test('of a caution are said at each of its steps, by its signal word and in full, where paper has a mark', () => {
    const hot = briefCaution('danger', 'Burns.');
    const items = [1, 2, 3].map((at) => step(`Open ${at}`, { cautions: [hot] }));
    const notes = elementsOf(writeScreenPage([steps(items)], options)).filter(
      (element) => attribute(element, 'role') === 'note',
    );
    expect(
      notes.map((note) => textOf(note, ({ tagName }) => tagName === 'svg').replace(/\s+/gu, '')),
    ).toEqual(items.map(() => 'DANGERBurns.'));
  });

  test('are told lost if one is', () => {
    const html = writeScreenPage([paragraph('one two')], options).replace('two', '');
    expect(wordsShown(html)).not.toBe(wordsIn([paragraph('one two')]));
  });
});

describe('text that looks like markup', () => {
  /** The elements of a page whose every text is `words`, by name. */
  const tagsWith = (words: string): string[] => {
    const blocks: Block[] = [heading(1, words), paragraph(words)];
    const said = { title: words, car: words, issue: words, date: words, fingerprint: words };
    return elementsOf(writeScreenPage(blocks, { ...options, ...said })).map(({ tagName }) => tagName);
  };

  test('makes no element, wherever it stands', () => {
    const plain = tagsWith('plain');
    const hostile = [
      '<script>alert(1)</script>',
      '</title></style></script><b>',
      '"><img src=x onerror=alert(1)>',
      "'><a>",
      '&lt;b&gt;',
    ];
    for (const words of hostile) expect(tagsWith(words)).toEqual(plain);
  });

  test('makes no attribute', () => {
    fc.assert(
      fc.property(papers, (blocks) => {
        const handlers = elementsOf(writeScreenPage(blocks, options)).flatMap(({ attrs }) =>
          attrs.filter(({ name }) => name.startsWith('on')),
        );
        expect(handlers).toEqual([]);
      }),
      { numRuns: 50 },
    );
  });

  test('stays in the attribute it stands in', () => {
    const html = writeScreenPage([paragraph('x')], { ...options, fingerprint: '" onload="alert(1)' });
    const page = only(elementsOf(html), 'html');
    expect(attribute(page, 'data-fingerprint')).toBe('" onload="alert(1)');
    expect(page.attrs.map(({ name }) => name)).toEqual(['lang', 'dir', 'data-fingerprint']);
  });

  test('shows letters that no page can hold as U+FFFD', () => {
    const html = writeScreenPage([paragraph('a\u0000b\u001bc\ud800d\ufffee')], options);
    expect(wordsShown(html)).toBe('a\ufffdb\ufffdc\ufffdd\ufffde');
  });
});

describe('references to pages', () => {
  const linked = (
    content: readonly Inline[],
  ): { readonly text: string; readonly links: readonly string[] } => {
    const html = writeScreenPage([heading(1, 'Place', 'place'), paragraph(content)], options);
    const paragraphs = elementsOf(html).filter(({ tagName }) => tagName === 'p');
    const found = paragraphs.find((each) => textOf(each).includes('§'));
    if (found === undefined) throw new Error('the paragraph is not there');
    const links = elementsOf(html).filter((each) => attribute(each, 'href') === '#place');
    return {
      text: textOf(found, (each) => hasClass(each, 'heard')),
      links: links.map((link) => textOf(link)),
    };
  };
  const words = (text: string): Inline => ({ kind: 'text', text, strong: false, emphasis: false });
  const page: Inline = { kind: 'page-of', target: 'place' };

  test('are links on the word before them, which say where they lead', () => {
    expect(linked([words('§ there (page '), page, words(')')])).toEqual({
      text: '§ there (page)',
      links: ['page: Place'],
    });
  });

  test('name what they lead to where no word stands before them', () => {
    expect(linked([page, words(' §')])).toEqual({ text: 'Place §', links: ['Place'] });
    expect(linked([words('§ ('), page, words(')')])).toEqual({ text: '§ (Place)', links: ['Place'] });
    expect(linked([words('§'), { kind: 'break' }, page])).toEqual({ text: '§\nPlace', links: ['Place'] });
  });

  test('do not take a word that is a link already', () => {
    const link: Inline = { kind: 'text', text: '§ word', strong: false, emphasis: false, link: 'place' };
    expect(linked([link, page]).links).toEqual(['§ word', 'Place']);
  });

  test('are links on the name in their row, where one stands in it, and do not say it twice', () => {
    const cells = (...contents: readonly (readonly Inline[])[]): Block => {
      const block = table({ rows: [contents.map(() => '')] });
      return { ...block, body: [{ cells: contents.map((content) => ({ content, span: 1, head: 'none' })) }] };
    };
    const html = (...contents: readonly (readonly Inline[])[]) =>
      writeScreenPage([heading(1, 'Place', 'place'), cells(...contents)], options);
    const rowOf = (page: string) => {
      const [row] = elementsOf(page).filter(({ tagName }) => tagName === 'tr');
      if (row === undefined) throw new Error('the row is not there');
      return textOf(row);
    };
    const named = html([words('Place')], [page]);
    expect(rowOf(named)).toBe('Place');
    expect(elementsOf(named).filter((each) => attribute(each, 'href') === '#place')).toHaveLength(1);
    expect(rowOf(html([words('Elsewhere')], [page]))).toMatch(/Elsewhere\s*Place/);
  });

  test('are no links if they lead to nothing', () => {
    const html = writeScreenPage(
      [paragraph([words('page '), { kind: 'page-of', target: 'nowhere' }])],
      options,
    );
    expect(html).not.toContain('#nowhere');
    expect(wordsShown(html)).toBe('page');
  });
});
