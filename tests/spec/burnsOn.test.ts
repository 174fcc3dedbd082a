/** A burner that burns on after its fuel is shut: what the spec may say of it. */
import { describe, expect, test } from 'vitest';
import { loadTiny, spoiled } from '../helpers/tinySpec';
import { told } from './told';

const burner = (more: string) =>
  ['lit-by: pilot-burner, vaporizer: coil }', `lit-by: pilot-burner, vaporizer: coil, ${more} }`] as const;

describe('burns-on', () => {
  test.each(['20 s', '6 min', '0 min'])('%s is taken', (time) => {
    expect(told(spoiled(burner(`burns-on: ${time}`)))).toBe('fine');
  });

  test('less than nothing is not', () => {
    expect(told(spoiled(burner('burns-on: -1 min')))).toContain('error spec-quantity at “-1 min }”');
  });

  test('not under a coil', () => {
    const text = spoiled(burner('burns-on: 2 min'), ['kind: fire-tube', 'kind: monotube']);
    expect(told(text)).toContain(
      [
        '115:174 error spec-burns-on at “2 min }”',
        '  the main burner burns on under a coil whose feed stops with its fire',
        '  found: `2 min`',
      ].join('\n'),
    );
    expect(told(spoiled(burner('burns-on: 0 min'), ['kind: fire-tube', 'kind: monotube']))).not.toContain(
      'spec-burns-on',
    );
  });

  test('a damper is for a burner that burns on', () => {
    const control = [
      'controls:\n',
      'controls:\n  slide: { name: air slide, place: dash, kind: other, does: Shuts off the air. }\n',
    ] as const;
    expect(told(spoiled(burner('burns-on: 2 min, damper: slide'), control))).toBe('fine');
    expect(told(spoiled(burner('damper: slide'), control))).toContain(
      '115:172 remark spec-burns-on at “slide }”',
    );
    expect(loadTiny(spoiled(burner('burns-on: 2 min, damper: pilot-valve'))).ok).toBe(false);
  });
});
