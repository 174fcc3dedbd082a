/**
 * Procedures broken on purpose, and whether the proof refuses them.
 *
 * A mutant that leaves the car, after the mutated procedure, in just the states that the right one leaves it in, and that
 * breaks nothing on the way, is the same procedure to the model: what was dropped or moved decides nothing. Every other
 * mutant is safety-relevant and ought to be refused.
 */
import type { PartId } from '../../src/car/car';
import type { Procedure, Procedures, Step } from '../../src/procedure/procedure';
import { type Chain, chain } from '../../src/proof/chain';
import type { Day } from '../../src/proof/day';
import { Experience } from '../../src/proof/experience';
import { missingCautions } from '../../src/proof/hazards';
import { type Model, modelOf } from '../../src/proof/model';
import { keyOf, type State } from '../../src/proof/state';
import { stepFaults } from '../../src/proof/stepFaults';
import { differences } from '../../src/proof/trace';
import { lowLevel } from '../../src/proof/truths';
import { valvesNotKnown } from '../../src/proof/valvesKnown';
import { demo, theDay } from './library';

export type MutantKind =
  | 'dropped'
  | 'swapped with the next'
  | 'repeated'
  | 'wrong valve'
  | 'caution missing'
  | 'wrong figure';

/** One broken procedure. */
export interface Mutant {
  readonly kind: MutantKind;
  readonly procedure: Procedure;
  readonly step: Step;
  /** The valve worked instead. */
  readonly valve?: PartId;
}

/** What became of a mutant. */
export type Fate =
  | { readonly is: 'refused'; readonly by: string }
  | { readonly is: 'same' }
  /** It passes and leaves other states; `differing` says in what. */
  | { readonly is: 'survived'; readonly differing: readonly string[] };

/** Every mutant of a procedure. */
export function mutantsOf(model: Model, procedure: Procedure): readonly Mutant[] {
  const { steps } = procedure;
  const at = (
    kind: MutantKind,
    index: number,
    changed: readonly Step[],
    valve?: PartId,
  ): readonly Mutant[] => {
    const step = steps[index];
    return step === undefined
      ? []
      : [
          {
            kind,
            procedure: { ...procedure, steps: changed },
            step,
            ...(valve === undefined ? {} : { valve }),
          },
        ];
  };
  const put = (index: number, removed: number, ...more: readonly Step[]) => [
    ...steps.slice(0, index),
    ...more,
    ...steps.slice(index + removed),
  ];
  return steps.flatMap((step, index) => {
    const next = steps[index + 1];
    return [
      ...at('dropped', index, put(index, 1)),
      ...(next === undefined ? [] : at('swapped with the next', index, put(index, 2, next, step))),
      ...at('repeated', index, put(index, 1, step, step)),
      ...neighbours(model, step).flatMap((valve) =>
        at('wrong valve', index, put(index, 1, { ...step, part: valve }), valve),
      ),
      ...(step.cautions.length === 0
        ? []
        : at('caution missing', index, put(index, 1, { ...step, cautions: [] }))),
      ...(typeof step.sets.minutes === 'number'
        ? at('wrong figure', index, put(index, 1, { ...step, sets: { ...step.sets, minutes: 0 } }))
        : []),
    ];
  });
}

/** Other valves at the same place; where there is none, the nearest one. */
function neighbours(model: Model, step: Step): readonly PartId[] {
  const { car } = model;
  if (
    step.part === undefined ||
    !(step.part in car.spec.valves) ||
    !['open', 'shut', 'crack'].includes(step.action)
  )
    return [];
  const here = car.places.get(car.parts.get(step.part)?.place ?? '');
  const same = (here?.parts ?? []).filter((id) => id !== step.part && id in car.spec.valves);
  if (same.length > 0 || here === undefined) return same;
  const far = (id: PartId) => {
    const there = car.places.get(car.parts.get(id)?.place ?? '');
    return there === undefined
      ? Number.POSITIVE_INFINITY
      : Math.hypot(there.backM - here.backM, there.rightM - here.rightM);
  };
  return model.valves
    .filter((id) => id !== step.part)
    .sort((a, b) => far(a) - far(b))
    .slice(0, 1);
}

/** A car’s procedures, ready to have mutants tried on them. */
export class Bench {
  readonly model: Model;
  readonly procedures: Procedures;
  private readonly experience: Experience;
  private readonly day: Day;
  private readonly right: Chain;
  private readonly known: ReadonlySet<string>;

