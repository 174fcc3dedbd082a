/** Holding a trace against the rules. */
import type { Procedure, Step } from '../procedure/procedure';
import { isQuiet } from './apply';
import type { Hitch } from './effects/act';
import type { Flows } from './flows';
import type { Model } from './model';
import { rules } from './rules';
import { type Rule, ViewOfStep } from './rules/rule';
import type { Moment, Trace } from './simulate';
import type { State } from './state';

/** A rule broken at a step, at the end of a procedure, or by the car itself. */
export interface Breach {
  readonly rule: Rule;
  readonly procedure: Procedure | undefined;
  readonly step: Step | undefined;
  /** The state that makes it unsafe, a clause in plain words. */
  readonly what: string;
  readonly state: State | undefined;
}

/** A step that does not go as written. */
export interface Snag {
  readonly procedure: Procedure;
  readonly step: Step;
  readonly hitch: Hitch;
}

/** The rules that apply to a car, less those it overrules. */
export interface RuleBook {
  readonly atStep: readonly Rule[];
  /** Those of them that a step can break which only looks or says something. */
  readonly atQuietStep: readonly Rule[];
  readonly atEnd: readonly Rule[];
  readonly ofCar: readonly Rule[];
}

/** Choose the rules for a car. */
export function ruleBook(model: Model, overruled: ReadonlySet<string> = new Set()): RuleBook {
  const apply = rules.filter((rule) => !overruled.has(rule.id) && rule.appliesTo(model));
  return {
    atStep: apply.filter((rule) => rule.atStep !== undefined),
    atQuietStep: apply.filter((rule) => rule.atStep !== undefined && rule.onQuietSteps === true),
    atEnd: apply.filter((rule) => rule.atEnd !== undefined),
    ofCar: apply.filter((rule) => rule.ofCar !== undefined),
  };
}

/** A book without the rules that only say how a procedure has to end, for slips. */
export function harmOnly(book: RuleBook): RuleBook {
  return { ...book, atEnd: book.atEnd.filter((rule) => rule.tidy !== true) };
}

/** The first thing a step breaks, or everything it breaks. */
export function breachesAt(
  model: Model,
  flows: Flows,
  book: RuleBook,
  procedure: Procedure,
  moment: Moment,
  firstOnly = false,
): readonly Breach[] {
  const view = new ViewOfStep({ model, flows, procedure, ...moment });
  const found: Breach[] = [];
  for (const rule of isQuiet(moment.step) ? book.atQuietStep : book.atStep) {
    const what = rule.atStep?.(view);
    if (what === undefined) continue;
    found.push({ rule, procedure, step: moment.step, what, state: moment.after });
    if (firstOnly) break;
  }
  return found;
}

/** What the end of a procedure breaks. */
export function breachesAtEnd(
  model: Model,
  flows: Flows,
  book: RuleBook,
  procedure: Procedure,
  state: State,
  parked: boolean,
): readonly Breach[] {
  const view = { model, flows, procedure, state, parked };
  return book.atEnd.flatMap((rule) => {
    const what = rule.atEnd?.(view);
    return what === undefined ? [] : [{ rule, procedure, step: procedure.steps.at(-1), what, state }];
  });
}

/** What the car itself breaks. */
export function breachesOfCar(model: Model, book: RuleBook): readonly Breach[] {
  return book.ofCar.flatMap((rule) => {
    const what = rule.ofCar?.(model);
    return what === undefined
      ? []
      : [{ rule, procedure: undefined, step: undefined, what, state: undefined }];
  });
}

/** Everything a trace breaks. */
export function breachesOf(
  model: Model,
  flows: Flows,
  book: RuleBook,
  trace: Trace,
  parked: boolean,
): readonly Breach[] {
  return [
    ...trace.moments.flatMap((moment) => breachesAt(model, flows, book, trace.procedure, moment)),
    ...breachesAtEnd(model, flows, book, trace.procedure, trace.end, parked),
  ];
}

/** Every step of a trace that does not go as written. */
export function snagsOf(trace: Trace): readonly Snag[] {
  return trace.moments.flatMap(({ step, hitches }) =>
    hitches.map((hitch) => ({ procedure: trace.procedure, step, hitch })),
  );
}
