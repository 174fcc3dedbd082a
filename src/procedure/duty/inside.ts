/** Lines inside the car. */
import { carrying } from '../../car/flow';
import type { Fluid, Pipe } from '../../car/plant';

/** Pipes of these fluids that do not come from outside the car, so that no way leads out of one tap and in at another. */
export function inside(...fluids: readonly Fluid[]): (pipe: Pipe) => boolean {
  const use = carrying(...fluids);
  return (pipe) => use(pipe) && pipe.from !== 'open-air' && pipe.from !== 'ground';
}