  constructor(name: string) {
    const { car, procedures } = demo(name);
    this.model = modelOf(car);
    this.procedures = procedures;
    this.experience = new Experience(this.model);
    this.day = theDay();
    this.right = chain(this.experience, procedures, this.day);
    this.known = new Set(this.faults(this.right));
  }

  mutants(): readonly Mutant[] {
    return this.procedures
      .filter((procedure) => procedure.phase !== 'emergency')
      .flatMap((procedure) => mutantsOf(this.model, procedure));
  }

  /** First the mutated procedure alone, from each of its beginnings; only if it ends otherwise the whole day. */
  fate(mutant: Mutant): Fate {
    const [fault] = stepFaults(this.model, [mutant.procedure]);
    if (fault !== undefined) return { is: 'refused', by: fault.message };
    const alone = this.alone(mutant);
    if (alone.is !== 'survived') return alone;
    const procedures = this.procedures.map((procedure) =>
      procedure.id === mutant.procedure.id ? mutant.procedure : procedure,
    );
    const day = chain(this.experience, procedures, this.day);
    const [first] = this.faults(day).filter((each) => !this.known.has(each));
    return first === undefined ? alone : { is: 'refused', by: first };
  }

  private alone({ procedure }: Mutant): Fate {
    const { model, experience } = this;
    const runs = this.right.of.get(procedure.id) ?? [];
    const ends = new Map<string, State>();
    const rightEnds = new Map(runs.map((run) => [keyOf(run.trace.end), run.trace.end]));
    let cautions: Fate | undefined;
    for (const run of runs) {
      const trace = experience.leg(procedure, run.trace.start);
      const cut =
        run.brokenOffAt === undefined
          ? -1
          : trace.moments.findIndex((moment) => moment.hitches.some((hitch) => hitch.what === lowLevel));
      const moments = cut < 0 ? trace.moments : trace.moments.slice(0, cut + 1);
      for (const [index, moment] of moments.entries()) {
        const [breach] = trace.found(index);
        if (breach !== undefined) return { is: 'refused', by: `${breach.rule.id}: ${breach.what}` };
        const hitch = moment.hitches.find(
          (each) => each.kind !== 'idle' && !(run.brokenOffAt !== undefined && each.what === lowLevel),
        );
        if (hitch !== undefined) return { is: 'refused', by: `${moment.step.id}: ${hitch.what}` };
      }
      if (run.brokenOffAt === undefined) {
        const [breach] = experience.brokenAtEnd(
          procedure,
          trace.end,
          this.day.parkedAfter.has(procedure.id),
        ).answer;
        if (breach !== undefined) return { is: 'refused', by: `${breach.rule.id}: ${breach.what}` };
      }
      const end = moments.at(-1)?.after ?? trace.start;
      ends.set(keyOf(end), end);
      const [caution] = missingCautions(experience, { runs: [{ ...run, procedure, trace }] }, this.day);
      if (caution !== undefined) cautions = { is: 'refused', by: caution.message };
    }
    if (cautions !== undefined) return cautions;
    const odd = [...ends].filter(([key]) => !rightEnds.has(key)).map(([, state]) => state);
    if (odd.length === 0) return { is: 'same' };
    const [like] = rightEnds.values();
    return {
      is: 'survived',
      differing:
        like === undefined
          ? []
          : [...new Set(odd.flatMap((state) => nearest(model, state, [...rightEnds.values()])))],
    };
  }

  private faults(day: Chain): readonly string[] {
    return [
      ...day.runs.flatMap((run) => [
        ...run.breaches.map((breach) => `${run.procedure.id}: ${breach.rule.id}: ${breach.what}`),
        ...run.snags.map((snag) => `${run.procedure.id}: ${snag.step.id}: ${snag.hitch.what}`),
      ]),
      ...valvesNotKnown(this.model, day).map((finding) => finding.message),
      ...day.unreached.map((procedure) => `${procedure.id} is not reached`),
    ];
  }
}

/** In what a state differs from the one of a list that it is most like. */
function nearest(model: Model, state: State, others: readonly State[]): readonly string[] {
  const all = others.map((other) => differences(model, other, state));
  return all.reduce((best, each) => (each.length < best.length ? each : best), all[0] ?? []);
}
