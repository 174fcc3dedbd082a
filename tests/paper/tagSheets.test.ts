/** Every tag stands on one sheet of its form, none is smaller than its words need, and none stands alone beside full sheets. */
import { expect, test } from 'vitest';
import { worldOf } from '../../src/kettlebook';
import { tagSheets } from '../../src/paper/context/tags';
import { demo, demoNames, workshop } from '../whole/made';

const shop = await workshop();
const mark = '7777\u00b77777';

test.each(demoNames)('%s: tags are spread over their sheets', async (name) => {
  const world = worldOf(await demo(name), shop);
  const valves = Object.values(world.car.spec.valves).map(({ tag }) => tag);
  for (const form of ['round', 'oblong'] as const) {
    const sheets = tagSheets(world, form, mark);
    expect(sheets.length).toBeGreaterThan(1);
    expect(sheets.flatMap(({ tags }) => tags.map(({ tag }) => tag)).sort()).toEqual([...valves].sort());
    for (const { tags, size } of sheets) {
      expect(tags.length, `${form} ${size.widthMm}`).toBeGreaterThan(1);
      // in the order of the spec, as the table has them
      const at = tags.map(({ tag }) => valves.indexOf(tag));
      expect(at).toEqual([...at].sort((a, b) => a - b));
    }
  }
});
