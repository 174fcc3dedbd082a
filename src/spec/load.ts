/** Spec text in, a checked spec out, or everything that is wrong with it at once. */
import { bad, type Diagnostic, good, hasErrors, type Outcome } from '../diagnostic/diagnostic';
import { hiddenKeys, problemsOf } from './problems';
import { checkReferences } from './references';
import { type CarSpec, carSpecSchema } from './schema/carSpec';
import { checkBlends, checkTanks } from './sense/amounts';
import { checkChanges } from './sense/changes';
import type { SenseCheck } from './sense/finding';
import { checkFluids } from './sense/fluids';
import { checkFuelWays } from './sense/fuelWays';
import { checkJumps, checkLineEnds, checkOnLines } from './sense/lines';
import { checkNeeds } from './sense/needs';
import { checkOrders } from './sense/orders';
import { checkPlaces } from './sense/places';
import { checkPressures } from './sense/pressures';
import { checkSafetyValve } from './sense/safetyValve';
import { readSource, type SpecSource } from './source';
import { checkNames } from './uniqueness';

/** A spec that can be relied on, and the file it came from. */
export interface LoadedSpec {
  readonly spec: CarSpec;
  readonly source: SpecSource;
}

const senseChecks: readonly SenseCheck[] = [
  checkNeeds,
  checkPressures,
  checkSafetyValve,
  checkTanks,
  checkBlends,
  checkOrders,
  checkPlaces,
  checkOnLines,
  checkLineEnds,
  checkJumps,
  checkFluids,
  checkFuelWays,
  checkChanges,
];

/**
 * Read and check a spec. `libraryLiquids` are the keys of the liquids that come with the program.
 *
 * Faults of form hide the rest; faults in fields, names and references are all reported together; what cannot be so
 * is looked for once every field can be read.
 */
export function loadSpec(text: string, file: string, libraryLiquids: readonly string[]): Outcome<LoadedSpec> {
  const read = readSource(text, file);
  if (!read.ok) return bad(inFileOrder(read.problems));
  const source = read.value;
  const parsed = carSpecSchema.safeParse(source.data);
  const problems = [
    ...(parsed.success ? [] : problemsOf(parsed.error.issues, source, carSpecSchema)),
    ...hiddenKeys(source, carSpecSchema),
    ...checkNames(source),
    ...checkReferences(source, libraryLiquids),
  ];
  if (!parsed.success) return bad(inFileOrder(problems));
  const spec = parsed.data;
  const all = inFileOrder([...problems, ...senseChecks.flatMap((check) => check(spec, source))]);
  return hasErrors(all) ? bad(all) : good({ spec, source }, all);
}

function inFileOrder(problems: readonly Diagnostic[]): Diagnostic[] {
  return [...problems].sort(
    (a, b) => (a.at?.line ?? 0) - (b.at?.line ?? 0) || (a.at?.column ?? 0) - (b.at?.column ?? 0),
  );
}
