/** Text in pieces, so that a template can print the names of parts in bold without any text becoming markup. */

/** A stretch of text; `strong` if it is the name or tag of a part. */
export interface Piece {
  readonly text: string;
  readonly strong: boolean;
}

/** Letters that continue a word: a name inside a longer word is not that name. */
const inWord = /[\p{L}\p{N}]/u;

/**
 * Cut `text` so that every whole occurrence of one of `names` is a strong piece. Longer names win; so do those of `others`, which
 * stay plain: in “main burner valve” nothing is the main burner. Joined, the pieces are the text.
 */
export function withNamesStrong(
  text: string,
  names: readonly string[],
  others: readonly string[] = [],
): readonly Piece[] {
  const pieces: Piece[] = [];
  let plainFrom = 0;
  for (const { name, at } of mentions(text, [...names, ...others])) {
    if (!names.includes(name)) continue;
    if (at > plainFrom) pieces.push({ text: text.slice(plainFrom, at), strong: false });
    pieces.push({ text: name, strong: true });
    plainFrom = at + name.length;
  }
  if (plainFrom < text.length) pieces.push({ text: text.slice(plainFrom), strong: false });
  return pieces;
}

/** One place in a text where a name stands by itself. */
export interface Mention {
  readonly name: string;
  readonly at: number;
}

/** Where whole names stand in a text, in order; within a longer one of them none is found. */
export function mentions(text: string, names: readonly string[]): readonly Mention[] {
  const longestFirst = [...new Set(names)]
    .filter((name) => name.length > 0 && text.includes(name))
    .sort((a, b) => b.length - a.length || (a < b ? -1 : 1));
  const found: Mention[] = [];
  let at = 0;
  while (at < text.length) {
    const name = longestFirst.find((each) => standsAt(text, each, at));
    if (name !== undefined) found.push({ name, at });
    at += name?.length ?? 1;
  }
  return found;
}

function standsAt(text: string, name: string, at: number): boolean {
  if (!text.startsWith(name, at)) return false;
  const before = text[at - 1];
  const after = text[at + name.length];
  return (before === undefined || !inWord.test(before)) && (after === undefined || !inWord.test(after));
}
