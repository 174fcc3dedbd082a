/** A relief valve on a charged tank is told of where a change of heat or height would bring the tank past it. */
import { expect, test } from 'vitest';
import { chargedFigures } from '../../../src/calc/figures/charged';
import { demoCar } from '../../cars/demo';

const changed = (name: 'marigold' | 'thimble', tank: string) => {
  const found = chargedFigures(demoCar(name)).find(({ tankId }) => tankId === tank);
  if (found === undefined) throw new Error(`${name} has no charged tank ${tank}`);
  return found.changed;
};

test('it is named with its figure where the pressure would pass it, and nowhere else', () => {
  const relief = demoCar('marigold').spec.devices['fuel-relief-valve'];
  const letsGo = { name: relief?.name, tag: relief?.tag, setPa: relief?.set?.si };
  for (const { gaugePa, letsGo: said } of changed('marigold', 'pressure-tank'))
    expect(said).toEqual(gaugePa > (relief?.set?.si ?? 0) ? letsGo : undefined);
  expect(changed('marigold', 'pressure-tank').filter(({ letsGo: said }) => said).length).toBe(2);
});

test('a tank without one has none', () => {
  expect(changed('thimble', 'fuel-tank').map(({ letsGo }) => letsGo)).toEqual([
    undefined,
    undefined,
    undefined,
  ]);
});
