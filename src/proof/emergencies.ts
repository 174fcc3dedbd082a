/**
 * Emergencies held against the rules: each is stepped through from every step of every procedure from which it can begin,
 * before it, half done and done. None does harm of its own, each leaves the car as it says it does, and where the fire is
 * lit again after one, what lights it can be carried out from there, and what was broken off be gone on with.
 */
import type { Procedure, Procedures } from '../procedure/procedure';
import { type Chain, type Run, type StruckAt, snags } from './chain';
import { type Breach, brokenAt, type Found } from './check';
import { areSo, type NotSo, notSo } from './circumstances';
import type { Day, WayBack } from './day';
import { deedOf, type Experience, Passed, Question } from './experience';
import { halfDone } from './halfDone';
import { allKnown, viewAllKnown } from './knowing';
import { type Deed, Lessons } from './lessons';
import { at, type State, situationOf } from './state';
import type { Trace } from './trace';
import { lowLevel } from './truths';
import { steam } from './values';

/** An emergency from one of its beginnings, or what follows one. */
export interface EmergencyRun extends Run {
  readonly struckAt: StruckAt;
  /** What could not be reached without danger was left undone. */
  readonly unreached: boolean;
  /** What the emergency says it leaves, and does not. */
  readonly leftUndone: readonly NotSo[];
}

type Wrong = Pick<EmergencyRun, 'breaches' | 'snags' | 'leftUndone'>;

const nothingWrong: Wrong = { breaches: [], snags: [], leftUndone: [] };

/** Runs of the emergencies, and of what lights the fire again after them, everything being known. */
export function emergencyRuns(
  experience: Experience,
  procedures: Procedures,
  chain: Chain,
  day: Day,
): readonly EmergencyRun[] {
  return new Trouble(experience, procedures, chain, day).runs();
}

interface Start {
  readonly state: State;
  readonly run: Run;
  readonly struckAt: StruckAt;
}

/** What going through a procedure comes to in all states that are alike to it. */
interface Passage {
  /** Nothing is wrong with any step, and everything is so at the end that should be. */
  readonly sound: boolean;
  readonly done: Deed;
}

class Trouble {
  private readonly broken: Question<readonly Found[]>;
  private readonly passages = new Map<Procedure, Lessons<Passage>>();
  private readonly rests = new Map<string, Procedure>();
  private readonly reachedOf = new Map<Procedure, Procedure>();
  /** Procedures that may be gone on with in their middle: for these it counts how far they had come. */
  private readonly goneOnWith: ReadonlySet<string | undefined>;

  constructor(
    private readonly experience: Experience,
    private readonly procedures: Procedures,
    private readonly chain: Chain,
    private readonly day: Day,
  ) {
    const { book } = experience;
    this.broken = new Question((view) => brokenAt(book, viewAllKnown(view)));
    this.goneOnWith = new Set([...day.litAgain.values()].flat().map(({ restOf }) => restOf));
  }

  runs(): readonly EmergencyRun[] {
    const starts = this.starts();
    const { model, flows } = this.experience;
    return this.procedures
      .filter((procedure) => procedure.phase === 'emergency')
      .flatMap((procedure) =>
        starts
          .filter(({ state }) => areSo(model, flows, state, procedure.beginsWhile))
          .flatMap((start) => [
            ...this.from(procedure, start),
            ...this.withoutWhatIsUnreached(procedure, start),
          ]),
      );
  }

  /** Every situation of a day in which there is a flame or steam, each from the first place where it comes up. */
  private starts(): readonly Start[] {
    const { model, flows } = this.experience;
    const found = new Map<string, Start>();
    const offer = (run: Run, done: number, when: StruckAt['when'], seen: State) => {
      if (!areSo(model, flows, seen, ['flame-or-steam'])) return;
      const { procedure } = run;
      const key = `${situationOf(model, seen)} ${this.goneOnWith.has(procedure.id) ? done : ''}`;
      if (!found.has(key))
        found.set(key, { state: allKnown(model, seen), run, struckAt: { procedure, done, when } });
    };
    for (const run of this.chain.runs) {
      run.trace.moments.forEach((moment, index) => {
        // what is so before any other step is so after the one before it
        if (index === 0) offer(run, index, 'before', moment.before);
        const half = halfDone(model, moment);
        if (half !== undefined) offer(run, index, 'half done', half);
        offer(run, index + 1, 'done', moment.after);
      });
    }
    return [...found.values()];
  }

  private from(procedure: Procedure, start: Start): readonly EmergencyRun[] {
    const run = this.passed(procedure, procedure, start);
    return [run, ...this.litAgain(run)];
  }

