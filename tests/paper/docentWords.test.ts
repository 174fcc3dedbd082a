/** What the docent guide says aloud and sends people to, in figures and words that agree with each other. */
import { describe, expect, test } from 'vitest';
import { worldOf } from '../../src/kettlebook';
import { docentContext } from '../../src/paper/context/docent';
import { minuteWords, timedRows } from '../../src/paper/context/runSheet';
import { demo, demoNames, shared, workshop } from '../whole/made';

const shop = await workshop();
const files = await shared();
const template = (name: string) => files.templates.get(`${name}.hbs`) ?? files.templates.get(name) ?? '';
const clean = (text = '') => text.replaceAll('\u00a0', ' ');

describe.each(demoNames)('%s', (name) => {
  test('the rope goes up at the farthest distance, and comes in to the farthest that is left, in figures', async () => {
    const { guide, phrases } = worldOf(await demo(name), shop);
    const { distances } = guide.docent;
    const far = (of: typeof distances) => [...of].sort((a, b) => b.least.si - a.least.si)[0]?.least;
    const acts = guide.docent['run-sheet'].map((row) => row.do);
    const first = acts.findIndex((act) => act.startsWith('Put up the rope'));
    const later = acts.findIndex((act) => act.includes('The rope may come in'));
    expect(first).toBeLessThan(later);
    expect(acts[first]).toContain(phrases.paced(far(distances)));
    const left = distances.filter(({ fuel }) => fuel !== true);
    expect(left.length).toBe(distances.length - 1);
    expect(acts[later]).toContain(phrases.paced(far(left)));
    expect(far(left)?.si).toBeLessThan(far(distances)?.si ?? 0);
  });

  test('before the hour that is announced it speaks of whoever has come', async () => {
    const rows = worldOf(await demo(name), shop).guide.docent['run-sheet'];
    const fire = rows.findIndex((row) => row.fire === true);
    for (const row of rows.slice(0, fire)) expect(row.do).not.toContain('Stand the public');
  });

  test('no share of a blend is said aloud', async () => {
    const { car, guide } = worldOf(await demo(name), shop);
    const spoken = [
      ...guide.docent.parts.flatMap(({ says }) => says),
      ...guide.docent.questions.flatMap(({ says }) => says),
      ...guide.docent['run-sheet'].flatMap(({ tell }) => tell ?? []),
    ].join(' ');
    for (const { name: fuel } of Object.values(car.spec.fuels)) {
      const [short = '', ...shares] = fuel.split(',');
      if (
        Object.values(car.spec.burners).some(
          ({ job, fuel: of }) => job === 'main' && car.spec.fuels[of]?.name === fuel,
        )
      )
        expect(spoken).toContain(short);
      if (shares.length > 0) expect(spoken).not.toContain(fuel);
    }
  });

  test('visitors are told of steam by the minute that stands on the run sheet', async () => {
    const world = worldOf(await demo(name), shop);
    const rows = world.guide.docent['run-sheet'];
    const at = rows.findIndex(({ until }) => until === 'least-to-move');
    const minute = timedRows(world)[at]?.minute;
    const { curves, doubt } = world.figures.raising;
    const seconds = curves
      .find(({ start }) => start === 'cold')
      ?.checks.find(({ at: check }) => check === 'least-to-move')?.seconds;
    if (minute === undefined || seconds === undefined) throw new Error('it is known of every demo car');
    const said = clean(
      world.guide.docent.questions.find(({ ask }) => ask.startsWith('How long does it take'))?.says.join(' '),
    );
    const [, told] = /strong enough about (\d+) min after lighting/.exec(said) ?? [];
    expect(minuteWords(Number(told))).toBe(minuteWords(Math.ceil((seconds * (1 + doubt)) / 60 - 1e-9)));
    // a row of the run sheet comes no sooner, and later only where the rows before it are not done
    expect(minute).toBeGreaterThanOrEqual(Number(told));
    if (name === 'marigold') expect(minute).toBe(Number(told));
  });

  test('the proof of cold sends to both tables that have boxes', async () => {
    const lines = docentContext(worldOf(await demo(name), shop)).proofOfCold as readonly { say: string }[];
    const sent = lines.filter(({ say }) => say.includes('table below')).map(({ say }) => say);
    expect(sent).toEqual([
      'Feel every valve in the first table below, and see that it stands as the table says.',
      'Look at every gauge, tank, device and lock in the second table below.',
    ]);
    const part = template('docent-guide').split('id="cold"')[1]?.split('<h1')[0] ?? '';
    const heads = [...part.matchAll(/<h2[^>]*>([^<]+)<\/h2>\n<table class="ruled striped boxes">/g)].map(
      ([, head]) => head,
    );
    expect(heads).toEqual(['How every valve stands in a parked car', 'Gauges, tanks, devices and locks']);
  });

  test('it has one word for whoever decides about the place', async () => {
    const { docent } = worldOf(await demo(name), shop).guide;
    expect(JSON.stringify(docent)).not.toContain('the museum decides');
    expect(JSON.stringify(docent)).toContain('the site decides');
  });
});

test('manual and guide say what a fingerprint is, where they print it first', () => {
  for (const name of ['docent-guide', 'manual/cover']) {
    const text = template(name);
    const [before = '', after = ''] = text.split('Fingerprint: two copies with the same one say the same');
    expect(before, name).toContain('{{fingerprint}}');
    expect(after, name).toMatch(/\w/);
  }
});
