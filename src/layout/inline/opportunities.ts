/**
 * Where a long word may be broken without harm: after hyphens, dashes and slashes that join words. Numbers, dates and
 * fractions are never broken; nor are U+00A0 and U+2011, which say so themselves.
 */

const joint = /[-–—/]/;
const looseJoint = /[–—/]/;
const letter = /\p{L}/u;
const leastLetters = 2;

/** Whether some word of a text might be broken. */
export function hasJoint(text: string): boolean {
  return joint.test(text);
}

/** Whether a word might be broken at a dash or a slash. */
export function hasLooseJoint(word: string): boolean {
  return looseJoint.test(word);
}

/** Offsets in `word` before which a line may end. */
export function breakOffsets(word: string): readonly number[] {
  if (!joint.test(word)) return nowhere;
  const offsets: number[] = [];
  for (let at = leastLetters; at < word.length - leastLetters; at += 1) {
    if (joint.test(word.charAt(at)) && joinsWords(word, at)) offsets.push(at + 1);
  }
  return offsets;
}

/** Of those, the ones after dashes and slashes. A hyphen holds a name together: `low-water cut-off` reads best unbroken. */
export function looseOffsets(word: string): readonly number[] {
  return breakOffsets(word).filter((offset) => word.charAt(offset - 1) !== '-');
}

/** Offsets between all letters of `word`, for a word that cannot be set otherwise. */
export function letterOffsets(word: string): readonly number[] {
  const offsets: number[] = [];
  let at = 0;
  for (const symbol of word) {
    at += symbol.length;
    offsets.push(at);
  }
  offsets.pop();
  return offsets;
}

function joinsWords(word: string, at: number): boolean {
  const before = word.slice(at - leastLetters, at);
  const after = word.slice(at + 1, at + 1 + leastLetters);
  return allLetters(before) && allLetters(after);
}

function allLetters(text: string): boolean {
  return text.length === leastLetters && letter.test(text.charAt(0)) && letter.test(text.charAt(1));
}

const nowhere: readonly number[] = [];
