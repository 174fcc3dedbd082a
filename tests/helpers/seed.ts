/**
 * Property tests draw the same cases in every run, so that a red run is about the change at hand. To look for faults
 * nobody has met yet, let the draw vary: `SEED=random npm run unit`, or give a number of your own.
 */
import fc from 'fast-check';

const wanted = process.env.SEED ?? '20260314';
if (wanted !== 'random') fc.configureGlobal({ seed: Number(wanted) });
