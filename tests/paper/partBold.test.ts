/** On every paper with steps the bold covers the whole name of a part, or nothing. */
import { expect, test } from 'vitest';
import { proceduresContext } from '../../src/paper/context/procedures';
import { criticalKeys } from '../../src/paper/context/proof';
import { demo, demoNames } from '../whole/made';

test.each(demoNames)('%s: no bold ends or begins within the name of another part', async (name) => {
  const { car, proof } = await demo(name);
  const names = [...car.parts.values()].map((part) => part.name);
  const written = proceduresContext(proof.procedures, car, criticalKeys({ proof }), (phase) => phase);
  const steps = written.flatMap((procedure) => procedure.steps);
  let longer = 0;
  for (const { say } of steps) {
    const text = say.map((piece) => piece.text).join('');
    let at = 0;
    for (const piece of say) {
      const begin = at;
      at += piece.text.length;
      if (!piece.strong) continue;
      for (const other of names.filter((each) => each !== piece.text && each.includes(piece.text))) {
        longer += 1;
        // wherever the longer name would stand so that it holds this bold, it does not
        for (let from = at - other.length; from <= begin; from += 1)
          expect(
            from >= 0 && text.startsWith(other, from) && !/\p{L}/u.test(text[from + other.length] ?? ' '),
            text,
          ).toBe(false);
      }
    }
  }
  expect(longer).toBeGreaterThan(20);
});

test('filling up of the thimble has the burner bold and its valve plain', async () => {
  const { car, proof } = await demo('thimble');
  const written = proceduresContext(proof.procedures, car, criticalKeys({ proof }), (phase) => phase);
  const both = written
    .flatMap(({ steps }) => steps)
    .map(({ say }) => say)
    .filter((say) =>
      /main burner is out and the main burner valve/.test(say.map(({ text }) => text).join('')),
    );
  expect(both.length).toBeGreaterThan(0);
  for (const say of both)
    expect(say.filter(({ strong }) => strong).map(({ text }) => text)).toEqual(['main burner']);
});
