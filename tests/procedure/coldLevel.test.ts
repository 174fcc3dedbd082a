/** What the steps say of a cold boiler that may be too full: with a limit in the spec, and without. */
import { describe, expect, test } from 'vitest';
import { demo, fixture } from '../proof/library';

function steps({ procedures }: ReturnType<typeof demo>, id: string) {
  return procedures.find((procedure) => procedure.id === id)?.steps ?? [];
}

function of(car: ReturnType<typeof demo>, procedure: string, id: string) {
  return steps(car, procedure).find((step) => step.id === id || step.id.startsWith(`${id}/`));
}

describe('a boiler whose cold level has a limit', () => {
  test('its level is wanted between two marks, and what is done over it is said', () => {
    expect(of(fixture('lapwing'), 'level', 'read-level')?.result).toBe(
      'between a third of the glass and half a glass; less, fill first; more, let it down',
    );
    expect(of(demo('marigold'), 'level', 'read-level')?.result).toBe(
      'between a little over a quarter of the glass and two fifths of the glass; no line, empty or full, the second reading says which; less, it has not drawn itself full, ask why, then fill it cold; more, drawn full overnight, let it down',
    );
    expect(of(demo('thimble'), 'fill-cold', 'fill-boiler')?.result).toContain(
      'between a little over a third of the glass and half way up the glass',
    );
  });

  test('it is let down cold, with air let in, before anything is lit', () => {
    const thimble = demo('thimble');
    const order = ['too-high-look', 'too-high-air-in', 'too-high-open', 'too-high-shut', 'too-high-air-shut'];
    const ids = steps(thimble, 'level').map(({ id }) => id.split('/')[0] ?? '');
    expect(ids.filter((id) => order.includes(id))).toEqual(order);
    expect(of(thimble, 'level', 'too-high-open')?.say).toMatch(
      /^If so, open .* until the level has sunk below the most allowed\.$/,
    );
  });
});

describe('a boiler without a limit', () => {
  test('says what it said', () => {
    const merganser = fixture('merganser');
    expect(of(merganser, 'level', 'read-level')?.result).toBe('half a glass; less, fill first');
    expect(of(merganser, 'level', 'too-high-open')).toBeUndefined();
    expect(of(fixture('quartet'), 'level', 'too-high-open')?.say).toContain('sunk to its mark');
  });
});
