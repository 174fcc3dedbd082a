import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readCar, worldOf } from '../../src/kettlebook';
import { troubleRows } from '../../src/paper/context/docent';
import { guideFor, readGuide } from '../../src/paper/guide/guide';
import { phrasesFor } from '../../src/paper/phrase';
import { demo, demoNames, goodOf, logs, root, shared, workshop } from '../whole/made';

const texts = (await shared()).texts;
const shop = await workshop();
const keys = {
  procedures: shop.library.procedures.map(({ form }) => form.id),
  cautions: [...shop.library.cautions.keys()],
  faults: shop.faults.map(({ id }) => id),
  signs: [...shop.signWords.keys()],
  timeline: shop.timeline.parts.map(({ id }) => id),
};
const withText = (name: string, change: (text: string) => string) => {
  const text = texts.get(name);
  if (text === undefined) throw new Error(`there is no ${name}`);
  const changed = change(text);
  expect(changed).not.toBe(text);
  return readGuide(new Map([...texts, [name, changed]]), keys);
};
const codes = (outcome: ReturnType<typeof readGuide>) =>
  outcome.ok ? [] : outcome.problems.map(({ code }) => code);

/** Every car that the tests know. */
const specs = ['cars', 'cars/de', 'tests/fixtures/cars'].flatMap((folder) =>
  readdirSync(join(root, folder))
    .filter((name) => name.endsWith('.yaml'))
    .map((name) => `${folder}/${name}`),
);

describe('the prose files are refused', () => {
  test('when one is not there', () => {
    expect(codes(readGuide(new Map([...texts].filter(([name]) => name !== 'use.yaml')), keys))).toEqual([
      'shared-absent',
    ]);
  });

  test('when a condition names a duty that does not exist', () => {
    const outcome = withText('docent.yaml', (text) => text.replace('duty: boiler }', 'duty: boilr }'));
    expect(codes(outcome)).toEqual(['library-unknown']);
  });

  test('when a text cannot be read', () => {
    expect(
      codes(withText('use.yaml', (text) => text.replace('{{boiler.working}}', '{{boiler.working'))),
    ).toEqual(['library-words']);
  });

  test.each([
    ['docent.yaml', 'emergency: low-water', 'emergency: lo-water'],
    ['docent.yaml', 'plans: prove', 'plans: proof'],
    ['crew.yaml', 'stop: shut-everything', 'stop: shut-all'],
    ['crew.yaml', '[going-on, moving-off]', '[going-on, moving]'],
    ['crew.yaml', '[boiler-dry,', '[boiler-drie,'],
  ])('when %s names what the library has not got: %s', (name, from, to) => {
    expect(codes(withText(name, (text) => text.replace(from, to)))).toEqual(['library-unknown']);
  });
});

test('a value that the car has not got is told at its place', async () => {
  const ready = await demo('heron');
  const files = goodOf(
    withText('use.yaml', (text) => text.replace('what the garage has', 'what {{the.pilot}} has')),
  );
  const said = guideFor(ready.car, ready.figures, files, {
    print: { system: 'metric' },
    phrases: phrasesFor(ready.car.spec, ready.language),
    language: ready.language,
  });
  expect(said.ok ? [] : said.problems.map(({ code, message }) => [code, message])).toEqual([
    ['library-words', 'this cannot be worded for the car: this car has no `the.pilot`'],
  ]);
});

describe.each(demoNames)('%s', (name) => {
  test('has two sentences of at most twenty words, in plain words, for each part the docent shows', async () => {
    const { guide } = await demo(name);
    for (const { of, says } of guide.docent.parts) {
      expect(of.length).toBeGreaterThan(0);
      expect(says.length).toBe(2);
      for (const said of says) expect(said.split(/\s+/).length, said).toBeLessThanOrEqual(20);
    }
  });

  test('has five things that will hurt a visiting driver, and each question once', async () => {
    const { guide } = await demo(name);
    const asked = guide.docent.questions.map(({ ask }) => ask);
    expect(new Set(asked).size).toBe(asked.length);
    expect(asked.length).toBeGreaterThan(12);
  });
});

test('the docent is told what to do in every emergency that any car can have', async () => {
  const told = (await demo('marigold')).guide.docent.trouble.map(({ emergency }) => emergency);
  const known = shop.library.procedures.flatMap(({ form }) => (form.phase === 'emergency' ? [form.id] : []));
  expect(known.length).toBeGreaterThan(12);
  expect(known.filter((id) => !told.includes(id))).toEqual([]);
  expect(new Set(told).size).toBe(told.length);
});

test.each(specs)('every emergency of %s has a row in the guide, each once', (file) => {
  const text = readFileSync(join(root, file), 'utf8');
  const world = worldOf(goodOf(readCar({ file, text, beside: logs() }, shop)), shop);
  const rows = troubleRows(world);
  const own = world.proof.procedures.filter(({ phase }) => phase === 'emergency').map(({ id }) => id);
  expect(own.length).toBeGreaterThan(8);
  expect(rows.map(({ id }) => id).sort()).toEqual([...own].sort());
  for (const { first, crowd } of rows) expect([first, crowd]).not.toContain('');
});

test('the proof of the safety valve says who, at what pressure, and what the keeper leaves alone', async () => {
  for (const name of ['marigold', 'thimble', 'heron'] as const) {
    const { guide, car } = await demo(name);
    const task = guide.upkeep.tasks.find(({ seen }) => seen?.includes('lifts'));
    expect(task).toMatchObject({ who: 'inspector' });
    expect(task?.what).toContain('the inspector asks');
    const coil = car.spec.boiler.kind === 'monotube';
    expect(task?.seen).toContain(coil ? 'up to 10 in a hundred lower' : '2 to 4 in a hundred lower');
    expect(task?.seen).toMatch(/lifts at [\d.]+\s(?:psi|bar)/);
    expect(task?.seen).toContain('never screws it, gags it or weights it');
  }
});

test('how long between blow-downs is told where the hardness of the water is known, and left out where it is not', async () => {
  const tasks = async (name: string) =>
    (await demo(name)).guide.upkeep.tasks.map(({ what }) => what.replaceAll('\u00a0', ' '));
  expect(await tasks('marigold')).toContain(
    'Blow the boiler down under steam, as its procedure has it, at the latest after about 68 US gal of feed water, with about 3.4 US gal let go each time.',
  );
  expect(await tasks('thimble')).toContain('Blow the boiler down under steam, as its procedure has it.');
});
