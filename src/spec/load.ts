/** Spec text in, a checked spec out, or everything that is wrong with it at once. */
import { bad, type Diagnostic, good, hasErrors, type Outcome } from '../diagnostic/diagnostic';
import { problemsOf } from './problems';
import { checkNames, checkReferences } from './references';
import { type CarSpec, carSpecSchema } from './schema/carSpec';
import { checkBlends, checkOrders, checkPlaces, checkTanks } from './sense/amounts';
import type { SenseCheck } from './sense/finding';
import { checkFluids, checkJumps, checkLineEnds, checkOnLines } from './sense/lines';
import { checkChanges, checkNeeds } from './sense/needs';
import { checkPressures } from './sense/pressures';
import { readSource, type SpecSource } from './source';

/** A spec that can be relied on, and the file it came from. */
export interface LoadedSpec {
  readonly spec: CarSpec;
  readonly source: SpecSource;
}

const senseChecks: readonly SenseCheck[] = [
  checkNeeds, checkPressures, checkTanks, checkBlends, checkOrders, checkPlaces, checkOnLines, checkLineEnds, checkJumps, checkFluids, checkChanges,
];

/**
 * Read and check a spec. `libraryLiquids` are the keys of the liquids that come with the program.
 *
 * Faults of form hide the rest; faults in fields and references are all reported together; what cannot be so is
 * looked for once every field can be read.
 */
export function loadSpec(text: string, file: string, libraryLiquids: readonly string[]): Outcome<LoadedSpec> {
  const read = readSource(text, file);
  if (!read.ok) return read;
  const source = read.value;
  const parsed = carSpecSchema.safeParse(source.data);
  if (!parsed.success) return bad(inFileOrder(problemsOf(parsed.error.issues, source, carSpecSchema)));
  const spec = parsed.data;
  const problems = inFileOrder([
    ...checkNames(spec, source),
    ...checkReferences(spec, source.data, source, libraryLiquids),
    ...senseChecks.flatMap((check) => check(spec, source)),
  ]);
  return hasErrors(problems) ? bad(problems) : good({ spec, source }, problems);
}

function inFileOrder(problems: readonly Diagnostic[]): Diagnostic[] {
  return [...problems].sort((a, b) => (a.at?.line ?? 0) - (b.at?.line ?? 0) || (a.at?.column ?? 0) - (b.at?.column ?? 0));
}
