/** What a slip is, and what can come of one. */
import type { PartId } from '../car/car';
import type { Procedure, Step } from '../procedure/procedure';
import type { Hitch } from './effects/act';
import type { Rule } from './rules/rule';

/** The kinds of slip. */
export const slipKinds = [
  'left out',
  'done twice',
  'done too early',
  'done to the neighbour',
  'found wrong',
] as const;

/** One kind of slip. */
export type SlipKind = (typeof slipKinds)[number];

/** One slip. */
export interface Slip {
  readonly kind: SlipKind;
  readonly procedure: Procedure;
  /** The step that is slipped; nothing for a valve found wrong. */
  readonly step: Step | undefined;
  /** The valve that is worked instead, or that was found wrong. */
  readonly valve: PartId | undefined;
}

/** Where something came out. */
export interface Where {
  readonly procedure: Procedure;
  readonly step: Step;
}

/** What comes of a slip. */
export type Outcome =
  | {
      readonly class: 'caught at once' | 'caught later';
      readonly by: Where;
      readonly hitch: Hitch;
      readonly stepsLater: number;
    }
  /** A rule is broken before anybody notices. `blind` if nothing is wrong on the car yet, and somebody acts without knowing. */
  | {
      readonly class: 'critical';
      readonly rule: Rule;
      readonly what: string;
      readonly blind: boolean;
      readonly at: Where;
      readonly stepsLater: number;
    }
  /** Nothing unsafe comes of it. `lasting` if the car still stands otherwise when the day has come round. */
  | { readonly class: 'harmless'; readonly lasting: boolean };

/** A slip tried. */
export interface TriedSlip {
  readonly slip: Slip;
  readonly outcome: Outcome;
}
