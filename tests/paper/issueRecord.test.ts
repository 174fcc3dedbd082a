/** The record of issues in the manual leads to the parts that an issue concerns. */
import { expect, test } from 'vitest';
import { setOnePaper, worldOf } from '../../src/kettlebook';
import { issueRecord } from '../../src/paper/context/issueRecord';
import { partIndex } from '../../src/paper/context/partIndex';
import { demo, demoNames, goodOf, workshop } from '../whole/made';

const shop = await workshop();

test.each(demoNames)(
  '%s: every part that an issue concerns is in it, with a link that the book has',
  async (name) => {
    const ready = await demo(name);
    const world = worldOf(ready, shop);
    const { issue } = ready.car.spec;
    const record = issueRecord(world, partIndex(world));
    expect(record.map(({ letter }) => letter)).toEqual(
      [issue, ...(issue.earlier ?? [])].map(({ letter }) => letter),
    );
    const concerns = record.map((each) => each.concerns.map(({ id }) => id));
    expect(concerns).toEqual([issue, ...(issue.earlier ?? [])].map((each) => each.concerns ?? []));
    expect(concerns.flat().length).toBeGreaterThan(0);
    const manual = shop.papers.find((paper) => paper.name === 'owners-manual');
    if (manual === undefined) throw new Error('there is no manual');
    const blocks = JSON.stringify(goodOf(setOnePaper(ready, manual, shop)).blocks);
    for (const { link } of record.flatMap((each) => each.concerns))
      expect(blocks).toContain(`"id":"${link}"`);
  },
);
