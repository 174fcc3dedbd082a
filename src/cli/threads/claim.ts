/** Work that one thread offers to another, and may take back as long as the other has not begun it. */

const open = 0;
const begun = 1;
const takenBack = 2;

/** A claim on work that nobody has begun, where both threads can see it. */
export const openClaim = (): SharedArrayBuffer => new SharedArrayBuffer(Int32Array.BYTES_PER_ELEMENT);

/** Begin the work. False if it has been taken back. */
export function begin(claim: SharedArrayBuffer): boolean {
  return Atomics.compareExchange(new Int32Array(claim), 0, open, begun) === open;
}

/** Take the work back. False if the other has begun it. */
export function takeBack(claim: SharedArrayBuffer): boolean {
  return Atomics.compareExchange(new Int32Array(claim), 0, open, takenBack) === open;
}
