import { describe, expect, it } from 'vitest';
import { type CheckOptions, checkLaidOut } from '../../src/layout/check';
import type { LaidOut, PlacedItem, PlacedText } from '../../src/layout/frame';
import type { Block } from '../../src/markup/block';
import {
  briefCaution,
  caution,
  contents,
  figure,
  group,
  heading,
  linked,
  list,
  paragraph,
  step,
  steps,
  table,
  words,
} from '../helpers/blocks';
import { squareFonts } from '../helpers/squareMetrics';
import { evenTheme, laidOutCleanly, linesOf, squareOptions } from '../helpers/squarePage';

const options: CheckOptions = {
  fonts: squareFonts,
  theme: evenTheme,
  leastPt: { text: 10, 'text-italic': 10, 'text-bold': 10, narrow: 10, 'narrow-bold': 10 },
};

const blocks: readonly Block[] = [
  contents(1),
  heading(1, 'the first'),
  paragraph([linked('go', 'end')]),
  list(['one', 'two'], true),
  steps([step('act', { cautions: [caution('warning', 'hot.')], result: 'see' })]),
  table({
    caption: 'cap',
    head: ['top', 'next'],
    rows: Array.from({ length: 12 }, (_, index) => [`r${index}`, `s${index}`]),
  }),
  figure(100, 40, 'drawn'),
  paragraph(words(30), 'body', 'end'),
];
const good = laidOutCleanly(blocks, squareOptions(30, 14));

const codes = (laidOut: LaidOut, own: readonly Block[] = blocks) =>
  checkLaidOut(own, laidOut, options).map(({ code }) => code);

/** The paper with each item replaced by what `change` gives. */
function changed(change: (item: PlacedItem, page: number) => PlacedItem | readonly PlacedItem[]): LaidOut {
  const pages = good.pages.map((page, index) => ({
    ...page,
    items: page.items.flatMap((item) => change(item, index)),
  }));
  return { ...good, pages };
}

const isText = (item: PlacedItem, text: string): item is PlacedText =>
  item.kind === 'text' && item.text.trim() === text;

