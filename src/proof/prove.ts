/** The whole proof of a car: its procedures held against its own model, and what only such a model can tell. */
import type { Car } from '../car/car';
import type { Diagnostic } from '../diagnostic/diagnostic';
import type { Procedure, Procedures, Step } from '../procedure/procedure';
import { type Chain, chain as chainOf } from './chain';
import { breachesOfCar, ruleBook } from './check';
import type { Day } from './day';
import { emergencyRuns } from './emergencies';
import { type Escape, wayOutOf } from './escape';
import { Experience } from './experience';
import { forTheFeet, type Saving } from './feet';
import { carFindings, dayFindings, emergencyFindings, isolationFindings, wayOutFindings } from './findings';
import { missingCautions } from './hazards';
import type { Isolation } from './isolation';
import { type Leaks, leaksOf } from './leaks';
import { type Model, modelOf } from './model';
import { type Overruled, overrulesOf } from './overrules';
import type { TriedSlip } from './slip';
import { trySlips } from './slips';
import { type DayStatistics, type Statistics, statisticsOf } from './statistics';
import { stepFaults } from './stepFaults';
import {
  type CriticalStep,
  criticalSteps,
  type IsolationRow,
  type TwoPersonTask,
  twoPersonTasks,
  type ValveTable,
  valveTable,
  type WayOutAct,
  wayOutActs,
} from './tables';
import type { Trace } from './trace';
import { valvesNotKnown } from './valvesKnown';

/** What a proof is made with. */
export interface ProveOptions {
  readonly day: Day;
  /** Put steps that only look in walking order; done unless it is said to be left. */
  readonly walkingOrder?: boolean;
}

/** Everything the proof yields. */
export interface Proof {
  /** Errors stop the making of papers. */
  readonly diagnostics: readonly Diagnostic[];
  /** The procedures in the order in which they are to be printed. */
  readonly procedures: Procedures;
  readonly model: Model;
  readonly chain: Chain;
  /** One trace of each procedure that is reached, from the state it is usually come to in. */
  readonly traces: readonly Trace[];
  readonly overruled: readonly Overruled[];
  readonly slips: readonly TriedSlip[];
  readonly escape: Escape | undefined;
  readonly isolations: readonly Isolation[];
  readonly savings: readonly Saving[];
  readonly tables: {
    readonly valves: ValveTable;
    readonly isolation: readonly IsolationRow[];
    readonly critical: readonly CriticalStep[];
    readonly wayOut: readonly WayOutAct[];
    readonly twoPersons: readonly TwoPersonTask[];
  };
  readonly statistics: Statistics;
}

/** Procedures in the order in which they will be printed, and what was learnt in finding it. */
export interface Ordered {
  readonly car: Car;
  readonly day: Day;
  readonly procedures: Procedures;
  readonly savings: readonly Saving[];
  readonly experience: Experience;
  readonly overruled: readonly Overruled[];
  readonly problems: readonly Diagnostic[];
}

/**
 * A day stepped through in the printed order: everything that papers show of the proof, before it is known whether all is right, but
 * for leaks, which hang on the car alone.
 */
export interface Walked extends Omit<Proof, 'diagnostics' | 'isolations' | 'tables' | 'statistics'> {
  readonly ordered: Ordered;
  readonly tables: Omit<Proof['tables'], 'isolation'>;
  readonly statistics: DayStatistics;
}

/** Prove the procedures of a car. Pure: the same car, procedures and day give the same proof. */
export function prove(car: Car, given: Procedures, options: ProveOptions): Proof {
  const walked = walkThrough(inOrder(car, given, options));
  return judge(walked, leaksOf(walked.model));
}

/** The first part of a proof: the order of the steps. */
export function inOrder(car: Car, given: Procedures, { day, walkingOrder = true }: ProveOptions): Ordered {
  const { overruled, problems } = overrulesOf(car);
  const model = modelOf(car);
  const book = ruleBook(model, new Set(overruled.map(({ rule }) => rule.id)));
  const experience = new Experience(model, book);
  const walked = walkingOrder ? walk(experience, given, day) : { procedures: given, savings: [] };
  return { car, day, ...walked, experience, overruled, problems };
}

