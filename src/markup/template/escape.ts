/**
 * Text that cannot be mistaken for markup.
 */

const marks: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#x27;',
};

/** What has to be written otherwise; most texts have nothing of it. */
const special = /[\r&<>"']/;

/**
 * `text` as it must stand in markup or in a quoted attribute to be read back letter for letter.
 * Line ends become `\n`; letters that stand for nothing printable are left for the markup reader to refuse.
 */
export function escapeText(text: string): string {
  if (!special.test(text)) return text;
  return text.replace(/\r\n?/g, '\n').replace(/[&<>"']/g, (letter) => marks[letter] ?? letter);
}
