/**
 * True sizes: points for millimetres and inches.
 */

/** Points in a millimetre: 72 to an inch of 25.4 mm exactly. */
export const ptPerMm = 72 / 25.4;
/** Points in an inch. */
export const ptPerIn = 72;
