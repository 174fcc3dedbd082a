import { describe, expect, test } from 'vitest';
import { worldOf } from '../../src/kettlebook';
import { startBarsInputs } from '../../src/paper/context/drawingsTime';
import { startUpContext } from '../../src/paper/context/raising';
import { demo, demoNames, workshop } from '../whole/made';

const shop = await workshop();

/** Minutes of a time as papers print it: `47 min`, `2 h 1 min`. */
function minutesIn(printed: string): number {
  const [, hours = '0', minutes = '0'] = /^(?:(\d+)\s?h)?\s?(?:(\d+)\s?min)?$/.exec(printed) ?? [];
  return 60 * Number(hours) + Number(minutes);
}

describe.each(demoNames)('%s', (name) => {
  test('has its start-up as bars, at the times of the table beside them', async () => {
    const world = worldOf(await demo(name), shop);
    const [input, ...others] = startBarsInputs(world);
    expect(others).toEqual([]);
    const table = startUpContext(world).parts;
    const bars =
      input?.lanes.flatMap(({ name: part, bars: own }) => own.map((bar) => ({ part, ...bar }))) ?? [];
    expect(
      bars.map(({ part, from, least, kind }) => [
        part,
        input?.clock?.(from),
        -from,
        -(least?.from ?? 0),
        kind === 'hatched',
      ]),
    ).toEqual(
      table.map(({ name: part, clock, good, least, flame }) => [
        part,
        clock,
        minutesIn(good),
        minutesIn(least),
        flame,
      ]),
    );
    for (const { from, to } of bars) expect(from).toBeLessThan(to);
    expect(Math.max(...bars.map(({ to }) => to))).toBe(0);
  });
});
