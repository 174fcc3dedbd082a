/** From the name of a spec to a car that can be worked with: what every command begins with. */
import { bad, good, type Outcome } from '../diagnostic/diagnostic';
import { openWorkshop, type ReadyCar, readCar, type Workshop } from '../kettlebook';
import { readCarFiles } from './carFiles';
import { readSharedFiles } from './sharedFiles';

/** A car, and the workshop its papers are made in. */
export interface OpenedCar {
  readonly workshop: Workshop;
  readonly ready: ReadyCar;
}

/** Read the program's own files, the spec and what stands beside it. All problems are told at once. */
export async function openCar(
  spec: string,
  root: string,
  paper?: 'letter' | 'a4',
): Promise<Outcome<OpenedCar>> {
  const workshop = openWorkshop(await readSharedFiles(root));
  const files = await readCarFiles(spec);
  if (!workshop.ok || !files.ok) {
    return bad([...(workshop.ok ? [] : workshop.problems), ...(files.ok ? [] : files.problems)]);
  }
  const ready = readCar({ ...files.value, ...(paper === undefined ? {} : { paper }) }, workshop.value);
  if (!ready.ok) return ready;
  return good({ workshop: workshop.value, ready: ready.value }, [...workshop.remarks, ...ready.remarks]);
}
