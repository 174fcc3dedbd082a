/** Where no valve cuts a leak off: what lets the pressure off is opened, and never asked to be shut before that. */
import { expect, test } from 'vitest';
import { worldOf } from '../../src/kettlebook';
import { leaksContext } from '../../src/paper/context/proof';
import { demo, demoNames, workshop } from '../whole/made';

test.each(demoNames)('%s: nothing is shut that lets the pressure off what feeds the leak', async (name) => {
  const { car, ...rest } = await demo(name);
  const { uncut } = leaksContext(worldOf({ car, ...rest }, await workshop()));
  const lettingDown = Object.values(car.spec.tanks).flatMap((tank) => {
    const valve = car.parts.get(tank['vent-valve'] ?? '');
    return valve === undefined ? [] : [{ tank: tank.name, valve: valve.name }];
  });
  for (const { tank, valve } of lettingDown) {
    const rows = uncut.filter(({ left }) => left.includes(`the ${tank} (`));
    expect(rows.length, tank).toBeGreaterThan(0);
    for (const row of rows) {
      expect(row.left, row.leaks.join('; ')).toContain(`open the ${valve}`);
      expect(row.shut).not.toContain(valve);
    }
  }
});

test('a valve between two tanks is shut once the pressure is off', async () => {
  const { uncut } = leaksContext(worldOf(await demo('marigold'), await workshop()));
  expect(uncut.map(({ left }) => left)).toContain(
    'the fuel pressure tank (T2); open the fuel return valve (F4) to let its pressure off, then shut it again',
  );
});
