/** Whether a second thread pays. */
import { availableParallelism, loadavg } from 'node:os';
import type { Asked } from '../arguments';
import { Mate } from './mate';

/**
 * A mate, where the machine has a processor to spare: on one that has other work for all of them, the mate would only be in the
 * way. Even a single card is made sooner with it, since it is set while the emergencies are still being proven. A third thread would
 * find nothing left to do by the time it is ready. `KETTLEBOOK_THREADS` in the environment decides instead, if it is given: 1 forbids
 * a mate, 2 asks for one.
 */
export function mateFor(
  asked: Extract<Asked, { kind: 'make' }>,
  script: string | undefined,
): Mate | undefined {
  const threads = Number(process.env.KETTLEBOOK_THREADS ?? spareProcessors() + 1);
  return script !== undefined && threads >= 2 ? new Mate(script, asked) : undefined;
}

/** Processors that would have nothing to do beside this thread, by what the machine had to do in the last minute. */
function spareProcessors(): number {
  const processors = availableParallelism();
  const [lastMinute = 0] = loadavg();
  return lastMinute >= processors ? 0 : processors - 1;
}
