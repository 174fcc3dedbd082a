/** Boxes over one step: the gravest is read first. */
import { expect, test } from 'vitest';
import { signalWords } from '../../src/language/signal';
import { nothingSaid } from '../../src/paper/context/placesSaid';
import { cardProcedure } from '../../src/paper/context/procedures';
import { eachAlone } from '../../src/paper/context/rows';
import { demo, demoNames } from '../whole/made';

test('no step of a card has a box over a graver one', async () => {
  const mixed: string[] = [];
  for (const name of demoNames) {
    const { car, proof } = await demo(name);
    for (const procedure of proof.procedures) {
      const { steps } = cardProcedure(procedure, car, new Set(), nothingSaid(), eachAlone);
      for (const { id, cautions } of steps) {
        const ranks = cautions.map(({ signal }) => signalWords.indexOf(signal));
        expect(
          [...ranks].sort((one, other) => one - other),
          `${name} ${procedure.id} ${id}`,
        ).toEqual(ranks);
        if (new Set(ranks).size > 1) mixed.push(id);
      }
    }
  }
  expect(mixed.length).toBeGreaterThan(1);
});
