/** The least that a tank may hold is said by the marks of the dial that it is read on. */
import { expect, test } from 'vitest';
import { worldOf } from '../../src/kettlebook';
import { readingValues } from '../../src/paper/guide/readings';
import { demo, workshop } from '../whole/made';

test('the lowest mark that still holds the reserve and what cannot be drawn; of a stick its depth', async () => {
  const { car, figures, phrases } = worldOf(await demo('heron'), await workshop());
  const values = readingValues(car, figures, phrases);
  const tank = car.spec.tanks['fuel-tank'];
  const kept = (tank?.reserve?.si ?? 0) + (tank?.unusable?.si ?? 0);
  const said = values.get('fuel-level-gauge')?.least;
  const mark = tank?.marks?.find((each) => each.mark === said);
  expect(mark?.volume.si).toBeGreaterThanOrEqual(kept);
  const lower = (tank?.marks ?? []).filter(({ volume }) => volume.si < (mark?.volume.si ?? 0));
  expect(lower.length).toBeGreaterThan(0);
  for (const { volume } of lower) expect(volume.si).toBeLessThan(kept);
  expect(values.get('water-stick')?.least).toContain('mm');
});
