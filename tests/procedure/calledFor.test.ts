/** What procedures call for and a car does not list, on demo cars with things taken out of their lists. */
import { describe, expect, test } from 'vitest';
import { calledForRemarks } from '../../src/procedure/calledFor';
import { carFrom, demo, demoNames, goodOf, specText, workshop } from '../whole/made';

const shop = await workshop();
const things = shop.guideFiles.upkeep.form['called-for'];

const told = (
  { car, proof: { procedures } }: Pick<Awaited<ReturnType<typeof demo>>, 'car' | 'proof'>,
  list = things,
): readonly (string | undefined)[][] =>
  calledForRemarks(car, shop.library.procedures, procedures, list).map(
    ({ severity, message, found, notes }) => [severity, message, found, notes?.[0]],
  );

/** A demo car without the entries of one kind in its list of equipment. */
async function without(name: string, kind: string) {
  const text = specText(name);
  const entry = new RegExp(`\\n  [a-z-]+:\\n    name: [^\\n]*\\n    kind: ${kind}\\n(?:    [^\\n]*\\n)*`);
  let left = text;
  while (entry.test(left)) left = left.replace(entry, '\n');
  expect(left).not.toBe(text);
  return goodOf(await carFrom(left));
}

test.each(demoNames)('%s lists everything that its procedures call for', async (name) => {
  expect(told(await demo(name))).toEqual([]);
});

describe('a thing taken out of the list', () => {
  test.each([
    // every step with chocks falls away when there are none
    ['marigold', 'chocks', 'wheel chocks', 'Walk-round', 'place-chocks'],
    ['heron', 'chocks', 'wheel chocks', 'Walk-round', 'place-chocks'],
    // steps that speak of it stay
    ['marigold', 'gloves', 'gloves that keep heat off', 'Walk-round', 'dress'],
    ['thimble', 'can', 'a metal can for fuel', 'Fuel in the tanks', 'bond-can'],
    ['thimble', 'funnel', 'a metal funnel with gauze', 'Fuel in the tanks', 'fill-fuel'],
    ['marigold', 'hose', 'a hose for filling the boiler', 'Fill the boiler cold', 'put-on-hose'],
  ])('%s without %s: %s', async (name, kind, thing, procedure, step) => {
    const [[severity, message, , note] = [], ...more] = told(await without(name, kind));
    expect(more).toEqual([]);
    expect([severity, message]).toEqual([
      'remark',
      `the procedures call for ${thing}, and \`equipment\` lists none`,
    ]);
    expect(note).toBe(`The first to call for it is “${procedure}”, step \`${step}\`.`);
  });

  test('is not missed where nothing calls for it', async () => {
    // heron is lit by a spark and has no tap for a tube
    const { car } = await demo('heron');
    const kinds = Object.values(car.spec.equipment).map(({ kind }) => kind);
    expect(kinds).not.toContain('torch');
    expect(kinds).not.toContain('tube');
    expect(told(await demo('heron'))).toEqual([]);
  });
});

test('a step that the keeper left out calls for nothing', async () => {
  const text = specText('heron').replace(/\n {2}funnel:\n(?: {4}[^\n]*\n)*/, '\n');
  const bare = goodOf(await carFrom(text));
  expect(told(bare).map(([, message]) => message)).toEqual([
    'the procedures call for a metal funnel with gauze, and `equipment` lists none',
  ]);
  const procedures = bare.proof.procedures.map((procedure) => ({
    ...procedure,
    steps: procedure.steps.filter(({ id }) => !id.startsWith('fill-fuel')),
  }));
  expect(told({ ...bare, proof: { ...bare.proof, procedures } })).toEqual([]);
});

test('the remark comes with a check of the car', async () => {
  const text = specText('marigold').replace(/\n {2}chocks:\n(?: {4}[^\n]*\n)*/, '\n');
  const outcome = await carFrom(text);
  const found = (outcome.ok ? outcome.remarks : outcome.problems).filter(
    ({ code }) => code === 'procedure-not-carried',
  );
  expect(found.map(({ at }) => at?.path)).toEqual(['equipment']);
});

test('a car without a parking brake is told so', async () => {
  const ready = await demo('marigold');
  const controls = Object.fromEntries(
    Object.entries(ready.car.spec.controls).filter(([, { kind }]) => kind !== 'parking-brake'),
  );
  const car = { ...ready.car, spec: { ...ready.car.spec, controls } };
  // its steps fall away, as there is nothing to do them on
  const procedures = ready.proof.procedures.map((procedure) => ({
    ...procedure,
    steps: procedure.steps.filter(({ part }) => part !== 'hand-brake'),
  }));
  expect(told({ car, proof: { ...ready.proof, procedures } }).map(([, message]) => message)).toEqual([
    'the procedures call for a parking brake, and `controls` lists none',
  ]);
});