describe('checkLaidOut', () => {
  it('finds nothing wrong with a good paper of several pages', () => {
    expect(good.pages.length).toBeGreaterThan(2);
    expect(codes(good)).toEqual([]);
  });

  it('finds a lost word, a word too many, and words out of order', () => {
    expect(codes(changed((item) => (isText(item, 'act') ? [] : item)))).toContain('check-words-lost');
    expect(
      codes(changed((item) => (isText(item, 'see') ? [item, { ...item, x: item.x + 60 }] : item))),
    ).toContain('check-words-lost');
    expect(
      codes(good, [...blocks.slice(0, 4), ...blocks.slice(5, 6), ...blocks.slice(4, 5), ...blocks.slice(6)]),
    ).toContain('check-words-lost');
    expect(codes(good, [...blocks, paragraph('more')])).toContain('check-words-lost');
  });

  it('finds words that run together across lines', () => {
    const run = changed((item) =>
      item.kind === 'text' && item.tag !== undefined ? { ...item, text: item.text.trim() } : item,
    );
    expect(codes(run)).toContain('check-words-lost');
  });

  it('finds what stands outside the printable part', () => {
    expect(codes(changed((item) => (isText(item, 'act') ? { ...item, x: 280 } : item)))).toContain(
      'check-outside',
    );
    expect(
      codes(
        changed((item) =>
          item.kind === 'shape' && item.shape.kind === 'rect'
            ? { ...item, shape: { ...item.shape, y: -30 } }
            : item,
        ),
      ),
    ).toContain('check-outside');
  });

  it('finds text that covers text', () => {
    const act = good.pages.flatMap(({ items }) => items).find((item) => isText(item, 'act'));
    const covered = changed((item) =>
      isText(item, 'see') && act?.kind === 'text' ? { ...item, x: act.x, y: act.y } : item,
    );
    expect(codes(covered)).toContain('check-overlap');
  });

  it('finds a heading left last on its page', () => {
    const parted = partedAfter(
      (item) => item.kind === 'text' && good.structure[item.tag ?? 0]?.type === 'H1',
    );
    expect(codes(parted)).toEqual(['check-heading-last']);
  });

  it('finds a caution parted from its step', () => {
    expect(codes(partedAfter((item) => isText(item, 'hot.')))).toEqual(['check-caution-parted']);
  });

  describe('of a caution that is said above', () => {
    const hot = briefCaution('warning', 'hot.');
    const act = (action: string) => step(action, { cautions: [hot] });
    const twice = [steps([act('first'), act('second')])];
    const clean = laidOutCleanly(twice, squareOptions(30, 14));
    const parted = (match: (item: PlacedItem) => boolean) => partedAfter(match, clean);

    it('finds nothing wrong where it is said on the same page before a step of the same list', () => {
      expect(linesOf(clean.pages[0])).toEqual(['A WARNING hot.', '1 first', 'A 2 second']);
      expect(codes(clean, twice)).toEqual([]);
    });

    it('finds a page that goes on without saying it again', () => {
      expect(
        codes(
          parted((item) => isText(item, 'first')),
          twice,
        ),
      ).toEqual(['check-caution-parted']);
    });

    it('finds one that is said before a step of another list only', () => {
      expect(codes(clean, [steps([act('first')]), steps([act('second')], 'number', 2)])).toContain(
        'check-words-lost',
      );
    });

    it('finds one that is said below only, and one that is not brief', () => {
      expect(codes(clean, [steps([step('first'), act('second')])])).toContain('check-words-lost');
      const whole = (action: string) => step(action, { cautions: [caution('warning', 'hot.')] });
      expect(codes(clean, [steps([whole('first'), whole('second')])])).toContain('check-words-lost');
    });
  });

  it('finds a table that goes on without its head', () => {
    const bare = changed((item) =>
      item.kind === 'text' && item.tag === undefined && item.text === 'next' ? [] : item,
    );
    expect(codes(bare)).toContain('check-head-not-repeated');
  });

  it('finds type that is too small', () => {
    expect(codes(changed((item) => (isText(item, 'act') ? { ...item, sizePt: 9 } : item)))).toContain(
      'check-type-too-small',
    );
  });

  it('lets only what is looked up stand in type that is read from nearer', () => {
    const own = [paragraph('far'), group([paragraph('near')], 'look-up')];
    const set = laidOutCleanly(own, squareOptions(30, 14));
    const found = (word: string, sizePt: number) => {
      const pages = set.pages.map((page) => ({
        ...page,
        items: page.items.map((item) => (isText(item, word) ? { ...item, sizePt } : item)),
      }));
      const lookUpPt = { text: 7, 'text-italic': 7, 'text-bold': 7, narrow: 7, 'narrow-bold': 7 };
      return checkLaidOut(own, { ...set, pages }, { ...options, lookUpPt }).map(({ code }) => code);
    };
    expect(found('near', 7)).toEqual([]);
    expect(found('near', 6.5)).toEqual(['check-type-too-small']);
    expect(found('far', 9)).toEqual(['check-type-too-small']);
    // where nothing is read from nearer, it may not be smaller either
    const smaller = {
      ...set,
      pages: set.pages.map((page) => ({
        ...page,
        items: page.items.map((item) => (isText(item, 'near') ? { ...item, sizePt: 9 } : item)),
      })),
    };
    expect(codes(smaller, own)).toEqual(['check-type-too-small']);
  });

  it('finds links and ids without a place', () => {
    expect(
      codes({ ...good, destinations: good.destinations.filter(({ name }) => name !== 'end') }),
    ).toContain('check-no-destination');
  });
});

/** The paper with a new page begun right after the item that matches. */
function partedAfter(match: (item: PlacedItem) => boolean, laidOut = good): LaidOut {
  const pages = laidOut.pages.flatMap((page) => {
    const at = page.items.findIndex(match);
    if (at === -1) return [page];
    return [
      { ...page, items: page.items.slice(0, at + 1) },
      { ...page, items: page.items.slice(at + 1) },
    ];
  });
  expect(pages).toHaveLength(laidOut.pages.length + 1);
  return { ...laidOut, pages };
}
