/**
 * How PDF writes numbers, text and names.
 */

/** A number with at most `places` decimals, never in exponent form. Throws on what is not a finite number. */
export function num(value: number, places = 3): string {
  if (!Number.isFinite(value)) throw new RangeError(`a coordinate on a page is ${value}`);
  const scale = 10 ** places;
  const rounded = Math.round(value * scale) / scale;
  return rounded === 0 ? '0' : String(rounded);
}

/** Numbers with spaces between. */
export function nums(...values: readonly number[]): string {
  return values.map((value) => num(value)).join(' ');
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

/** A reference to the object with this number. */
export function ref(id: number): string {
  return `${id} 0 R`;
}

const utf8 = new TextEncoder();

/** A string of Latin letters, one byte each. */
export function latin(text: string): Uint8Array {
  const fast = utf8.encode(text);
  if (fast.length === text.length) return fast;
  const bytes = new Uint8Array(text.length);
  for (let at = 0; at < text.length; at += 1) bytes[at] = text.charCodeAt(at) & 0xff;
  return bytes;
}
