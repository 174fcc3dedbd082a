/** Two rows of things that are alike for the most part: the stretch in which they differ. */

/** Stands where like things were left out. */
export const leftOut = '…';

/**
 * The stretch of each row in which the two differ, with `around` things of what they share before and after it, and
 * `…` where more was left out.
 */
export function differingStretch(
  was: readonly string[],
  is: readonly string[],
  around: number,
): readonly [readonly string[], readonly string[]] {
  const most = Math.min(was.length, is.length);
  let front = 0;
  while (front < most && was[front] === is[front]) front += 1;
  let back = 0;
  while (back < most - front && was.at(-1 - back) === is.at(-1 - back)) back += 1;
  const cut = (row: readonly string[]) => {
    const from = Math.max(0, front - around);
    const to = Math.min(row.length, row.length - back + around);
    return [...(from > 0 ? [leftOut] : []), ...row.slice(from, to), ...(to < row.length ? [leftOut] : [])];
  };
  return [cut(was), cut(is)];
}

/** Sentences longer than this are cut down to where they differ. */
const longLetters = 60;

/** Words kept on either side, so that the place is known again. */
const wordsAround = 4;

/** Two texts, cut down to where they differ if they are long and alike. */
export function differingWords(was: string, is: string): readonly [string, string] {
  if (was === '' || is === '' || Math.max(was.length, is.length) <= longLetters) return [was, is];
  const [old, now] = differingStretch(was.split(' '), is.split(' '), wordsAround);
  return [old.join(' '), now.join(' ')];
}
