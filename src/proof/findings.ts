/** What the proof found, told to a keeper. */
import type { Diagnostic } from '../diagnostic/diagnostic';
import { meaningOf } from '../procedure/circumstances';
import type { Procedure, Step } from '../procedure/procedure';
import { type Chain, cameBy, type Run } from './chain';
import type { Breach, Snag } from './check';
import { nameOf } from './effects/act';
import type { EmergencyRun } from './emergencies';
import type { Escape, NoWayOut } from './escape';
import type { WhenInStep } from './halfDone';
import type { Isolation } from './isolation';
import type { Model } from './model';
import { at, burnsOn, flamesIn, of, type State } from './state';
import { levels, shut, steams } from './values';

/** A step as findings name it: the procedure’s title, its number and its words. */
export function stepWords(procedure: Procedure, step: Step): string {
  return `${procedure.title}, step ${procedure.steps.indexOf(step) + 1}, “${step.say}”`;
}

/** Rules broken by the car itself. */
export function carFindings(model: Model, breaches: readonly Breach[]): readonly Diagnostic[] {
  return breaches.map(({ rule, what }) => ({
    code: rule.code,
    severity: 'error' as const,
    at: model.car.spotOf('boiler'),
    message: what,
    expected: rule.title,
    mend: rule.mend,
    notes: [`The rule \`${rule.id}\` is there because ${rule.reason}.`],
  }));
}

/** Everything that breaks a rule or does not go as written in a day, each told once however it is come to. */
export function dayFindings(model: Model, chain: Chain): readonly Diagnostic[] {
  const found = new Map<string, Diagnostic>();
  for (const run of chain.runs) keepOf(found, model, run, () => cameFrom(chain, run));
  const unreached = chain.unreached.map(
    (procedure): Diagnostic => ({
      code: 'proof-order',
      severity: 'error',
      ...spot(procedure.steps[0]),
      message: `nothing leads to “${procedure.title}”`,
      expected: 'a procedure that it can follow',
      mend: 'name under `after` what it follows, or give it something to follow',
    }),
  );
  return [...found.values(), ...unreached];
}

/** What is wrong with the emergencies and with what is done after them, each told once, with one place where it begins. */
export function emergencyFindings(model: Model, runs: readonly EmergencyRun[]): readonly Diagnostic[] {
  const found = new Map<string, Diagnostic>();
  for (const run of runs) {
    const struck = () => [struckWords(run), ...(run.unreached ? [leftWords] : [])];
    keepOf(found, model, run, struck);
    for (const { ending, what } of run.leftUndone)
      keep(found, what, undefined, run, () => ({
        code: 'proof-emergency-leaves',
        severity: 'error',
        ...spot(run.procedure.steps[0]),
        message: `${run.procedure.title}: when all is done ${what}`,
        expected: meaningOf[ending],
        mend: 'give it the step that is missing, or the car the valve or lock',
        notes: [...struck(), standing(model, run.trace.end)],
      }));
  }
  return [...found.values()];
}

const leftWords = 'What cannot be reached without danger is left undone there.';

function struckWords({ struckAt: { procedure, done, when } }: EmergencyRun): string {
  const step = procedure.steps[when === 'done' ? done - 1 : done];
  const where = step === undefined ? procedure.title : stepWords(procedure, step);
  return `It is so when the trouble comes ${whenWords[when]} ${where}.`;
}

const whenWords: Readonly<Record<WhenInStep, string>> = {
  before: 'before',
  'half done': 'in the middle of',
  done: 'after',
};

function keepOf(found: Map<string, Diagnostic>, model: Model, run: Run, how: () => readonly string[]): void {
  for (const breach of run.breaches)
    keep(found, breach.rule.id, breach.step, run, () => breachFinding(model, run, breach, how()));
  for (const snag of run.snags)
    keep(found, snag.hitch.kind, snag.step, run, () => snagFinding(model, run, snag, how()));
}

function keep(
  found: Map<string, Diagnostic>,
  what: string,
  step: Step | undefined,
  run: Run,
  make: () => Diagnostic,
): void {
  const key = `${run.procedure.id} ${step?.id ?? ''} ${what}`;
  if (!found.has(key)) found.set(key, make());
}

function spot(step: Step | undefined): Pick<Diagnostic, 'at'> {
  return step === undefined ? {} : { at: step.origin.at };
}

function breachFinding(
  model: Model,
  run: Run,
  { rule, step, what, state }: Breach,
  how: readonly string[],
): Diagnostic {
  return {
    code: rule.code,
    severity: 'error',
    ...spot(step),
    message:
      step === undefined ? `${run.procedure.title}: ${what}` : `${stepWords(run.procedure, step)}: ${what}`,
    expected: rule.title,
    mend: rule.mend,
    notes: [
      `The rule \`${rule.id}\` is there because ${rule.reason}.`,
      ...how,
      ...(state === undefined ? [] : [standing(model, state)]),
    ],
  };
}

function snagFinding(model: Model, run: Run, { step, hitch }: Snag, how: readonly string[]): Diagnostic {
  const cannot = hitch.kind === 'cannot';
  return {
    code: cannot ? 'proof-cannot-do' : 'proof-cannot-see',
    severity: 'error',
    ...spot(step),
    message: `${stepWords(run.procedure, step)}: ${cannot ? 'this cannot be done' : 'what is to be seen is not there'}, because ${hitch.what}`,
    ...(cannot || step.result === '' ? {} : { expected: step.result }),
    mend: cannot
      ? 'put before it the step that makes it possible, or leave it out'
      : 'put before it the step that brings this about, or correct what the step expects',
    notes: [
      ...how,
      standing(model, run.trace.moments.find((moment) => moment.step === step)?.before ?? run.trace.start),
    ],
  };
}

