/** What a rule is: one thing that must never be so on the car, or never be done without knowing something. */
import type { PartId } from '../../car/car';
import type { DiagnosticCode } from '../../diagnostic/catalogue';
import type { FactKey } from '../../procedure/facts';
import type { Procedure, Step } from '../../procedure/procedure';
import type { Flows } from '../flows';
import type { Model } from '../model';
import { isLit, type State } from '../state';

/** A step as the rules look at it. */
export interface StepView {
  readonly model: Model;
  readonly flows: Flows;
  /** All that a rule about steps may ask of the procedure: what it finds is remembered by that. */
  readonly procedure: Pick<Procedure, 'phase'>;
  readonly step: Step;
  readonly before: State;
  readonly during: State;
  readonly after: State;
  readonly lighting: readonly PartId[];
  readonly fedBefore: readonly PartId[];
  readonly fedAfter: readonly PartId[];
  /** Burners that burn for certain after the step and did not before. */
  readonly newlyLit: readonly PartId[];
  /** Main burners to which fuel comes after the step and did not before. */
  readonly newlyFedMains: readonly PartId[];
}

/** The end of a procedure as the rules look at it. */
export interface EndView {
  readonly model: Model;
  readonly flows: Flows;
  readonly procedure: Procedure;
  readonly state: State;
  /** The car is left for good after this procedure. */
  readonly parked: boolean;
}

/** The parts of a car a rule is about. */
export type RuleGroup = 'water' | 'fuel' | 'steam' | 'people' | 'completeness';

/**
 * A rule. The texts are plain words, lower case, without a full stop. A check returns the state that makes the step
 * unsafe, in plain words, or nothing.
 */
export interface Rule {
  /** Its name, by which a car may overrule it. */
  readonly id: string;
  readonly code: DiagnosticCode;
  readonly group: RuleGroup;
  /** The rule itself. */
  readonly title: string;
  /** Why it is a rule. */
  readonly reason: string;
  /** What would mend a breach. */
  readonly mend: string;
  /** What the rule asks whether somebody knows; the model keeps only knowledge that some rule asks for. */
  readonly asks: readonly FactKey[];
  /** It can be broken by a step that only looks, listens or says something; the others are not asked then. */
  readonly onQuietSteps?: true;
  /**
   * It says how a procedure has to end, and what breaks it does harm only if what follows does not put it right. A slip
   * against it is stepped on to where it does.
   */
  readonly tidy?: true;
  readonly appliesTo: (model: Model) => boolean;
  readonly atStep?: (view: StepView) => string | undefined;
  readonly atEnd?: (view: EndView) => string | undefined;
  readonly ofCar?: (model: Model) => string | undefined;
}

/** Every car. */
export const everyCar = (): boolean => true;

/** What the view of a step is made from. */
export type Seen = Pick<
  StepView,
  'model' | 'flows' | 'procedure' | 'step' | 'before' | 'during' | 'after' | 'lighting'
>;

/** The view of a step. What a rule asks for is worked out when the first one asks. */
export class ViewOfStep implements StepView {
  readonly model: Model;
  readonly flows: Flows;
  readonly procedure: Pick<Procedure, 'phase'>;
  readonly step: Step;
  readonly before: State;
  readonly during: State;
  readonly after: State;
  readonly lighting: readonly PartId[];
  private lit: readonly PartId[] | undefined;
  private fedMains: readonly PartId[] | undefined;
  private was: readonly PartId[] | undefined;
  private is: readonly PartId[] | undefined;

  constructor({ model, flows, procedure, step, before, during, after, lighting }: Seen) {
    this.model = model;
    this.flows = flows;
    this.procedure = procedure;
    this.step = step;
    this.before = before;
    this.during = during;
    this.after = after;
    this.lighting = lighting;
  }

  get fedBefore(): readonly PartId[] {
    this.was ??= this.flows.fed(this.before);
    return this.was;
  }

  get fedAfter(): readonly PartId[] {
    this.is ??= this.flows.fed(this.after);
    return this.is;
  }

  get newlyLit(): readonly PartId[] {
    this.lit ??= this.model.burners.filter(
      (id) => isLit(this.model, this.after, id) && !isLit(this.model, this.before, id),
    );
    return this.lit;
  }

  get newlyFedMains(): readonly PartId[] {
    this.fedMains ??=
      this.fedAfter === this.fedBefore
        ? []
        : this.model.mains.filter((id) => this.fedAfter.includes(id) && !this.fedBefore.includes(id));
    return this.fedMains;
  }
}
