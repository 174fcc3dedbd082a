import { describe, expect, test } from 'vitest';
import { type ReadyCar, setOnePaper } from '../../src/kettlebook';
import type { Block, Inline } from '../../src/markup/block';
import { demo, demoNames, goodOf, workshop } from './made';
import { withoutPlaces } from './partWords';

const shop = await workshop();
const papers = shop.papers.map((paper) => paper.name);

function blocksOf(ready: ReadyCar, name: string): readonly Block[] {
  const paper = shop.papers.find((each) => each.name === name);
  if (paper === undefined) throw new Error(`there is no paper ${name}`);
  return goodOf(setOnePaper(ready, paper, shop)).blocks;
}

const said = (inlines: readonly Inline[]) =>
  inlines.map((inline) => (inline.kind === 'text' ? inline.text : ' ')).join('');

/** The actions of every step, wherever it stands. */
function actionsIn(blocks: readonly Block[]): readonly string[] {
  return blocks.flatMap((block) => {
    if (block.kind === 'steps') return block.items.map(({ action }) => said(action));
    if (block.kind === 'list') return block.items.flatMap(actionsIn);
    return 'blocks' in block ? actionsIn(block.blocks as readonly Block[]) : [];
  });
}

/** Words of the library in a step: the car’s own names count as one word each, tags and places in brackets as none. */
function wordsIn(whole: string, ready: ReadyCar): number {
  const text = withoutPlaces(whole, ready.car);
  const names = [...ready.car.parts.values()].map(({ name }) => name).sort((a, b) => b.length - a.length);
  const short = names.reduce((left, name) => left.replaceAll(name, 'N'), text).replace(/ \([A-Z]\d+\)/g, '');
  return short.split(/\s+/).length;
}

/** What no order begins with: articles, pronouns, and verbs that tell and do not order. */
const notAnOrder = /^(the|a|an|you|we|it|they|this|that|these|there|is|are|was|should|must|may|can|will)\b/i;

describe.each(demoNames)('the steps of %s', (name) => {
  test.each(papers)('%s: plain orders of about twenty words at the most', async (paper) => {
    const ready = await demo(name);
    const actions = actionsIn(blocksOf(ready, paper));
    // acts in a row are looked at one by one; more than a dozen in one breath nobody follows
    const rows = actions.flatMap((action) => {
      const row = /^(In this order|Only where it can be reached without danger): (.*)$/.exec(action);
      return row === null ? [] : [{ action, acts: (row[2] ?? '').split(', ') }];
    });
    expect(rows.filter(({ acts }) => acts.length < 2 || acts.length > 12)).toEqual([]);
    const single = actions.filter((action) => !rows.some((row) => row.action === action));
    const long = [...single, ...rows.flatMap(({ acts }) => acts)].filter((act) => wordsIn(act, ready) > 22);
    expect(long).toEqual([]);
    expect(paper !== 'card-something-is-wrong' || rows.length > 5).toBe(true);
    // the go-or-no-go list of the docent guide is made of statements, not of orders
    const cold = ready.guide.docent['proof-of-cold'].map(({ say }) => say);
    const orders = paper === 'docent-guide' ? actions.filter((action) => cold.includes(action)) : actions;
    expect(paper !== 'docent-guide' || orders.length === cold.length).toBe(true);
    const bare = orders.map((action) =>
      action.replace(/^(Driver|Helper): /, '').replace(/^(A minute before|If|When) [^,]+, /, ''),
    );
    expect(bare.filter((order) => notAnOrder.test(order))).toEqual([]);
  });
});

/** Words that belong to one side of the ocean only. */
const american = /\b(vapors?|tires?|gasoline|hood|colors?|license|gray|center|odor|wrench(es)?|smelled)\b/i;
const british =
  /\b(vapours?|tyres?|petrol|bonnet|colours?|licen[c]e|grey|centre|odour|spanners?|anticlockwise|smelt)\b/i;

/** The words of a paper outside what the spec itself says. */
function libraryWords(ready: ReadyCar, paper: string): string {
  const texts: string[] = [];
  const gather = (value: unknown): void => {
    if (typeof value === 'string') texts.push(value);
    else if (typeof value === 'object' && value !== null) Object.values(value).forEach(gather);
  };
  gather(ready.car.spec);
  for (const liquid of shop.liquids.values()) texts.push(liquid.name);
  const printed = JSON.stringify(blocksOf(ready, paper), (key, value: unknown) =>
    ['origin', 'drawing', 'sign', 'signs', 'says'].includes(key) ? null : value,
  );
  const own = [...new Set(texts)].filter((text) => text.length > 3).sort((a, b) => b.length - a.length);
  return own.reduce((left, text) => left.replaceAll(text, '·'), printed);
}

describe('English of two countries', () => {
  test.each(papers.filter((paper) => paper !== 'owners-manual'))(
    '%s of heron is British, of marigold and thimble American',
    async (paper) => {
      expect(american.exec(libraryWords(await demo('heron'), paper))?.[0]).toBeUndefined();
      expect(british.exec(libraryWords(await demo('marigold'), paper))?.[0]).toBeUndefined();
      expect(british.exec(libraryWords(await demo('thimble'), paper))?.[0]).toBeUndefined();
    },
  );

  test('the manuals too, but for the titles of sources and standard phrases', async () => {
    const manual = (ready: ReadyCar) => libraryWords(ready, 'owners-manual');
    expect(manual(await demo('heron'))).toMatch(/\btyres\b/i);
    expect(manual(await demo('heron'))).not.toMatch(/\b(tires?|gasoline|hood|license)\b/i);
    expect(manual(await demo('marigold'))).toMatch(/\btires\b/i);
    expect(manual(await demo('marigold'))).not.toMatch(/\b(petrol|bonnet|licence|anticlockwise)\b/i);
  });

  test('a car’s own names are never touched', async () => {
    const ready = await demo('marigold');
    expect(
      ready.proof.procedures.some(({ steps }) => steps.some(({ say }) => say.includes('water glass'))),
    ).toBe(true);
    const renamed = goodOf(shop.languages.of('en-GB')).texts.say('{{part.name}} of the hood');
    expect(renamed).toBe('{{part.name}} of the bonnet');
  });
});
