/** The index of parts leads to the pages on which they are worked or read, not to where their procedure begins. */
import { expect, test } from 'vitest';
import { setOnePaper, worldOf } from '../../src/kettlebook';
import { partIndex } from '../../src/paper/context/partIndex';
import { demo, demoNames, goodOf, workshop } from '../whole/made';

const shop = await workshop();

test.each(demoNames)('%s: every page that the index gives names the part', async (name) => {
  const manual = shop.papers.find((paper) => paper.name === 'owners-manual');
  if (manual === undefined) throw new Error('no manual');
  const ready = await demo(name);
  const { pages, destinations } = goodOf(setOnePaper(ready, manual, shop)).laidOut;
  const pageOf = new Map(destinations.map((each) => [each.name, each.page]));
  const even = (text: string) => text.toLowerCase().replace(/\s+/g, '');
  // a step may turn the page between its number and its name
  const texts = pages.map(({ items }) =>
    even(items.flatMap((item) => (item.kind === 'text' ? [item.text] : [])).join('')),
  );
  // a step may mean its part without naming it: the battery, for a twelve-volt battery
  const saidIn = (anchor: string) => {
    const [, id, key] = /^(?:procedure|step)-([^.]+)(?:\.(.+))?$/.exec(anchor) ?? [];
    const steps = ready.proof.procedures.find((procedure) => procedure.id === id)?.steps ?? [];
    return steps
      .flatMap((step) => (key === undefined || step.id.replaceAll('/', ':') === key ? [step.say] : []))
      .join(' ');
  };
  const entries = partIndex(worldOf(ready, shop));
  let led = 0;
  let past = 0;
  for (const { name: part, tag, steps } of entries)
    for (const step of steps) {
      const page = pageOf.get(step);
      if (page === undefined) throw new Error(`${step} leads nowhere`);
      const words = saidIn(step);
      if (!words.includes(part) && !words.includes(`(${tag})`)) continue;
      const here = `${texts[page]}${step.startsWith('procedure-') ? texts[page + 1] : ''}`;
      expect(here.includes(even(part)) || (tag !== '' && here.includes(even(tag))), `${part}: ${step}`).toBe(
        true,
      );
      led += 1;
      const procedure = /^step-([^.]+)\./.exec(step)?.[1];
      if (procedure !== undefined && page > (pageOf.get(`procedure-${procedure}`) ?? page)) past += 1;
    }
  expect(led).toBeGreaterThan(60);
  // procedures are long: a good many parts are met after the page on which their procedure begins
  expect(past).toBeGreaterThan(led / 8);
});
