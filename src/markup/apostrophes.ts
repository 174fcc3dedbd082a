/** Printed apostrophes: what is typed `driver's` is printed `driver’s`. What is looked up by its words is looked up before. */

/** After a letter, as in `arm's` and `tanks'`; a foot stands after a figure and stays as it is. */
const typed = /(?<=\p{L})'/gu;

/** The same text, an apostrophe after each letter that has the typewriter’s. */
export function withApostrophes(text: string): string {
  return text.includes("'") ? text.replace(typed, '’') : text;
}
