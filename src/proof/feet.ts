/**
 * Order for the feet: where steps only look, and none needs what another finds out, they are put in the order in which a
 * person walking once round the car comes to them.
 */
import type { Procedure, Procedures, Step } from '../procedure/procedure';
import { isQuiet } from './apply';
import type { Model } from './model';
import { Round, shortestWalk, walkLength } from './walk';

/** What walking is saved in one procedure. */
export interface Saving {
  readonly procedure: Procedure;
  readonly beforeM: number;
  readonly afterM: number;
}

/** Steps that stand together and may change places among themselves. */
interface Block {
  readonly from: number;
  readonly to: number;
}

/** How many of a place’s steps are critical, by step. */
export type Critical = (procedure: Procedure, step: Step) => boolean;

/** Runs of steps that only look. A step that says to do it again, or last, stays where it is by standing outside such a run. */
function blocksOf(procedure: Procedure): readonly Block[] {
  const blocks: Block[] = [];
  let from = 0;
  procedure.steps.forEach((step, index) => {
    if (isFree(step)) return;
    if (index - from > 1) blocks.push({ from, to: index });
    from = index + 1;
  });
  if (procedure.steps.length - from > 1) blocks.push({ from, to: procedure.steps.length });
  return blocks;
}

/** Actions that have their moment; looking, checking and reading at a place can wait their turn. */
const timed: ReadonlySet<Step['action']> = new Set(['call', 'stand', 'write']);

/**
 * A helper stands elsewhere, and saves the driver no walking. What lights the main fuel is seen at the moment it is let on, and not
 * when the feet come by.
 */
function isFree(step: Step): boolean {
  return (
    isQuiet(step) &&
    !timed.has(step.action) &&
    step.who !== 'helper' &&
    !step.proves.includes('igniter-proven')
  );
}

/** Put the free steps of a procedure in walking order; the same procedure if there is nothing to gain. */
export function inWalkingOrder(model: Model, procedure: Procedure, critical: Critical): Procedure {
  const round = new Round(model.car);
  let steps = procedure.steps;
  for (const block of blocksOf(procedure)) steps = reorder(model, round, procedure, steps, block, critical);
  return steps === procedure.steps ? procedure : { ...procedure, steps };
}

/** Steps at one place, kept together. Steps without a place go with the step before them. */
interface Stop {
  readonly steps: Step[];
  readonly spot: number | undefined;
}

function stopsOf(model: Model, round: Round, steps: readonly Step[]): readonly Stop[] {
  const stops: Stop[] = [];
  for (const step of steps) {
    const place = model.car.places.get(step.place ?? '');
    const spot = place === undefined ? undefined : round.spotOf(place);
    const there =
      spot === undefined
        ? stops.at(-1)
        : stops.find(
            (stop) =>
              stop.spot !== undefined && Math.abs(stop.spot - spot) < 1e-9 && samePlace(stop.steps, step),
          );
    if (there === undefined) stops.push({ steps: [step], spot });
    else there.steps.push(step);
  }
  return stops;
}

function samePlace(steps: readonly Step[], step: Step): boolean {
  return steps.some((other) => other.place === step.place);
}

function reorder(
  model: Model,
  round: Round,
  procedure: Procedure,
  all: readonly Step[],
  block: Block,
  critical: Critical,
): readonly Step[] {
  const steps = all.slice(block.from, block.to);
  const stops = stopsOf(model, round, steps);
  const fixed = stops[0]?.spot === undefined ? stops.slice(0, 1) : [];
  const free = stops.slice(fixed.length);
  if (free.length < 2) return all;
  const from = spotBefore(model, round, all, block.from);
  const to = spotAfter(model, round, all, block.to);
  const spots = free.map((stop) => stop.spot ?? 0);
  const weights = free.map((stop) => stop.steps.filter((step) => critical(procedure, step)).length);
  const walk = shortestWalk(round, spots, from, to, weights);
  const wasM = walkLength(
    round,
    steps.flatMap((step) => spotsOf(model, round, step)),
    from,
    to,
  );
  if (walk.lengthM >= wasM - 0.01) return all;
  const ordered = [...fixed, ...walk.order.flatMap((index) => free[index] ?? [])].flatMap((stop) =>
    criticalFirst(procedure, stop.steps, critical),
  );
  return [...all.slice(0, block.from), ...ordered, ...all.slice(block.to)];
}

/** At one place critical steps come first, unless they look at one part: then the library’s order tells a story. */
function criticalFirst(procedure: Procedure, steps: readonly Step[], critical: Critical): readonly Step[] {
  const parts = new Set(steps.map((step) => step.part));
  if (parts.size < steps.length) return steps;
  return [
    ...steps.filter((step) => critical(procedure, step)),
    ...steps.filter((step) => !critical(procedure, step)),
  ];
}

function spotsOf(model: Model, round: Round, step: Step): readonly number[] {
  const place = model.car.places.get(step.place ?? '');
  return place === undefined ? [] : [round.spotOf(place)];
}

function spotBefore(model: Model, round: Round, steps: readonly Step[], index: number): number | undefined {
  return steps
    .slice(0, index)
    .flatMap((step) => spotsOf(model, round, step))
    .at(-1);
}

function spotAfter(model: Model, round: Round, steps: readonly Step[], index: number): number | undefined {
  return steps.slice(index).flatMap((step) => spotsOf(model, round, step))[0];
}

/** How far one walks for a procedure. */
export function walkingOf(model: Model, procedure: Procedure): number {
  const round = new Round(model.car);
  return walkLength(
    round,
    procedure.steps.flatMap((step) => spotsOf(model, round, step)),
    undefined,
    undefined,
  );
}

/**
 * Put every procedure in walking order, except where `stillSafe` says that the new order breaks something the old one
 * does not; those stay as they are.
 */
export function forTheFeet(
  model: Model,
  procedures: Procedures,
  critical: Critical,
  stillSafe: (changed: Procedures) => boolean,
): { readonly procedures: Procedures; readonly savings: readonly Saving[] } {
  const candidates = procedures.map((procedure) =>
    procedure.phase === 'emergency' ? procedure : inWalkingOrder(model, procedure, critical),
  );
  const changed = candidates.flatMap((candidate, index) => (candidate === procedures[index] ? [] : [index]));
  let now = procedures;
  if (changed.length > 0 && stillSafe(candidates)) now = candidates;
  else {
    for (const index of changed) {
      const one = now.map((procedure, at) => (at === index ? (candidates[index] ?? procedure) : procedure));
      if (stillSafe(one)) now = one;
    }
  }
  const savings = procedures.flatMap((procedure, index) => {
    const after = now[index];
    return after === undefined || after === procedure
      ? []
      : [{ procedure: after, beforeM: walkingOf(model, procedure), afterM: walkingOf(model, after) }];
  });
  return { procedures: now, savings };
}
