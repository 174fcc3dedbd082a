/** Figures keep their units: what is written `440 °C` is never parted at the end of a line. */

/** Signs of units as they stand in the words of a spec; the program’s own figures are bound when they are printed. */
const signs = [
  '°[CF]',
  'psi',
  'm?bar',
  'kPa',
  '(?:(?:US|imp) )?(?:gal|qt|pt|fl oz)',
  'm?L',
  '[cmk]?m',
  'in',
  'ft',
  'mi',
  'k?g',
  'lb',
  'oz',
  'hp',
  'kW',
  'V',
  'A',
  'mph',
  'km/h',
  'min',
  's',
  'h',
  '%',
].join('|');

const parted = new RegExp(`(\\d) (?=(?:${signs})(?![\\p{L}\\d]))`, 'gu');
const mayBeParted = /\d /;

/** The same text, no-break spaces between figures and the signs of their units. */
export function withFiguresBound(text: string): string {
  return mayBeParted.test(text) ? text.replace(parted, '$1\u00a0') : text;
}
