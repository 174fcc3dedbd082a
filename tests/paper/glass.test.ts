/** The glass on the card for the road: its levels are those of the spec, and a car without a glass has no drawing. */
import { describe, expect, test } from 'vitest';
import { setOnePaper, worldOf } from '../../src/kettlebook';
import { glassInputs } from '../../src/paper/context/drawingGlass';
import { carFrom, demo, goodOf, specText, workshop } from '../whole/made';

const shop = await workshop();
const [running] = shop.papers.filter(({ name }) => name === 'card-running');
if (running === undefined) throw new Error('no card for the road');

const figuresOn = (ready: Awaited<ReturnType<typeof demo>>) =>
  goodOf(setOnePaper(ready, running, shop)).blocks.flatMap((block) =>
    block.kind === 'figure' ? [block] : [],
  );

describe('the glass', () => {
  test.each([
    // by the rule of the spec: bottom 3 3/4, top 10, lowest 5 5/16, working 6 7/8, highest 9 in
    ['marigold', { highest: 5.25 / 6.25, working: 3.125 / 6.25, lowest: 1.5625 / 6.25 }],
    // bottom 4, top 10, lowest 6, working 7, highest 9 1/4 in
    ['thimble', { highest: 5.25 / 6, working: 3 / 6, lowest: 2 / 6 }],
  ])('of %s is drawn with the levels as they are seen in it', async (name, shares) => {
    const ready = await demo(name);
    const [input] = glassInputs(worldOf(ready, shop), 18, 290);
    const seen = Object.fromEntries((input?.marks ?? []).map(({ kind, share }) => [kind, share]));
    expect(Object.keys(seen).sort()).toEqual(Object.keys(shares).sort());
    for (const [kind, share] of Object.entries(shares)) expect(seen[kind], kind).toBeCloseTo(share, 6);
    const [figure, ...more] = figuresOn(ready);
    expect(more).toEqual([]);
    expect(figure?.drawing.alt).toContain(input?.glass);
    const under = goodOf(setOnePaper(ready, running, shop)).blocks.map((block) =>
      block.kind === 'group' ? JSON.stringify(block.blocks) : block.kind,
    );
    const above = under[under.indexOf('figure') - 1] ?? '';
    expect(above).toContain('"kind":"heading"');
    expect(above.toLowerCase()).toContain(input?.glass.toLowerCase());
    const least = running.leastPt(worldOf(ready, shop)).narrow;
    for (const shape of figure?.drawing.shapes ?? [])
      if (shape.kind === 'text') expect(shape.sizePt).toBeGreaterThanOrEqual(least);
  });

  test.each([
    // filled cold to 5 1/2 in, at the most 6 1/4 in
    ['marigold', { highest: 2.5 / 6.25, working: 1.75 / 6.25, lowest: 1.5625 / 6.25 }],
  ])('of %s, cold, is drawn with the most that may stand in it', async (name, shares) => {
    const [input] = glassInputs(worldOf(await demo(name), shop), 11, 260, 'cold');
    const seen = Object.fromEntries((input?.marks ?? []).map(({ kind, share }) => [kind, share]));
    expect(Object.keys(seen).sort()).toEqual(Object.keys(shares).sort());
    for (const [kind, share] of Object.entries(shares)) expect(seen[kind], kind).toBeCloseTo(share, 6);
  });

  test('cold, is in the docent guide, and without its limit it is not', async () => {
    const guide = shop.papers.find(({ name }) => name === 'docent-guide');
    if (guide === undefined) throw new Error('no docent guide');
    const drawn = async (ready: Awaited<ReturnType<typeof demo>>) =>
      goodOf(setOnePaper(ready, guide, shop)).blocks.flatMap((block) =>
        block.kind === 'figure' && block.drawing.name === 'glass' ? [block.drawing.alt] : [],
      );
    expect(await drawn(await demo('marigold'))).toEqual([
      expect.stringContaining('highest level, cold, before a fire, two fifths of the glass'),
    ]);
    expect(await drawn(await demo('heron'))).toEqual([]);
    const text = specText('marigold').replaceAll(/^ +highest-level-cold:.*\n/gm, '');
    expect(text).not.toContain('highest-level-cold');
    expect(await drawn(goodOf(await carFrom(text)))).toEqual([]);
  });

  test('the most that may stand cold is told to the visiting driver, where it is known', async () => {
    const page = shop.papers.find(({ name }) => name === 'visiting-driver');
    if (page === undefined) throw new Error('no page for a visiting driver');
    const words = async (name: string) =>
      JSON.stringify(
        goodOf(setOnePaper(await demo(name), page, shop)).laidOut.pages.map(({ items }) => items),
      );
    expect(await words('marigold')).toContain('two fifths');
    expect(await words('thimble')).toContain('The level cold, before a fire');
    expect(await words('heron')).not.toContain('The level cold, before a fire');
  });

  test('is not drawn for a coil, nor where nobody has measured the heights', async () => {
    expect(figuresOn(await demo('heron'))).toEqual([]);
    const text = specText('marigold').replace(/^ {2}heights:.*\n(?: {4}.*\n)+/m, '');
    expect(text).not.toContain('heights:');
    expect(figuresOn(goodOf(await carFrom(text)))).toEqual([]);
  });
});
