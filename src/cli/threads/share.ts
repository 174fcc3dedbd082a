/** Sharing things to be done out between two threads: one takes them from the front, the other from the back. */

/** How many have been taken, where both threads can see it. */
export const emptyTally = (): SharedArrayBuffer => new SharedArrayBuffer(Int32Array.BYTES_PER_ELEMENT);

/** Whether every one of so many things has been taken, by either thread. */
export function allTaken(count: number, tally: SharedArrayBuffer): boolean {
  return Atomics.load(new Int32Array(tally), 0) >= count;
}

/**
 * What falls to this thread: each time the next is asked for, one that nobody has begun. As long as both count what they take on
 * one tally, they meet somewhere and take none twice.
 */
export function* shareOf<T>(
  all: readonly T[],
  end: 'front' | 'back',
  tally: SharedArrayBuffer,
): Generator<T, void> {
  const taken = new Int32Array(tally);
  for (const next of end === 'front' ? all : [...all].reverse()) {
    if (Atomics.add(taken, 0, 1) >= all.length) return;
    yield next;
  }
}
