/**
 * How PDF writes numbers, text and names.
 */
import { decimal } from '../drawing/decimal';

/** A number with at most three decimals, never in exponent form. Throws on what is not a finite number. */
export const num = decimal;

/** A share of one, such as a sine, with at most six decimals. */
export function share(value: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`a share is ${value}`);
  const rounded = Math.round(value * 1e6) / 1e6;
  return rounded === 0 ? '0' : String(rounded);
}

/** Numbers with spaces between. */
export function nums(...values: readonly number[]): string {
  let text = '';
  for (let index = 0; index < values.length; index += 1)
    text += index === 0 ? num(values[index] ?? 0) : ` ${num(values[index] ?? 0)}`;
  return text;
}

/** A text string: letters of ASCII as they stand, anything else as UTF-16. */
export function textString(text: string): string {
  if (/^[\x20-\x7e]*$/.test(text)) return `(${text.replace(/[\\()]/g, '\\$&')})`;
  let hex = 'FEFF';
  for (let at = 0; at < text.length; at += 1) hex += hex4(text.charCodeAt(at));
  return `<${hex}>`;
}

/** Sixteen bits as four hexadecimal digits. */
export function hex4(value: number): string {
  return value.toString(16).toUpperCase().padStart(4, '0');
}

/** Sixteen bits as two letters of a literal string, those with a meaning of their own escaped. */
export function literal16(value: number): string {
  const known = madeLiterals[value];
  if (known !== undefined) return known;
  const made = literal8(value >> 8) + literal8(value & 0xff);
  madeLiterals[value] = made;
  return made;
}

const madeLiterals: (string | undefined)[] = [];

function literal8(value: number): string {
  const letter = String.fromCharCode(value);
  if (letter === '\r') return '\\r';
  return letter === '(' || letter === ')' || letter === '\\' ? `\\${letter}` : letter;
}

/** A reference to the object with this number. */
export function ref(id: number): string {
  return `${id} 0 R`;
}

/** A string of Latin letters, one byte each. */
export function latin(text: string): Uint8Array {
  return Buffer.from(text, 'latin1');
}
