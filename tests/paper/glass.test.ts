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
    const least = running.leastPt(worldOf(ready, shop)).narrow;
    for (const shape of figure?.drawing.shapes ?? [])
      if (shape.kind === 'text') expect(shape.sizePt).toBeGreaterThanOrEqual(least);
  });

  test('is not drawn for a coil, nor where nobody has measured the heights', async () => {
    expect(figuresOn(await demo('heron'))).toEqual([]);
    const text = specText('marigold').replace(/^ {2}heights:.*\n(?: {4}.*\n)+/m, '');
    expect(text).not.toContain('heights:');
    expect(figuresOn(goodOf(await carFrom(text)))).toEqual([]);
  });
});
