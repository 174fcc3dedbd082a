/** A cushion of air and the fuel that presses it together: Boyle’s law, with the standard atmosphere of ISO 2533. */
import { expect, test } from 'vitest';
import { spoiled } from '../helpers/tinySpec';
import { told } from './told';

const band = '    pressure: { from: 40 psi gauge, to: 60 psi gauge }';
/** The tank of eight gallons, filled with two, so that the air is pressed into three quarters of its room. */
const tank = (cushion: string) =>
  told(
    spoiled(
      ['    fill-to: 6 US gal\n', '    fill-to: 2 US gal\n'],
      [band, `${band}\n    cushion: ${cushion}`],
    ),
  );

test.each([
  // (30 + 14.696) · 4/3 − 14.696 = 44.9 psi, worked by hand
  ['30 psi gauge', undefined],
  // (20 + 14.696) · 4/3 − 14.696 = 31.6 psi
  ['20 psi gauge', 'below'],
  // (50 + 14.696) · 4/3 − 14.696 = 71.6 psi
  ['50 psi gauge', 'above'],
])('a cushion of %s', (cushion, side) => {
  const said = tank(cushion);
  if (side === undefined) expect(said).not.toContain('spec-cushion');
  else
    expect(said).toContain(
      [
        `79:14 remark spec-cushion at “${cushion}”`,
        `  with its fuel in, the fuel tank would stand ${side} its band`,
        `  found: \`${cushion}\``,
        '  expected: 26 psi (1.8 bar) to 41 psi (2.8 bar), so that 2 US gal of fuel bring it from 40 psi gauge to 60 psi gauge',
      ].join('\n'),
    );
});

test('without a room for air nothing is pressed together', () => {
  expect(
    told(spoiled(['    fill-to: 6 US gal\n', ''], [band, `${band}\n    cushion: 30 psi gauge`])),
  ).toContain('nothing says how far the cushion of the fuel tank is pressed together');
});
