/** What the manual says is written down, and the log sheet on which it is. */
import { describe, expect, test } from 'vitest';
import { worldOf } from '../../src/kettlebook';
import { logContext } from '../../src/paper/context/logSheet';
import { demo, demoNames, shared, workshop } from '../whole/made';

const files = await shared();
const template = (name: string) => files.templates.get(`${name}.hbs`) ?? files.templates.get(name) ?? '';
const manual = template('manual/maintenance').split('id="written-down"')[1]?.split('<h1')[0] ?? '';

test('the list of the manual has a row for each head of the sheet, in its order', () => {
  const heads = [...template('log-sheet').matchAll(/<h2[^>]*>([^<]+)<\/h2>/g)].map(([, head]) => head);
  expect(heads.length).toBeGreaterThan(5);
  const rows = [...manual.matchAll(/<th scope="row">([^<]+)<\/th>/g)].map(([, row]) => row);
  expect(rows).toEqual(['At its head', ...heads]);
});

test('both are made from the same lists', () => {
  for (const list of ['before', 'times', 'after', 'tanks', 'gauges'])
    for (const text of [manual.replaceAll('log.', ''), template('log-sheet')])
      expect(text).toContain(`{{#each ${list}}}`);
});

describe.each(demoNames)('the log sheet of %s', (name) => {
  test('asks for all that a day of steam leaves behind', async () => {
    const sheet = logContext(worldOf(await demo(name), await workshop()));
    const lines = [...sheet.before, ...sheet.times, ...sheet.after].map(({ what }) => what).join('\n');
    for (const asked of ['Blown down', 'Safety valve', 'Cut-offs proven', 'not as it should be', 'mended'])
      expect(lines).toContain(asked);
    expect(sheet.columns.map(({ key }) => key)).toEqual(
      expect.arrayContaining(['distance', 'water-used', 'fuel-used']),
    );
    expect(sheet.tanks.length).toBeGreaterThan(1);
    expect(sheet.gauges.length).toBeGreaterThan(0);
  });
});

describe.each(demoNames)('%s, filled in', (name) => {
  test('what a gauge shows on the road is no figure for the start of a day', async () => {
    const { gauges } = logContext(worldOf(await demo(name), await workshop()));
    for (const { name: gauge, road } of gauges) {
      expect(road, gauge).toMatch(/\w/);
      expect(road, gauge).not.toContain('start of a day');
    }
    const told = template('log-sheet').split('On the road it shows')[1] ?? '';
    expect(told).toContain('{{#if from}}{{from}} to {{to}}{{else}}{{road}}{{/if}}');
  });

  test('every tank says in what it is written down', async () => {
    const { car, ...world } = worldOf(await demo(name), await workshop());
    const { tanks } = logContext({ car, ...world });
    expect(tanks.map(({ id }) => id)).toEqual(Object.keys(car.spec.tanks));
    for (const { id, by, unit, on } of tanks) {
      if (car.spec.tanks[id]?.read === 'stick')
        expect([by, unit]).toEqual([
          'stick',
          world.phrases.unit('length', world.phrases.systems[0] ?? 'metric'),
        ]);
      else expect(by === 'mark' || by === 'pressure' ? on : unit, id).toMatch(/\w/);
    }
    expect(template('log-sheet')).toContain('Written in');
  });
});

test('nobody is asked to dip a tank under pressure on the road', async () => {
  const asked = async (name: string) => {
    const { gauges } = logContext(worldOf(await demo(name), await workshop()));
    return gauges.filter(({ underway }) => !underway).map(({ id }) => id);
  };
  const { car } = await demo('thimble');
  const [stick, ...others] = await asked('thimble');
  expect(others).toEqual([]);
  expect(car.spec.gauges[stick ?? '']?.kind).toBe('stick');
  expect(car.spec.tanks[car.spec.gauges[stick ?? '']?.of ?? '']?.pressure).toBeDefined();
  expect(await asked('heron')).toEqual([]);
});
