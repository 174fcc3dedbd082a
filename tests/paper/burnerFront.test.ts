/** The helper’s card: its numbers are the driver’s, it says what the helper sees, and which valve shuts at a call. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { worldOf } from '../../src/kettlebook';
import { burnerFrontContext } from '../../src/paper/context/burnerFront';
import { cardSteps } from '../../src/paper/context/procedures';
import { criticalKeys } from '../../src/paper/context/proof';
import type { World } from '../../src/paper/paper';
import { carFrom, demoNames, goodOf, root, specText, workshop } from '../whole/made';

const shop = await workshop();
const fixtures = readdirSync(join(root, 'tests', 'fixtures', 'cars')).map((file) =>
  file.replace('.yaml', ''),
);
const textOf = (name: string) =>
  demoNames.includes(name)
    ? specText(name)
    : readFileSync(join(root, 'tests', 'fixtures', 'cars', `${name}.yaml`), 'utf8');
const worldIn = async (text: string): Promise<World> => worldOf(goodOf(await carFrom(text)), shop);
const said = (pieces: readonly { readonly text: string }[]) => pieces.map(({ text }) => text).join('');

const procedureOf = (world: World, title: string) => {
  const procedure = world.proof.procedures.find((each) => each.title === title && each.phase !== 'emergency');
  if (procedure === undefined) throw new Error(`no procedure ${title}`);
  return procedure;
};
const driversSteps = (world: World, title: string) =>
  cardSteps(procedureOf(world, title), criticalKeys(world));

describe.each(demoNames)('%s', (name) => {
  test('every number is that of the driver’s card, which the head names', async () => {
    const world = await worldIn(textOf(name));
    const { driversCard, procedures } = burnerFrontContext(world);
    expect(world.plans.cards.map(({ title }) => title)).toContain(driversCard);
    let lines = 0;
    for (const { title, runs } of procedures) {
      const steps = driversSteps(world, title);
      for (const { start, steps: run } of runs)
        for (const [index, { say }] of run.entries()) {
          expect(said(say)).toBe(steps[start + index - 1]?.say);
          lines += 1;
        }
    }
    expect(lines).toBeGreaterThan(10);
  });

  test('the helper is warned at every step that is the helper’s, and sees which of them nothing shows later', async () => {
    const world = await worldIn(textOf(name));
    const { marked, procedures } = burnerFrontContext(world);
    const critical = criticalKeys(world);
    const warned = new Set<string>();
    let bars = 0;
    for (const { title, runs } of procedures) {
      const steps = driversSteps(world, title);
      let before: readonly string[] = [];
      for (const { start, steps: run } of runs)
        for (const [index, { byDriver, cautions, critical: bar }] of run.entries()) {
          const step = steps[start + index - 1];
          if (step === undefined) throw new Error(`no step ${start + index} of ${title}`);
          const own = step.cautions.map(({ id }) => id);
          const shown = cautions.map(({ id }) => id);
          expect([...shown].sort()).toEqual(byDriver ? [] : own.filter((id) => !before.includes(id)).sort());
          for (const { id, repeated } of cautions) expect(repeated).toBe(warned.has(id));
          for (const id of shown) warned.add(id);
          before = byDriver ? [] : own;
          expect(bar).toBe(!byDriver && critical.has(`${procedureOf(world, title).id} ${step.id}`));
          bars += bar ? 1 : 0;
        }
    }
    expect(warned.size).toBeGreaterThan(0);
    expect(marked).toBe(bars > 0);
  });

  test('what comes of letting fuel to a burner is told, whoever does it', async () => {
    const world = await worldIn(textOf(name));
    const { procedures } = burnerFrontContext(world);
    const lighting = procedures.flatMap(({ title, runs }) => {
      const steps = driversSteps(world, title);
      return runs.flatMap(({ start, steps: run }) =>
        run.flatMap(({ result, byDriver }, index) => {
          const step = steps[start + index - 1];
          const lets = step?.sets.lighting !== undefined || step?.id.startsWith('open-main-valve') === true;
          return lets ? [{ result: said(result), byDriver, wanted: step?.result ?? '' }] : [];
        }),
      );
    });
    expect(lighting.some(({ byDriver }) => byDriver)).toBe(true);
    for (const { result, wanted } of lighting) {
      expect(wanted).not.toBe('');
      expect(result).toBe(wanted);
    }
  });

  test('at a call the driver shuts at once what “Shut everything” shuts first', async () => {
    const world = await worldIn(textOf(name));
    const first = world.proof.procedures.find(({ id }) => id === 'shut-everything')?.steps[0];
    const tag = world.car.parts.get(first?.part ?? '')?.tag;
    const { stand } = burnerFrontContext(world);
    const calls = stand.filter(({ say }) => say.startsWith('Call aloud'));
    expect(calls).toHaveLength(1);
    expect(tag).toMatch(/^F\d+$/);
    expect(calls[0]?.say).toContain(`any of these calls the driver shuts the `);
    expect(calls[0]?.say).toContain(`(${tag}) at once`);
  });

  test('how far people stand back, and from where, is told as on the card for a cold start', async () => {
    const { people } = burnerFrontContext(await worldIn(textOf(name)));
    expect(people?.sides).toMatch(/\d/);
    expect(people?.burner).toMatch(/\d/);
    expect(people?.burnerAt).not.toBe('');
    expect(people?.flueAt).not.toBe('');
  });
});

test('where two hands shut two valves of one result, each says whose does', async () => {
  const { procedures } = burnerFrontContext(await worldIn(specText('marigold')));
  const results = procedures.flatMap(({ runs }) =>
    runs.flatMap(({ steps }) => steps.map(({ result }) => said(result))),
  );
  const both = results.filter((each) => each.includes('(P2') && each.includes('(P3'));
  expect(both.length).toBeGreaterThan(0);
  for (const each of both) {
    expect(each).toContain('(P2, driver)');
    expect(each).toContain('(P3, you)');
  }
  // both of these are the driver's, on a line of the driver's
  expect(results.filter((each) => each.includes('(P4)')).length).toBeGreaterThan(0);
});

test.each(fixtures)(
  '%s: the line for the calls names the valve that “Shut everything” shuts first',
  async (name) => {
    const world = await worldIn(textOf(name));
    const first = world.proof.procedures.find(({ id }) => id === 'shut-everything')?.steps[0];
    const calls = burnerFrontContext(world).stand.filter(({ say }) => say.startsWith('Call aloud'));
    expect(calls).toHaveLength(1);
    expect(calls[0]?.say).toContain(`(${world.car.parts.get(first?.part ?? '')?.tag}) at once`);
  },
);
