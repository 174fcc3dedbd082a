import fc from 'fast-check';
import { expect, test } from 'vitest';
import { withFiguresBound } from '../../src/markup/figures';
import { units } from '../../src/quantity/units';

test('a figure is bound to the sign of its unit, and to no other word', () => {
  expect(withFiguresBound('steaming, 440 °C; 1 1/2 in on the stick')).toBe(
    'steaming, 440\u00a0°C; 1 1/2\u00a0in on the stick',
  );
  expect(withFiguresBound('25 US gal, 3 imp pt, 12.4 V and 90 %')).toBe(
    '25\u00a0US gal, 3\u00a0imp pt, 12.4\u00a0V and 90\u00a0%',
  );
  expect(withFiguresBound('step 7 inside, 2 litres, 3 minutes, 5 horses, 2 Lamps')).toBe(
    'step 7 inside, 2 litres, 3 minutes, 5 horses, 2 Lamps',
  );
});

test('every sign in the table of units is one, and every word in it is none', () => {
  const all = Object.values(units).flat();
  const words = all.filter(({ one }) => one !== undefined).map(({ name }) => name);
  expect(words).toEqual(['days', 'turns']);
  for (const name of words) expect(withFiguresBound(`2 ${name}`)).toBe(`2 ${name}`);
  const signs = all.filter(({ one }) => one === undefined).map(({ name, printed }) => printed ?? name);
  expect(signs.length).toBeGreaterThan(80);
  for (const sign of signs) expect(withFiguresBound(`2 ${sign}`).slice(0, 2), sign).toBe('2\u00a0');
  expect(withFiguresBound('3 gal, 2 fl oz')).toBe('3\u00a0gal, 2\u00a0fl oz');
});

test('nothing but spaces is changed', () => {
  fc.assert(
    fc.property(
      fc.string({ unit: fc.constantFrom('1', '9', ' ', 'i', 'n', '°', 'C', 'L', 'm', 'é') }),
      (text) => {
        expect(withFiguresBound(text).replaceAll('\u00a0', ' ')).toBe(text);
      },
    ),
  );
});
