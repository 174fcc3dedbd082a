/** From the name of a spec to a car that can be worked with: what every command begins with. */
import { bad, type Diagnostic, good, type Outcome } from '../diagnostic/diagnostic';
import { type ReadyCar, readCar, type Workshop } from '../kettlebook';
import { readCarFiles } from './carFiles';
import { openShared } from './openShared';
import { toldFrom, withOwnFolder } from './ownFolder';
import { readSharedFiles } from './sharedFiles';
import { tellProblems } from './tell';
import type { Terminal } from './terminal';

/** A car, and the workshop its papers are made in. */
export interface OpenedCar {
  readonly workshop: Workshop;
  readonly ready: ReadyCar;
  /** Problems with the names under which files of the spec's own folder really stand. */
  readonly told: (problems: readonly Diagnostic[]) => readonly Diagnostic[];
}

/** Read the program's own files, the spec and what stands beside it. All problems are told at once. */
export async function openCar(
  spec: string,
  root: string,
  paper?: 'letter' | 'a4',
): Promise<Outcome<OpenedCar>> {
  const shared = readSharedFiles(root);
  const files = await readCarFiles(spec);
  if (!files.ok) {
    const workshop = openShared(shared);
    return bad([...(workshop.ok ? [] : workshop.problems), ...files.problems]);
  }
  const own = await withOwnFolder(shared, files.value);
  if (!own.ok) return own;
  const told = (problems: readonly Diagnostic[]) => toldFrom(problems, own.value.from);
  const workshop = openShared(own.value.shared);
  if (!workshop.ok) return bad(told(workshop.problems));
  const ready = readCar({ ...files.value, ...(paper === undefined ? {} : { paper }) }, workshop.value);
  if (!ready.ok) return bad(told(ready.problems));
  return good(
    { workshop: workshop.value, ready: ready.value, told },
    told([...workshop.remarks, ...ready.remarks]),
  );
}

/** The same for a command that can do nothing without a car: nothing is given once its problems are told. */
export async function openCarOrTell(
  spec: string,
  root: string,
  terminal: Terminal,
): Promise<OpenedCar | undefined> {
  const opened = await openCar(spec, root);
  if (opened.ok) return opened.value;
  tellProblems(opened.problems, terminal);
  return undefined;
}