  /** The emergency with only what can always be reached: it has to end as well. */
  private withoutWhatIsUnreached(procedure: Procedure, start: Start): readonly EmergencyRun[] {
    const reached = this.reached(procedure);
    if (reached === procedure) return [];
    return [{ ...this.passed(procedure, reached, start), unreached: true }];
  }

  private reached(procedure: Procedure): Procedure {
    const known = this.reachedOf.get(procedure);
    if (known !== undefined) return known;
    const steps = procedure.steps.filter(({ ifSafe }) => !ifSafe);
    const reached = steps.length === procedure.steps.length ? procedure : { ...procedure, steps };
    this.reachedOf.set(procedure, reached);
    return reached;
  }

  /** What lights the fire again, one procedure after the other, and the rest of what was broken off. */
  private litAgain(run: EmergencyRun): readonly EmergencyRun[] {
    const { struckAt, procedure, trace } = run;
    const { model, flows } = this.experience;
    const way = this.day.litAgain
      .get(procedure.id)
      ?.find(
        (each) =>
          areSo(model, flows, trace.start, each.while) &&
          (each.brokenOffIn?.includes(struckAt.procedure.id) ?? true),
      );
    if (way === undefined) return [];
    const runs: EmergencyRun[] = [];
    const goOn = (whole: Procedure, steps: Procedure) => {
      const last = runs.at(-1) ?? run;
      runs.push(this.passed(whole, steps, { state: allKnown(model, last.trace.end), run: last, struckAt }));
    };
    for (const each of way.by.flatMap((id) => this.procedures.find((other) => other.id === id) ?? []))
      goOn(each, each);
    const rest = this.restOf(way, struckAt, (runs.at(-1) ?? run).trace.end);
    if (rest !== undefined) goOn(rest.whole, rest.steps);
    return runs;
  }

  private restOf(
    { restOf, atLatestFrom }: WayBack,
    { procedure, done }: StruckAt,
    state: State,
  ): { readonly whole: Procedure; readonly steps: Procedure } | undefined {
    const whole = this.procedures.find(({ id }) => id === restOf);
    if (whole === undefined) return undefined;
    if (procedure.id === whole.id) {
      const latest = whole.steps.findIndex(({ id }) => id === atLatestFrom);
      const from = latest < 0 ? done : Math.min(done, latest);
      const key = `${whole.id} ${from}`;
      const steps = this.rests.get(key) ?? { ...whole, steps: whole.steps.slice(from) };
      this.rests.set(key, steps);
      return { whole, steps };
    }
    const leftOut =
      this.day.leftOutWithSteamUp.has(whole.id) &&
      at(state, this.experience.model.slots.steam) === steam.working;
    return leftOut ? undefined : { whole, steps: whole };
  }

  /** A procedure gone through; the states of its steps are looked at one by one only where something is wrong. */
  private passed(
    procedure: Procedure,
    steps: Procedure,
    { state, run: follows, struckAt }: Start,
  ): EmergencyRun {
    const { sound, done } = this.passage(procedure, steps, state);
    const trace = sound
      ? new Passed(this.experience, steps, state, done.doneTo(state))
      : this.experience.leg(steps, state);
    return {
      procedure,
      follows,
      trace,
      brokenOffAt: undefined,
      struckAt,
      unreached: false,
      ...(sound ? nothingWrong : this.wrongIn(procedure, trace)),
    };
  }

  private passage(procedure: Procedure, steps: Procedure, state: State): Passage {
    const lessons = this.passages.get(steps) ?? new Lessons<Passage>();
    this.passages.set(steps, lessons);
    return lessons.about(state, (start) => {
      const trace = this.experience.walk(steps, start);
      const { breaches, snags, leftUndone } = this.wrongIn(procedure, trace);
      const wrong = breaches.length + snags.length + leftUndone.length;
      return { sound: wrong === 0, done: deedOf(trace.end) };
    }).answer;
  }

  /** What breaks a rule, does not go as written or is not left as the procedure says. */
  private wrongIn(procedure: Procedure, trace: Trace): Wrong {
    const { model, flows } = this.experience;
    return {
      breaches: this.breaches(procedure, trace),
      snags: snags(trace).filter(({ hitch }) => hitch.what !== lowLevel),
      leftUndone: notSo(model, flows, trace.end, procedure.leaves),
    };
  }

  private breaches(procedure: Procedure, trace: Trace): readonly Breach[] {
    const { model } = this.experience;
    return trace.moments.flatMap((moment) =>
      this.experience.ask(this.broken, procedure, moment).answer.map((found) => ({
        ...found,
        procedure,
        step: moment.step,
        state: allKnown(model, moment.after),
      })),
    );
  }
}
