/** The demo cars and their papers, made once for the tests of whole documents. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { readSharedFiles } from '../../src/cli/sharedFiles';
import type { Diagnostic, Outcome } from '../../src/diagnostic/diagnostic';
import {
  openWorkshop,
  type ReadyCar,
  readCar,
  type SharedFiles,
  type Workshop,
  worldOf,
} from '../../src/kettlebook';
import type { CheckOptions } from '../../src/layout/check';
import type { Paper } from '../../src/paper/paper';

/** The root of the checkout. */
export const root = join(import.meta.dirname, '..', '..');

/** The demo cars by the names of their files. */
export const demoNames = readdirSync(join(root, 'cars'))
  .filter((name) => name.endsWith('.yaml'))
  .map((name) => name.replace('.yaml', ''));

/** The value of a good outcome; throws with the problems of a bad one. */
export function goodOf<T>(outcome: Outcome<T>): T {
  if (outcome.ok) return outcome.value;
  throw new Error(outcome.problems.map(inWords).join('\n'));
}

/** A problem in one line, for a failing test to show. */
export function inWords({ code, at, message, found }: Diagnostic): string {
  const place = at === undefined ? '' : `${at.file}:${at.line}:${at.column} `;
  return `${place}${code}: ${message}${found === undefined ? '' : ` (${found})`}`;
}

/** The smallest legible sizes of a paper of a car. */
export function leastOf(
  paper: Paper,
  ready: ReadyCar,
  shop: Workshop,
): Pick<CheckOptions, 'leastPt' | 'lookUpPt'> {
  const world = worldOf(ready, shop);
  return { leastPt: paper.leastPt(world), lookUpPt: paper.lookUpPt?.(world) };
}

let files: Promise<SharedFiles> | undefined;

/** What all cars share, read once. */
export function shared(): Promise<SharedFiles> {
  files ??= Promise.resolve(readSharedFiles(root));
  return files;
}

let opened: Promise<Workshop> | undefined;

/** The workshop, opened once. */
export function workshop(): Promise<Workshop> {
  opened ??= shared().then((each) => goodOf(openWorkshop(each)));
  return opened;
}

/** The text of a demo car's spec. */
export function specText(name: string): string {
  return readFileSync(join(root, 'cars', `${name}.yaml`), 'utf8');
}

/** The logs beside the demo cars. */
export function logs(): ReadonlyMap<string, string> {
  const names = readdirSync(join(root, 'cars')).filter((name) => name.endsWith('.csv'));
  return new Map(names.map((name) => [name, readFileSync(join(root, 'cars', name), 'utf8')]));
}

/** A car from the text of a spec. */
export async function carFrom(text: string, paper?: 'letter' | 'a4'): Promise<Outcome<ReadyCar>> {
  const print = paper === undefined ? {} : { paper };
  return readCar({ file: 'car.yaml', text, beside: logs(), ...print }, await workshop());
}

const read = new Map<string, Promise<ReadyCar>>();

/** The order of the units on the papers: as the spec has it, or turned round. */
export type UnitOrder = 'own' | 'turned';

/** A spec with its two systems of units the other way round. */
function withUnits(text: string, order: UnitOrder): string {
  if (order === 'own') return text;
  const turned = text.replace(/first: (\w+), second: (\w+)/, 'first: $2, second: $1');
  if (turned === text) throw new Error('the spec has not two systems of units to turn round');
  return turned;
}

/** A demo car, on the paper it asks for or on another, its units in their order or turned round. */
export function demo(name: string, paper?: 'letter' | 'a4', order: UnitOrder = 'own'): Promise<ReadyCar> {
  const key = `${name} ${paper ?? ''} ${order}`;
  const known = read.get(key) ?? carFrom(withUnits(specText(name), order), paper).then(goodOf);
  read.set(key, known);
  return known;
}
