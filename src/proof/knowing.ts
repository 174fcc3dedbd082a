/** Telling what is wrong on the car from what somebody merely does not know. */
import type { Model } from './model';
import { type StepView, ViewOfStep } from './rules/rule';
import { igniterBits, type State } from './state';
import { yes } from './values';

/** A state in which everything is known that can be. */
export function allKnown(model: Model, state: State): State {
  const knowing = state.draft();
  knowing.setFrom(model.factsFrom, yes);
  // of several pilots or switches each is known by itself
  const seen = model.slots.fact.get('igniter-proven');
  if (seen !== undefined) knowing.set(seen, igniterBits(model, undefined));
  return knowing;
}

/** A step as it looks when everything is known. */
export function viewAllKnown(view: StepView): StepView {
  const { model, flows, procedure, step, lighting } = view;
  const after = allKnown(model, view.after);
  return new ViewOfStep({
    model,
    flows,
    procedure,
    step,
    lighting,
    before: allKnown(model, view.before),
    during: view.during === view.after ? after : allKnown(model, view.during),
    after,
  });
}
