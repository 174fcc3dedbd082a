/** A rehearsal for the build: what a run does, done once, so that the engine has compiled what runs will need. */
import { join } from 'node:path';
import { makePapers } from '../kettlebook';
import { openCar } from './openCar';

/** Make every paper of the first demo car and keep none. A car that cannot be read is simply left. */
export async function rehearse(root: string): Promise<void> {
  const opened = await openCar(join(root, 'cars', 'marigold.yaml'), root);
  if (!opened.ok) return;
  const { ready, workshop } = opened.value;
  await makePapers(ready, workshop.papers, workshop, () => undefined);
}
