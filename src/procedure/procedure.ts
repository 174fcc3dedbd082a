/**
 * Procedures as the papers and the proof see them: the library's steps, expanded for one car.
 */

import type { PartId } from '../car/car';
import type { Spot } from '../diagnostic/diagnostic';
import type { SignalWord } from '../language/signal';
import type { Action } from '../spec/schema/change';
import type { Beginning, Ending } from './circumstances';

/** The parts of a day with the car, in the order they come; emergencies stand apart. */
export const phases = [
  'reading-in',
  'walk-round',
  'water',
  'level',
  'fuel',
  'air',
  'pilot',
  'soak',
  'main-burner',
  'raising-steam',
  'moving-off',
  'running',
  'short-stop',
  'taking-water',
  'taking-fuel',
  'coming-in',
  'shut-down',
  'blow-down',
  'overnight',
  'lay-up',
  'emergency',
] as const;

/** What tells a driver of trouble: nothing that he can name, a gauge, his eyes, ears or nose, or how the car goes. */
export const senses = ['doubt', 'gauge', 'sight', 'sound', 'smell', 'road'] as const;

/** One of them. */
export type Sense = (typeof senses)[number];

/** One phase. */
export type Phase = (typeof phases)[number];

/** A caution from the library, worded for the car. */
export interface Caution {
  /** Its key in the library. */
  readonly id: string;
  readonly signal: SignalWord;
  readonly hazard: string;
  readonly consequence: string;
  readonly avoidance: string;
  /** All three in a dozen words, for cards and for saying it again. */
  readonly short: string;
  /** What to do alone, in half a dozen words, where a card has said `short` before. */
  readonly again: string;
  /** Numbers of the safety signs of ISO 7010 that go with it. */
  readonly signs: readonly string[];
}

/** Where a step came from. */
export interface StepOrigin {
  /** `library`, or `car` when the spec's `changes` put it there. */
  readonly kind: 'library' | 'car';
  readonly at: Spot;
  /** The keeper's reason, for a step of the car's own. */
  readonly because?: string;
}

/** One step, worded with this car's names, places, turns and figures. Text is plain text. */
export interface Step {
  /** Unique in its procedure. A library step expanded over several parts is `step-id/part-id`. */
  readonly id: string;
  readonly action: Action;
  /** The part it is done to, if it is done to one. */
  readonly part?: PartId;
  /** Key of the place where the person stands or reaches to. */
  readonly place?: string;
  readonly who: 'driver' | 'helper' | 'either';
  /** The action, one imperative sentence. */
  readonly say: string;
  /** What is seen when it is done; empty if the action is its own proof. */
  readonly result: string;
  /** A word more; empty if none. */
  readonly remark: string;
  /** How a card of troubles says it in one row with its neighbours; empty for what stands by itself. */
  readonly row: string;
  readonly cautions: readonly Caution[];
  /** What is known once the step is done, for the proof: `level-known`, `brakes-tried`… */
  readonly proves: readonly string[];
  /** The settings of the model that the step changes beyond its action and part, for the proof. */
  readonly sets: Readonly<Record<string, string | number | boolean>>;
  /** Left on dash cards; false for steps that only the manual needs. */
  readonly onCard: boolean;
  /** Left undone where it cannot be reached without danger: without it the procedure has to end as well. */
  readonly ifSafe: boolean;
  readonly origin: StepOrigin;
}

/** A sign that leads to an emergency, worded for the car. */
export interface Sign {
  readonly by: Sense;
  /** What is read, seen, heard, smelt or felt, in half a dozen words. */
  readonly say: string;
}

/** A procedure for this car. */
export interface Procedure {
  readonly id: string;
  readonly title: string;
  readonly phase: Phase;
  /**
   * The procedures of this car at whose end it may begin; the first is the usual one. The first of the
   * day begins where the day before ended. Empty for emergencies, which may begin anywhere.
   */
  readonly after: readonly string[];
  /** What it is for, a sentence or two. */
  readonly purpose: string;
  /** What is seen when it has gone well; a sentence. */
  readonly good: string;
  /** What can go wrong; sentences. */
  readonly wrong: readonly string[];
  readonly cautions: readonly Caution[];
  readonly steps: readonly Step[];
  /** For an emergency: what is seen that calls for it, and what must not be done. */
  readonly seen: string;
  /** For an emergency: the signs by which it is looked up. */
  readonly toldBy: readonly Sign[];
  readonly never: readonly string[];
  /** For an emergency: what is so on the car when it can begin, and what must be so when it has ended. */
  readonly beginsWhile: readonly Beginning[];
  readonly leaves: readonly Ending[];
  /** Library changes this car makes that took effect here, with reasons. */
  readonly changes: readonly { readonly words: string; readonly because: string }[];
}

/** Procedures in the order of a day, then the emergencies. */
export type Procedures = readonly Procedure[];
