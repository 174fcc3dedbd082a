/** Spec text in, a checked spec out, or everything that is wrong with it at once. */
import { bad, type Diagnostic, good, hasErrors, type Outcome } from '../diagnostic/diagnostic';
import { hiddenKeys, problemsOf } from './problems';
import { checkReferences } from './references';
import { type CarSpec, carSpecSchema } from './schema/carSpec';
import { checkBlends, checkTanks } from './sense/amounts';
import { checkBlowDown } from './sense/blowDown';
import { checkBurnsOn } from './sense/burnsOn';
import { checkChanges } from './sense/changes';
import { checkColdLevel } from './sense/coldLevel';
import { checkColdTest } from './sense/coldTest';
import { checkCushion } from './sense/cushion';
import type { SenseCheck } from './sense/finding';
import { checkFluids } from './sense/fluids';
import { checkFuelTanks, checkFuelWays } from './sense/fuelWays';
import { checkLevelHeights } from './sense/levelHeights';
import { checkJumps, checkLineEnds, checkOnLines } from './sense/lines';
import { checkNeeds } from './sense/needs';
import { checkOiling } from './sense/oiling';
import { checkOrders } from './sense/orders';
import { checkPlaces } from './sense/places';
import { checkPressures } from './sense/pressures';
import { checkSafetyValve } from './sense/safetyValve';
import { checkTankEnds } from './sense/tankEnds';
import { readSource, type SpecSource } from './source';
import { checkKeys, checkLabels } from './uniqueness';

/** A spec that can be relied on, and the file it came from. */
export interface LoadedSpec {
  readonly spec: CarSpec;
  readonly source: SpecSource;
}

/** Checks of figures and dates, each of which needs nothing but itself. */
const figureChecks: readonly SenseCheck[] = [
  checkPressures,
  checkBlowDown,
  checkTanks,
  checkTankEnds,
  checkBlends,
  checkOrders,
  checkBurnsOn,
  checkColdTest,
  checkCushion,
  checkColdLevel,
  checkPlaces,
  checkChanges,
  checkOiling,
];

/** Checks of the plant as a whole, which would cry wolf where a name leads nowhere. */
const plantChecks: readonly SenseCheck[] = [
  checkNeeds,
  checkLevelHeights,
  checkOnLines,
  checkLineEnds,
  checkJumps,
  checkFluids,
  checkFuelTanks,
  checkFuelWays,
  checkSafetyValve,
];

/**
 * Read and check a spec. `libraryLiquids` are the keys of the liquids that come with the program.
 *
 * Faults of form hide the rest. Faults in fields, names and references are all reported together. Figures that
 * contradict each other are looked for once every field can be read, contradictions in the plant once every name
 * leads to its part as well. Problems come in the order of the file.
 */
export function loadSpec(text: string, file: string, libraryLiquids: readonly string[]): Outcome<LoadedSpec> {
  const read = readSource(text, file);
  if (!read.ok) return bad(inFileOrder(read.problems));
  const source = read.value;
  const parsed = carSpecSchema.safeParse(source.data);
  const names = [...checkKeys(source), ...checkReferences(source, libraryLiquids)];
  const fields = [
    ...(parsed.success ? [] : problemsOf(parsed.error.issues, source, carSpecSchema)),
    ...hiddenKeys(source, carSpecSchema),
    ...checkLabels(source),
  ];
  if (!parsed.success) return bad(inFileOrder([...fields, ...names]));
  const spec = parsed.data;
  const checks = hasErrors(names) ? figureChecks : [...figureChecks, ...plantChecks];
  const problems = inFileOrder([...fields, ...names, ...checks.flatMap((check) => check(spec, source))]);
  return hasErrors(problems) ? bad(problems) : good({ spec, source }, problems);
}

function inFileOrder(problems: readonly Diagnostic[]): Diagnostic[] {
  return [...problems].sort(
    (a, b) => (a.at?.line ?? 0) - (b.at?.line ?? 0) || (a.at?.column ?? 0) - (b.at?.column ?? 0),
  );
}
