/** How values are spoken of to a keeper. */

/** What kind of value stands there: `a list`, `text`, `empty`. */
export function kindOf(value: unknown): string {
  if (value === null || value === undefined) return 'empty';
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object') return 'keys and values';
  if (typeof value === 'string') return 'text';
  if (typeof value === 'boolean') return '`true` or `false`';
  return Number.isFinite(value) ? 'a number' : 'a number without end';
}

/** Letters of a value beyond which it is cut off in a message. */
const longest = 60;

/** What was written, in back-ticks and not too long; the kind of value where it is not a single one. */
export function shown(written: string | undefined, value: unknown): string {
  if (written === undefined) return kindOf(value);
  const line = written.replace(/\s+/g, ' ').trim();
  if (line === '') return 'nothing';
  return `\`${line.length > longest ? `${line.slice(0, longest - 3)}…` : line}\``;
}

/** A row of choices: `one of `a`, `b`, `c``. */
export function oneOfWords(choices: readonly string[]): string {
  const quoted = choices.map((each) => `\`${each}\``);
  return quoted.length === 1 ? (quoted[0] ?? '') : `one of ${quoted.join(', ')}`;
}

/** The first sentence of a text as a part of another: without its capital and its full stop. */
export function asClause(text: string): string {
  const [first = ''] = text.split(/\.(?:\s|$)/);
  return first.charAt(0).toLowerCase() + first.slice(1);
}
