import { describe, expect, test } from 'vitest';
import { worldOf } from '../../src/kettlebook';
import { workingOf, workingsContext } from '../../src/paper/context/workings';
import { demo, demoNames, workshop } from '../whole/made';

describe.each(demoNames)('the workings of %s', (name) => {
  test('show a figure made into another as it stands by itself', async () => {
    const world = worldOf(await demo(name), await workshop());
    const { figures, phrases } = world;
    const values = new Map(
      figures.all.flatMap((figure) =>
        figure.value.kind === 'quantity'
          ? [[figure.id, [figure.value.quantity.si, workingOf(figure, phrases).value]] as const]
          : [],
      ),
    );
    const inBook = new Map(figures.all.map((figure) => [figure.id, figure]));
    let seen = 0;
    for (const figure of figures.all) {
      const { inputs } = workingOf(figure, phrases, inBook);
      for (const [index, { value, from }] of figure.inputs.entries()) {
        const known = values.get(from);
        if (typeof value !== 'object' || known?.[0] !== value.si) continue;
        expect(inputs[index]?.value, `${figure.id}: ${from}`).toBe(known[1]);
        seen += 1;
      }
    }
    expect(seen).toBeGreaterThan(5);
  });

  test('name no place for what is a figure of the same list', async () => {
    const groups = workingsContext(worldOf(await demo(name), await workshop()));
    const { figures } = await demo(name);
    const ids = new Set(figures.all.map(({ id }) => id));
    const lists = groups.flatMap(({ shared, figures: made }) => [
      shared,
      ...made.map(({ inputs }) => inputs),
    ]);
    expect(lists.flat().length).toBeGreaterThan(50);
    // a figure of the list names no place, and has no brackets after it that seem to be its own
    for (const inputs of lists) expect(inputs.filter(({ from }) => ids.has(from))).toEqual([]);
  });
});
