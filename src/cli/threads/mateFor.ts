/** Whether a second thread pays. */
import { availableParallelism, loadavg } from 'node:os';
import type { Asked } from '../arguments';
import { Mate } from './mate';

/** So many papers named one by one are as good as all: for fewer, reading the car twice costs more than it saves. */
const enough = 6;

/**
 * A mate, where there is work for two and the machine has a processor to spare: on one that has other work for all of them, the
 * mate would only be in the way. A third thread would find nothing left to do by the time it is ready. `KETTLEBOOK_THREADS` in the
 * environment decides instead, if it is given: 1 forbids a mate, 2 asks for one.
 */
export function mateFor(
  asked: Extract<Asked, { kind: 'make' }>,
  script: string | undefined,
): Mate | undefined {
  const threads = Number(process.env.KETTLEBOOK_THREADS ?? spareProcessors() + 1);
  const papers = asked.papers.length === 0 ? enough : new Set(asked.papers).size;
  return script !== undefined && threads >= 2 && papers >= enough ? new Mate(script, asked) : undefined;
}

/** Processors that would have nothing to do beside this thread, by what the machine had to do in the last minute. */
function spareProcessors(): number {
  const processors = availableParallelism();
  const [lastMinute = 0] = loadavg();
  return lastMinute >= processors ? 0 : processors - 1;
}