/** The second part: the day gone through in that order, with slips of the hand and the way out from everywhere. */
export function walkThrough(ordered: Ordered): Walked {
  const { day, procedures, savings, experience, overruled } = ordered;
  const { model, book } = experience;
  const chain = chainOf(experience, procedures, day);
  const slips = trySlips(experience, procedures, day, chain);
  const wayOut = wayOutIn(procedures, day);
  const found = wayOut === undefined ? undefined : wayOutOf(experience, chain, wayOut);
  const rules = new Set([...book.atStep, ...book.atEnd, ...book.ofCar]).size;
  return {
    ordered,
    procedures,
    model,
    chain,
    overruled,
    slips,
    escape: found,
    savings,
    traces: procedures.flatMap((procedure) => chain.of.get(procedure.id)?.[0]?.trace ?? []),
    tables: {
      valves: valveTable(model, procedures, chain),
      critical: criticalSteps(slips),
      wayOut: wayOutActs(model, wayOut),
      twoPersons: twoPersonTasks(model, procedures),
    },
    statistics: statisticsOf(model, rules, chain, slips, found),
  };
}

/** The last part: what is wrong, on the day itself and in every emergency that can break into it. */
export function judge({ ordered, ...walked }: Walked, leaks: Leaks): Proof {
  const { day, experience, problems } = ordered;
  const { model, book } = experience;
  const { procedures, chain, escape: ways } = walked;
  const { isolations, table, count } = leaks;
  const wayOut = wayOutIn(procedures, day);
  return {
    ...walked,
    isolations,
    tables: { ...walked.tables, isolation: table },
    statistics: { ...walked.statistics, ...count },
    diagnostics: [
      ...problems,
      ...carFindings(model, breachesOfCar(model, book)),
      ...stepFaults(model, procedures),
      ...dayFindings(model, chain),
      ...emergencyFindings(model, emergencyRuns(experience, procedures, chain, day)),
      ...missingCautions(experience, chain, day),
      ...valvesNotKnown(model, chain),
      ...wayOutFindings(model, wayOut, ways),
      ...isolationFindings(model, isolations),
    ],
  };
}

/** The emergency that shuts everything. */
function wayOutIn(procedures: Procedures, day: Day): Procedure | undefined {
  return procedures.find((procedure) => procedure.id === day.wayOut);
}

/** Put the procedures in walking order, as far as nothing that was right becomes wrong by it. */
function walk(
  experience: Experience,
  given: Procedures,
  day: Day,
): { readonly procedures: Procedures; readonly savings: readonly Saving[] } {
  const before = chainOf(experience, given, day);
  const faults = faultsOf(before);
  const critical = criticalIn(trySlips(experience, given, day, before, new Set(['left out'])));
  const stillSafe = (changed: Procedures) =>
    [...faultsOf(chainOf(experience, changed, day))].every((fault) => faults.has(fault));
  return forTheFeet(experience.model, given, critical, stillSafe);
}

function faultsOf(chain: Chain): ReadonlySet<string> {
  return new Set(
    chain.runs.flatMap(({ procedure, breaches, snags }) => [
      ...breaches.map(({ rule, step }) => `${procedure.id} ${step?.id ?? ''} ${rule.id}`),
      ...snags.map(({ step, hitch }) => `${procedure.id} ${step.id} ${hitch.what}`),
    ]),
  );
}

function criticalIn(slips: readonly TriedSlip[]): (procedure: Procedure, step: Step) => boolean {
  const found = new Set(criticalSteps(slips).map(({ procedure, step }) => `${procedure} ${step}`));
  return (procedure, step) => found.has(`${procedure.id} ${step.id}`);
}