/** How it is come to, where it is not so on every way. */
function cameFrom(chain: Chain, run: Run): readonly string[] {
  const all = chain.of.get(run.procedure.id) ?? [];
  const before = cameBy(run);
  if (before.length === 0 || all.length < 2) return [];
  return [`It is so when the procedure follows “${before.join('”, and that “')}”.`];
}

/** How the car stands, in a sentence. */
export function standing(model: Model, state: State): string {
  const { car, slots } = model;
  const flames = flamesIn(model, state).map(
    (id) => `${nameOf(model, id)} ${burnsOn(model, state, id) ? 'burning on' : 'alight'}`,
  );
  const odd = model.valves.filter(
    (id) => (of(state, slots.valve, id) === shut) !== (car.spec.valves[id]?.parked === 'shut'),
  );
  const valves = odd.map(
    (id) => `${nameOf(model, id)} ${of(state, slots.valve, id) === shut ? 'shut' : 'open'}`,
  );
  return [
    `The car then stands thus: ${flames.length === 0 ? 'no flame' : flames.join(', ')}`,
    `steam ${steams[at(state, slots.steam)]}`,
    `level ${levels[at(state, slots.level)]}`,
    `${valves.length === 0 ? 'every valve as parked' : `not as parked: ${valves.join(', ')}`}.`,
  ].join('; ');
}

/** Steps without a way out, and what of the car cannot be cut off. */
export function wayOutFindings(
  model: Model,
  wayOut: Procedure | undefined,
  found: Escape | undefined,
): readonly Diagnostic[] {
  if (wayOut === undefined || found === undefined) {
    return [
      {
        code: 'proof-no-way-out',
        severity: 'error',
        message: 'there is no emergency procedure that shuts everything',
        mend: 'add it to the library, and name it in `day.yaml` under `way-out`',
      },
    ];
  }
  const causes = [...new Set(found.failures.map((failure) => failure.what))];
  const failures = causes.flatMap((what) =>
    noWayOut(
      wayOut,
      found.failures.filter((failure) => failure.what === what),
    ),
  );
  const seated = found.far.filter((far) => far.distanceM === 0);
  const far = seated.map(
    ({ procedure, step, act }): Diagnostic => ({
      code: 'proof-first-act-far',
      severity: 'error',
      at: step.origin.at,
      message: `${stepWords(procedure, step)}: the first act of “${wayOut.title}”, “${act.say}”, is not reached from the seat`,
      expected: 'a first act within the driver’s reach',
      mend: `move what is worked there, or begin with what is reached: ${nameOf(model, act.part)}`,
    }),
  );
  return [...failures, ...far];
}

/** As many leaks as a keeper will read on the terminal; the manual has them all. */
const shownLeaks = 3;

/** Steps from which one thing is left undone, told as one: where it begins, and from how many steps it is so. */
function noWayOut(wayOut: Procedure, failures: readonly NoWayOut[]): readonly Diagnostic[] {
  const [first] = failures;
  if (first === undefined) return [];
  const titles = [...new Set(failures.map(({ procedure }) => procedure.title))];
  return [
    {
      code: 'proof-no-way-out',
      severity: 'error',
      at: first.step.origin.at,
      message: `${stepWords(first.procedure, first.step)}, ${first.when}: after “${wayOut.title}” from the seat ${first.what}`,
      expected: 'every flame out, every fuel tank cut from every burner, throttle shut, the car standing',
      mend: 'give the car a valve that is reached from the seat, or the emergency the act that is missing',
      notes: [
        `It is so from ${failures.length === 1 ? 'this place only' : `${failures.length} places in ${titles.map((title) => `“${title}”`).join(', ')}`}.`,
      ],
    },
  ];
}

/** One remark for everything that no valve cuts off. */
export function isolationFindings(model: Model, found: readonly Isolation[]): readonly Diagnostic[] {
  const open = found.filter((each) => each.valves === undefined);
  if (open.length === 0) return [];
  return [
    {
      code: 'proof-no-isolation',
      severity: 'remark',
      at: model.car.spotOf('lines'),
      message: `${open.length} of ${found.length} places that can leak have no valve that cuts them off`,
      expected: 'a valve next to each tank and next to the boiler',
      mend: 'for these, what feeds them has to be emptied or let down; the table of what to shut says which',
      notes: [
        ...open
          .slice(0, shownLeaks)
          .map(
            ({ leak, sources }) =>
              `${leakWords(model, leak)}: fed by ${sources.map((id) => nameOf(model, id)).join(' and ')}.`,
          ),
        ...(open.length > shownLeaks
          ? [`The manual lists all ${open.length}, in its chapter on valves and leaks.`]
          : []),
      ],
    },
  ];
}

/** What leaks, in words. */
export function leakWords(model: Model, leak: Isolation['leak']): string {
  return 'part' in leak
    ? nameOf(model, leak.part)
    : `the pipe from ${nameOf(model, leak.pipe.from)} to ${nameOf(model, leak.pipe.to)} (${leak.pipe.carries})`;
}
