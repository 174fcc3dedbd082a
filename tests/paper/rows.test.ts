/** Acts that troubles share, in a row: nothing of them is lost, and nothing changes places. */
import { describe, expect, test } from 'vitest';
import { setOnePaper } from '../../src/kettlebook';
import { nothingSaid } from '../../src/paper/context/placesSaid';
import { cardProcedure, cardSteps } from '../../src/paper/context/procedures';
import { inRows, inRowsOfBook } from '../../src/paper/context/rows';
import type { Piece } from '../../src/paper/pieces';
import { step } from '../proof/edits';
import { demo, demoNames, goodOf, workshop } from '../whole/made';

const words = (pieces: readonly Piece[]) => pieces.map(({ text }) => text).join('');
const none: ReadonlySet<string> = new Set();

describe('neighbours that are said in a row', () => {
  const [one, two, three] = [
    step({ id: 'one', row: 'valve shut' }),
    step({ id: 'two', row: 'brake set' }),
    step({ id: 'three', row: 'lock on' }),
  ];

  test('go together, and a step between them parts them', () => {
    const ids = (steps: Parameters<typeof inRows>[0]) => inRows(steps).map((row) => row.map(({ id }) => id));
    expect(ids([one, two, three])).toEqual([['one', 'two', 'three']]);
    expect(ids([one, step({ id: 'look' }), two, three])).toEqual([['one'], ['look'], ['two', 'three']]);
  });

  test.each([
    [4, [4]],
    [5, [3, 2]],
    [8, [4, 4]],
    [9, [3, 3, 3]],
    [10, [4, 3, 3]],
  ])('%i in a row are parted into %j', (count, lengths) => {
    const steps = Array.from({ length: count }, (_, index) => step({ id: `${index}`, row: `act ${index}` }));
    const rows = inRows(steps);
    expect(rows.map(({ length }) => length)).toEqual(lengths);
    expect(rows.flat()).toEqual(steps);
  });

  test('do not go together where another person does it, or where it may be left undone', () => {
    expect(inRows([one, { ...two, who: 'helper' }]).map(({ length }) => length)).toEqual([1, 1]);
    expect(
      inRows([one, { ...two, ifSafe: true }, { ...three, ifSafe: true }]).map(({ length }) => length),
    ).toEqual([1, 2]);
  });

  test('a book has only switches in a row, and what danger may bar the way to', () => {
    const off = (id: string) => step({ id, row: `${id} off`, action: 'release' });
    const lengths = (steps: Parameters<typeof inRows>[0]) => inRowsOfBook(steps).map(({ length }) => length);
    expect(lengths([one, two, three])).toEqual([1, 1, 1]);
    expect(lengths([one, off('pump'), off('blower'), two])).toEqual([1, 2, 1]);
    expect(lengths([off('pump'), { ...one, ifSafe: true }, { ...two, ifSafe: true }])).toEqual([1, 2]);
  });
});

describe.each(demoNames)('the troubles of %s in rows', (name) => {
  test('say every step of the card, in full or in its row, in the order of the procedure', async () => {
    const { car, proof } = await demo(name);
    const { procedures } = proof;
    const troubles = procedures.filter(({ phase }) => phase === 'emergency');
    let rows = 0;
    for (const procedure of troubles) {
      const groups = inRows(cardSteps(procedure, none));
      const written = cardProcedure(procedure, car, none, nothingSaid(), inRows).steps;
      expect(groups.flat()).toEqual(cardSteps(procedure, none));
      expect(written.length).toBe(groups.length);
      for (const [index, group] of groups.entries()) {
        const said = group.length === 1 ? group[0]?.say : `${group.map(({ row }) => row).join(', ')}.`;
        expect(words(written[index]?.say ?? [])).toBe(said);
        expect(written[index]?.row).toBe(
          group.length === 1 ? '' : group.some(({ ifSafe }) => ifSafe) ? 'if-safe' : 'in-order',
        );
        if (group.length > 1) rows += 1;
      }
    }
    expect(rows).toBeGreaterThan(8);
  });

  test('a row is critical if one of its acts is, and has the cautions of all', async () => {
    const { car, proof } = await demo(name);
    const { procedures } = proof;
    const procedure = procedures.find(({ id }) => id === 'fire-outside');
    if (procedure === undefined) throw new Error('no fire');
    const groups = inRows(cardSteps(procedure, none));
    const at = groups.findIndex(({ length }) => length > 1);
    const act = groups[at]?.at(-1);
    if (act === undefined) throw new Error('no row');
    const critical = new Set([`${procedure.id} ${act.id}`]);
    const caution = procedure.cautions[0];
    if (caution === undefined) throw new Error('no caution');
    const warned = {
      ...procedure,
      steps: procedure.steps.map((each) => (each.id === act.id ? { ...each, cautions: [caution] } : each)),
    };
    const written = cardProcedure(warned, car, critical, nothingSaid(), inRows).steps;
    expect(written.map((each) => each.critical)).toEqual(groups.map((_, index) => index === at));
    expect(written[at]?.cautions.map(({ id }) => id)).toEqual([caution.id]);
  });
});

test('switches in a row of the manual say that they have an order', async () => {
  const shop = await workshop();
  const manual = shop.papers.find(({ name }) => name === 'owners-manual');
  if (manual === undefined) throw new Error('there is no manual');
  const { blocks } = goodOf(setOnePaper(await demo('heron'), manual, shop));
  const acts = blocks.flatMap((block) =>
    block.kind === 'steps'
      ? block.items.map(({ action }) =>
          action.map((each) => (each.kind === 'text' ? each.text : '')).join(''),
        )
      : [],
  );
  const rows = acts.filter((act) => / off, .* off\.$/.test(act));
  expect(rows.length).toBeGreaterThan(3);
  for (const row of rows) expect(row).toMatch(/^In this order: /);
});
