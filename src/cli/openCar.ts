/** From the name of a spec to a car that can be worked with: what every command begins with. */
import { bad, type Diagnostic, good, type Outcome } from '../diagnostic/diagnostic';
import {
  type CarFiles,
  openWorkshop,
  type ProvenCar,
  type Prover,
  proveCar,
  type ReadyCar,
  type SharedFiles,
  type Workshop,
  workOut,
} from '../kettlebook';
import { readCarFiles } from './carFiles';
import { openShared, withFoundGood } from './openShared';
import { toldFrom, withOwnFolder } from './ownFolder';
import { readSharedFiles } from './sharedFiles';
import { tellProblems } from './tell';
import type { Terminal } from './terminal';

/** A car, and the workshop its papers are made in. */
export interface Opened<C extends ProvenCar> {
  readonly workshop: Workshop;
  readonly ready: C;
  /** Problems with the names under which files of the spec's own folder really stand. */
  readonly told: (problems: readonly Diagnostic[]) => readonly Diagnostic[];
}

/** A car that papers can be made of. */
export type OpenedCar = Opened<ReadyCar>;

/** A car whose figures are still to be worked out. */
export type OpenedProven = Opened<ProvenCar>;

/** How to open it. */
export interface OpenOptions {
  /** Paper to print on instead of the spec's. */
  readonly sheet?: 'letter' | 'a4' | undefined;
  /** Whom to hand what is read and proven, as soon as it is. */
  readonly hand?: CarHand | undefined;
}

/** Hands one car over while it is opened. */
export interface CarHand {
  /** The files, before it is known whether the spec has a folder of its own. */
  files(files: CarFiles, shared: SharedFiles): void;
  /** What all cars share with files of that folder in their places; nothing if there is none. */
  ownFiles(shared: SharedFiles | undefined): void;
  /** Proves the car, and hands over what comes of it. */
  readonly prover: Prover;
}

/** Read the program's own files, the spec and what stands beside it. All problems are told at once. */
export async function openCar(
  spec: string,
  root: string,
  options: OpenOptions = {},
): Promise<Outcome<OpenedCar>> {
  const proven = await openProven(spec, root, options);
  if (!proven.ok) return proven;
  const ready = workedOut(proven.value);
  if (!ready.ok) return bad([...proven.remarks, ...ready.problems]);
  return good(ready.value, [...proven.remarks, ...ready.remarks]);
}

/** Work out the figures of an opened car. */
export function workedOut<O extends OpenedProven>(opened: O): Outcome<O & OpenedCar> {
  const { ready, workshop, told } = opened;
  const worked = workOut(ready, workshop);
  if (!worked.ok) return bad(told(worked.problems));
  return good({ ...opened, ready: worked.value }, told(worked.remarks));
}

/** The same as `openCar` but for the figures, which are left to be worked out. */
export async function openProven(
  spec: string,
  root: string,
  { sheet, hand }: OpenOptions = {},
): Promise<Outcome<OpenedProven>> {
  const shared = readSharedFiles(root);
  const read = await readCarFiles(spec);
  if (!read.ok) {
    const workshop = openShared(shared);
    return bad([...(workshop.ok ? [] : workshop.problems), ...read.problems]);
  }
  const files = { ...read.value, ...(sheet === undefined ? {} : { paper: sheet }) };
  const plain = withFoundGood(shared);
  hand?.files(files, plain);
  const own = await withOwnFolder(plain, files);
  if (!own.ok) return own;
  const told = (problems: readonly Diagnostic[]) => toldFrom(problems, own.value.from);
  const changed = own.value.shared === plain ? undefined : withFoundGood(own.value.shared);
  hand?.ownFiles(changed);
  const workshop = openWorkshop(changed ?? plain);
  if (!workshop.ok) return bad(told(workshop.problems));
  const ready = proveCar(files, workshop.value, hand?.prover);
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
