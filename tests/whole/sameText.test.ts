/** What several papers say of one thing they say in the same words. */
import { describe, expect, test } from 'vitest';
import { worldOf } from '../../src/kettlebook';
import { workingsContext } from '../../src/paper/context/workings';
import { quantity } from '../../src/quantity/quantity';
import { demo, demoNames, workshop } from './made';

/** All texts in what a paper is made from; with `keys`, only those that stand under one of them. */
function textsIn(value: unknown, keys?: ReadonlySet<string>, own?: string): string[] {
  if (typeof value === 'string')
    return keys === undefined || keys.has(own ?? '') ? [value.replaceAll('\u00a0', ' ')] : [];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, each]) => textsIn(each, keys, key));
}

/** What contexts call the amounts a tank holds at the most. */
const held = new Set(['capacity', 'fillTo', 'full']);

const shop = await workshop();

describe.each(demoNames)('%s', (name) => {
  test('a mark of a stick has one conversion in all tables', async () => {
    const world = worldOf(await demo(name), shop);
    const conversions = new Map<string, Set<string>>();
    for (const paper of shop.papers) {
      for (const text of textsIn(paper.context(world))) {
        const [, mark, other] = /^([\d /]+ (?:in|mm)) \(([\d /]+ (?:in|mm))\)$/.exec(text) ?? [];
        if (mark === undefined || other === undefined) continue;
        conversions.set(mark, (conversions.get(mark) ?? new Set()).add(other));
      }
    }
    expect(conversions.size).toBeGreaterThan(5);
    expect(
      [...conversions].filter(([, others]) => others.size > 1).map(([mark, others]) => [mark, ...others]),
    ).toEqual([]);
  });

  test('the workings say a source once for all that comes from it, and a doubt once for all that share it', async () => {
    const world = worldOf(await demo(name), shop);
    const groups = workingsContext(world);
    const ids = new Set(world.figures.all.map(({ id }) => id));
    const made = world.figures.all.flatMap(({ inputs }) => inputs.filter(({ from }) => ids.has(from)));
    const inBook = new Set(made.map((input) => world.phrases.told(input.name)));
    const lists = groups.flatMap(({ shared, figures }) => [shared, ...figures.map(({ inputs }) => inputs)]);
    for (const inputs of lists) {
      const sources = inputs.flatMap(({ from }) => (from === '' ? [] : [from]));
      expect(new Set(sources).size).toBe(sources.length);
      // figures of the list stand last, and name no source
      const named = inputs.findLastIndex(({ from }) => from !== '');
      const figures = inputs.slice(named + 1).map(({ name: said }) => said);
      expect(
        figures.every((said) => inBook.has(said)),
        figures.join(),
      ).toBe(true);
    }
    const said = groups.flatMap(({ figures, alikeDoubt }) => [
      ...(alikeDoubt === '' ? [] : [alikeDoubt]),
      ...figures.flatMap(({ basis, doubt }) => (doubt === '' ? [] : [`${basis}: ${doubt}`])),
    ]);
    expect(lists.some((inputs) => inputs.some(({ from }) => from === ''))).toBe(true);
    expect(groups.some(({ alikeDoubt }) => alikeDoubt !== '')).toBe(true);
    // each figure is sure to some degree, said with it or for its group
    const figures = groups.reduce((sum, group) => sum + group.figures.length, 0);
    expect(said.length).toBeLessThan(figures);
    for (const { figures: own, alikeDoubt } of groups)
      expect(own.every(({ doubt }) => (doubt === '') === (alikeDoubt !== ''))).toBe(true);
  });

  test('what a tank holds, and is filled to, reads the same wherever it stands', async () => {
    const world = worldOf(await demo(name), shop);
    const texts = shop.papers.flatMap((paper) => textsIn(paper.context(world), held));
    for (const tank of Object.values(world.car.spec.tanks)) {
      const amounts = [tank.capacity, tank['fill-to'] ?? tank.capacity];
      for (const { si, estimated } of amounts) {
        if (estimated) continue;
        const said = world.phrases
          .both(quantity('volume', si), { rounding: 'down' })
          .replaceAll('\u00a0', ' ');
        const first = said.replace(/ \(.*/, '');
        const found = texts
          .map((text) => text.split(', ')[0] ?? '')
          .filter((text) => text.startsWith(`${first} (`));
        expect(found.length, tank.name).toBeGreaterThan(0);
        expect([...new Set(found)], tank.name).toEqual([said]);
      }
    }
  });
});
