/**
 * How a run of text is cut into words for shaping.
 *
 * Measuring and drawing both go through this, so that what is measured is what is drawn: each word is shaped
 * whole, with the font's default features, and each space is set apart, so nothing kerns across it.
 */

/** Gives the words and the spaces of `text`, in order; joined together they are `text` again. */
export function eachWord(text: string, give: (piece: string) => void): void {
  let start = 0;
  for (let at = text.indexOf(' '); at !== -1; at = text.indexOf(' ', start)) {
    if (at > start) give(text.slice(start, at));
    give(' ');
    start = at + 1;
  }
  if (start < text.length) give(start === 0 ? text : text.slice(start));
}
