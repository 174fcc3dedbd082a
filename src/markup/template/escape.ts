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

/**
 * `text` as it must stand in markup or in a quoted attribute to be read back letter for letter.
 * Line ends become `\n`; letters that stand for nothing printable are left for the markup reader to refuse.
 */
export function escapeText(text: string): string {
  return text.replace(/\r\n?/g, '\n').replace(/[&<>"']/g, (letter) => marks[letter] ?? letter);
}
