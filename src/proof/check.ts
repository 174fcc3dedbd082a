/** Holding a trace against the rules. */
import type { Procedure, Step } from '../procedure/procedure';
import { isQuiet } from './apply';
import type { Hitch } from './effects/act';
import type { Model } from './model';
import { rules } from './rules';
import type { EndView, Rule, StepView } from './rules/rule';
import type { State } from './state';

/** A rule that is broken. */
export interface Found {
  readonly rule: Rule;
  /** The state that makes it unsafe, a clause in plain words. */
  readonly what: string;
}

/** A rule broken at a step, at the end of a procedure, or by the car itself. */
export interface Breach extends Found {
  readonly procedure: Procedure | undefined;
  readonly step: Step | undefined;
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

/** What a step breaks. */
export function brokenAt({ atStep, atQuietStep }: RuleBook, view: StepView): readonly Found[] {
  const found: Found[] = [];
  (isQuiet(view.step) ? atQuietStep : atStep).forEach((rule) => {
    const what = rule.atStep?.(view);
    if (what !== undefined) found.push({ rule, what });
  });
  return found;
}

/** What the end of a procedure breaks. */
export function brokenAtEnd({ atEnd }: RuleBook, view: EndView): readonly Found[] {
  return atEnd.flatMap((rule) => {
    const what = rule.atEnd?.(view);
    return what === undefined ? [] : [{ rule, what }];
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
