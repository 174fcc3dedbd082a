/** Figures keep their units: what is written `440 °C` is never parted at the end of a line. */
import { units } from '../quantity/units';

/** Signs of units that no quantity of a spec has: volts and amperes stand in its words alone. */
const otherSigns = ['V', 'A'];

/**
 * Signs of units as they stand in the words of a spec; the program’s own figures are bound when they are printed. A unit
 * that has a form for one of it is a word, and no sign. `US` and `imp` may be left out.
 */
const signs = [...Object.values(units).flat(), ...otherSigns.map((name) => ({ name }))]
  .filter((unit) => !('one' in unit))
  .flatMap((unit) => {
    const sign = 'printed' in unit && unit.printed !== undefined ? unit.printed : unit.name;
    return [sign, sign.replace(/^(?:US|imp) /, '')];
  });

const oneOf = [...new Set(signs)]
  .sort((one, other) => other.length - one.length)
  .map((sign) => sign.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&'))
  .join('|');

const parted = new RegExp(`(\\d) (?=(?:${oneOf})(?![\\p{L}\\d]))`, 'gu');
const mayBeParted = /\d /;

/** The same text, no-break spaces between figures and the signs of their units. */
export function withFiguresBound(text: string): string {
  return mayBeParted.test(text) ? text.replace(parted, '$1\u00a0') : text;
}
