/** Whether a second thread pays. */
import { availableParallelism } from 'node:os';
import type { Asked } from '../arguments';
import { Mate } from './mate';

/** So many papers named one by one are as good as all: for fewer, reading the car twice costs more than it saves. */
const enough = 6;

/**
 * A mate, where the machine can do two things at once and there is work for two. A third thread would find nothing left to do by
 * the time it is ready. `KETTLEBOOK_THREADS` in the environment says otherwise what the machine can do: 1 forbids a mate.
 */
export function mateFor(
  asked: Extract<Asked, { kind: 'make' }>,
  script: string | undefined,
): Mate | undefined {
  const threads = Number(process.env.KETTLEBOOK_THREADS ?? availableParallelism());
  const papers = asked.papers.length === 0 ? enough : new Set(asked.papers).size;
  return script === undefined || threads < 2 || papers < enough ? undefined : new Mate(script, asked);
}
