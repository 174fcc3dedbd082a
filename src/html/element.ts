/**
 * HTML that is well-formed and escaped by the way it is made: text can only become markup through `element`.
 */

/** A finished piece of HTML. Made here alone, so that unescaped text can never be taken for one. */
export class Html {
  private constructor(readonly text: string) {}

  /** Markup that is known to be sound as it stands: drawn shapes, the page's own style and script. */
  static sound(markup: string): Html {
    return new Html(markup);
  }
}

/** What may stand in an element. Strings are text and are escaped; nothing else is. */
export type Content = Html | string | readonly Content[];

/** Attributes by name. True gives a bare attribute; false and undefined give none. */
export type Attributes = Readonly<Record<string, string | number | boolean | undefined>>;

/** Elements that hold nothing and have no end tag. */
const empty: ReadonlySet<string> = new Set(['br', 'hr', 'input', 'link', 'meta']);

/** An element with its attributes, in the order given, and its content. */
export function element(name: string, attributes: Attributes = {}, ...content: readonly Content[]): Html {
  let start = `<${name}`;
  for (const key in attributes) start += attribute(key, attributes[key]);
  start += '>';
  return Html.sound(empty.has(name) ? start : `${start}${inner(content)}</${name}>`);
}

/** Pieces one after the other, without an element around them. */
export function together(...content: readonly Content[]): Html {
  return Html.sound(inner(content));
}

/** Pieces on lines of their own, so that two versions of a page can be compared line by line. */
export function onLines(pieces: readonly Html[]): Html {
  let lines = '';
  for (const piece of pieces) lines += `${piece.text}\n`;
  return Html.sound(lines);
}

/**
 * Text as HTML writes it. Characters that no HTML page can hold (controls, halves of surrogate pairs) come out as
 * U+FFFD, so that it can be seen that something stood there.
 */
export function escaped(text: string): string {
  if (!toEscape.test(text)) return text;
  return text
    .replace(/[\p{Surrogate}\p{Noncharacter_Code_Point}]/gu, '\uFFFD')
    .replace(controls, '\uFFFD')
    .replace(/[&<>"'\r]/g, (letter) => entities[letter] ?? letter);
}

/** Anything that may need to be written otherwise. */
const toEscape = /[^\t\n !#-%(-;=?-~\u00a0-\ud7ff\ue000-\ufdcf\ufdf0-\ufffd]/;

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
  '\r': ' ',
};

/** Controls other than tab, line feed and carriage return: U+0000 to U+001F and U+007F to U+009F. */
const controls = /(?![\t\n\r])\p{Cc}/gu;

function attribute(name: string, value: string | number | boolean | undefined): string {
  if (value === undefined || value === false) return '';
  return value === true ? ` ${name}` : ` ${name}="${escaped(String(value))}"`;
}

function inner(content: readonly Content[]): string {
  let text = '';
  content.forEach((piece) => {
    if (typeof piece === 'string') text += escaped(piece);
    else text += piece instanceof Html ? piece.text : inner(piece);
  });
  return text;
}
