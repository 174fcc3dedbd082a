/** A pressure, and what is kept back in a tank, is one number in one book: the same in the other units on every page. */
import { describe, expect, test } from 'vitest';
import { worldOf } from '../../src/kettlebook';
import { workingsContext } from '../../src/paper/context/workings';
import { demo, demoNames, workshop } from './made';

/** All that a paper says; with `under`, only what stands under that key. */
function textsIn(value: unknown, under?: string, own?: string): string[] {
  if (typeof value === 'string')
    return under === undefined || under === own ? [value.replaceAll('\u00a0', ' ')] : [];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, each]) => textsIn(each, under, key));
}

/** What each amount is said to come to. */
function conversions(texts: readonly string[], form: RegExp): Map<string, Set<string>> {
  const found = new Map<string, Set<string>>();
  for (const text of texts)
    for (const [, amount = '', other = ''] of text.matchAll(form))
      found.set(amount, (found.get(amount) ?? new Set()).add(other));
  return found;
}

const several = (found: ReadonlyMap<string, ReadonlySet<string>>) =>
  [...found].filter(([, others]) => others.size > 1).map(([amount, others]) => [amount, ...others]);

const shop = await workshop();

describe.each(demoNames)('in the papers of %s', (name) => {
  test('a pressure has one conversion', async () => {
    const world = worldOf(await demo(name), shop);
    const texts = shop.papers.flatMap((paper) => textsIn(paper.context(world)));
    const found = conversions(texts, /([\d.,]+ (?:psi|bar)) \(([\d.,]+ (?:psi|bar))\)/g);
    expect(found.size).toBeGreaterThan(3);
    expect(several(found)).toEqual([]);
  });

  test('a reserve has one conversion, in tables and in the workings', async () => {
    const world = worldOf(await demo(name), shop);
    const workings = workingsContext(world)
      .flatMap(({ shared, figures }) => [...shared, ...figures.flatMap(({ inputs }) => inputs)])
      .filter(({ from }) => from.endsWith('.reserve'))
      .map(({ value }) => value.replaceAll('\u00a0', ' '));
    expect(workings.length).toBeGreaterThan(1);
    const tables = shop.papers.flatMap((paper) => textsIn(paper.context(world), 'reserve'));
    const volume = '[\\d.]+ (?:US gal|imp gal|L)';
    const found = conversions([...workings, ...tables], new RegExp(`(${volume}) \\((${volume})\\)`, 'g'));
    expect(found.size).toBeGreaterThan(0);
    expect(several(found)).toEqual([]);
  });
});
