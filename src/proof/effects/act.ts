/** A step being done: what it was before, what it becomes, and what does not go as the step says. */
import type { PartId } from '../../car/car';
import type { Step } from '../../procedure/procedure';
import type { Flows } from '../flows';
import type { Model } from '../model';
import type { Draft, State } from '../state';

/**
 * Why a step does not go as it is written.
 *
 * `cannot`: it cannot be done, or does nothing of what it is for. `contrary`: what is to be seen after it is not there.
 * `idle`: it is so already. The person doing it notices each of the three.
 */
export interface Hitch {
  readonly kind: 'cannot' | 'contrary' | 'idle';
  /** A clause in plain words. */
  readonly what: string;
}

/** A step in the doing. `draft` is changed by the effects; `before` never. */
export interface Act {
  readonly model: Model;
  readonly flows: Flows;
  readonly step: Step;
  readonly before: State;
  readonly draft: Draft;
  readonly hitches: Hitch[];
  /** Burners lit in this very step. */
  readonly lighting: PartId[];
  /** Things that are so only while the step is done. */
  during: State | undefined;
}

/** What an action does to the car by itself. */
export type Effect = (act: Act) => void;

/** Set a byte, if the part has one. */
export function put(act: Act, slot: number | undefined, value: number): void {
  if (slot !== undefined) act.draft.set(slot, value);
}

/** Note that the step cannot be done. */
export function cannot(act: Act, what: string): void {
  act.hitches.push({ kind: 'cannot', what });
}

/** Note that it is so already. */
export function idle(act: Act, what: string): void {
  act.hitches.push({ kind: 'idle', what });
}

/** The name of a part as the papers have it, with its tag. */
export function nameOf(model: Model, id: PartId | undefined): string {
  const part = id === undefined ? undefined : model.car.parts.get(id);
  if (part === undefined) return id ?? 'it';
  return part.tag === undefined ? `the ${part.name}` : `the ${part.name} (${part.tag})`;
}
