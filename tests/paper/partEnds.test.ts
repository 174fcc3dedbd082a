/** Where a trouble ends on its card, the foot says so: nobody turns from one into another with wet gloves. */
import { expect, test } from 'vitest';
import { setOnePaper } from '../../src/kettlebook';
import { demo, demoNames, goodOf, workshop } from '../whole/made';

/** Whatever stands higher than this is the head of its face. */
const headPt = 60;

/** What the foot of each face says after its number, and whether a trouble begins on it. */
async function facesOf(car: string, card: string) {
  const [ready, shop] = [await demo(car), await workshop()];
  const troubles = new Set(
    ready.proof.procedures.filter(({ phase }) => phase === 'emergency').map(({ id }) => id),
  );
  const paper = ready.papers.find(({ name }) => name === card);
  if (paper === undefined) throw new Error(`there is no ${card}`);
  const { pages, destinations } = goodOf(setOnePaper(ready, paper, shop)).laidOut;
  return pages.map(({ items }, face) => ({
    says: items.flatMap((item) =>
      item.kind === 'text' ? (/^face\s.*·\s(.*)$/.exec(item.text.replaceAll('\u00a0', ' '))?.[1] ?? []) : [],
    ),
    begins: destinations.some(({ name, page, y }) => page === face && y < headPt && troubles.has(name)),
    headed: destinations.some(({ page, y }) => page === face && y < headPt),
  }));
}

test.each(demoNames)('%s: the last face of each trouble ends it, and no other', async (car) => {
  const faces = await facesOf(car, 'card-something-is-wrong');
  const first = faces.findIndex(({ begins }) => begins);
  expect(first).toBeGreaterThan(0);
  faces.forEach(({ says }, face) => {
    const next = faces[face + 1];
    const ends = face >= first && next?.headed === true;
    // that it goes on is said by the pointer alone where words have no room
    if (next !== undefined && !ends) expect(['', 'continues'], `face ${face + 1}`).toContain(says.join(''));
    else expect(says, `face ${face + 1}`).toEqual([next === undefined ? 'end' : 'ends']);
  });
  expect(faces.filter(({ says }) => says[0] === 'ends').length).toBeGreaterThan(10);
});

test('a card whose procedures follow each other goes on to its end', async () => {
  const faces = await facesOf('marigold', 'card-cold-start');
  expect(faces.flatMap(({ says }) => says)).not.toContain('ends');
});
