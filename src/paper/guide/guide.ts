/** What the papers say beside procedures: the docent’s guide, use, running, upkeep. Read once, said of each car. */
import type * as z from 'zod';
import type { CarFigures } from '../../calc/figures/carFigures';
import type { Car } from '../../car/car';
import { bad, type Diagnostic, good, hasErrors, type Outcome } from '../../diagnostic/diagnostic';
import { textsIn } from '../../language/dialect';
import type { Language } from '../../language/language';
import { faultOfText, Writer } from '../../language/wording';
import { type Placed, readForm } from '../../procedure/library';
import type { ConditionForm, SelectorForm } from '../../procedure/libraryForm';
import { NameCheck } from '../../procedure/nameCheck';
import type { PrintStyle } from '../../procedure/valuePrinter';
import type { SpecPath } from '../../spec/source';
import type { Phrases } from '../phrase';
import { crewForm, docentForm, readingsForm, runningForm, subjectsForm, upkeepForm, useForm } from './forms';
import { unknownOilingPoints } from './oilingPoints';
import { readingValues } from './readings';
import { ropeValues } from './rope';
import { Speaker, type Spoken } from './speak';
import { guideValues } from './values';

interface Forms {
  readonly docent: z.output<typeof docentForm>;
  readonly readings: z.output<typeof readingsForm>;
  readonly use: z.output<typeof useForm>;
  readonly running: z.output<typeof runningForm>;
  readonly upkeep: z.output<typeof upkeepForm>;
  readonly crew: z.output<typeof crewForm>;
  readonly subjects: z.output<typeof subjectsForm>;
}

/** The prose files, read and checked. */
export type GuideFiles = { readonly [K in keyof Forms]: Placed<Forms[K]> };

/** What they say of one car. */
export type Guide = { readonly [K in keyof Forms]: Spoken<Forms[K]> };

/** Keys of the step library that prose files name. */
export interface LibraryKeys {
  readonly procedures: readonly string[];
  readonly cautions: readonly string[];
  /** Signs of faults. */
  readonly faults: readonly string[];
  /** Numbers of the safety signs that can be drawn. */
  readonly signs: readonly string[];
  /** Parts of a start-up. */
  readonly timeline: readonly string[];
}

/** Read the prose files. `texts` are named relative to `shared`; `keys` are those of the step library. */
export function readGuide(texts: ReadonlyMap<string, string>, keys: LibraryKeys): Outcome<GuideFiles> {
  const docent = readFile(texts, 'docent', docentForm);
  const readings = readFile(texts, 'readings', readingsForm);
  const use = readFile(texts, 'use', useForm);
  const running = readFile(texts, 'running', runningForm);
  const upkeep = readFile(texts, 'upkeep', upkeepForm);
  const crew = readFile(texts, 'crew', crewForm);
  const subjects = readFile(texts, 'subjects', subjectsForm);
  if (!docent.ok || !readings.ok || !use.ok || !running.ok || !upkeep.ok || !crew.ok || !subjects.ok)
    return bad(
      [docent, readings, use, running, upkeep, crew, subjects].flatMap((each) =>
        each.ok ? [] : each.problems,
      ),
    );
  const roads = running.value.form.road.map(({ id }) => id);
  const jobs = upkeep.value.form.jobs.map(({ id }) => id);
  const problems = [
    ...unknownKeys(docent.value, crew.value, keys),
    ...unknownSubjects(subjects.value, keys, roads, jobs),
  ];
  if (problems.length > 0) return bad(problems);
  return good({
    docent: docent.value,
    readings: readings.value,
    use: use.value,
    running: running.value,
    upkeep: upkeep.value,
    crew: crew.value,
    subjects: subjects.value,
  });
}

function unknownKeys(
  docent: Placed<Forms['docent']>,
  crew: Placed<Forms['crew']>,
  keys: LibraryKeys,
): readonly Diagnostic[] {
  const check = new NameCheck();
  for (const [at, { emergency }] of docent.form.trouble.entries())
    check.known(docent, ['trouble', at, 'emergency'], emergency, keys.procedures, 'procedure');
  for (const [at, { sign }] of docent.form.signs.entries())
    check.known(docent, ['signs', at, 'sign'], sign, keys.signs, 'safety sign');
  for (const [at, { plans }] of docent.form['run-sheet'].entries())
    if (plans !== undefined)
      check.known(docent, ['run-sheet', at, 'plans'], plans, keys.timeline, 'part of a start-up');
  for (const [at, { sign }] of crew.form['burner-front'].stand.entries())
    if (sign !== undefined)
      check.known(crew, ['burner-front', 'stand', at, 'sign'], sign, keys.signs, 'safety sign');
  const { hurts, start, stop } = crew.form.visiting;
  for (const [at, id] of hurts.entries())
    check.known(crew, ['visiting', 'hurts', at], id, keys.cautions, 'caution');
  for (const [at, id] of start.entries())
    check.known(crew, ['visiting', 'start', at], id, keys.procedures, 'procedure');
  check.known(crew, ['visiting', 'stop'], stop, keys.procedures, 'procedure');
  check.known(crew, ['dark', 'shut'], crew.form.dark.shut, keys.procedures, 'procedure');
  return check.problems;
}

function unknownSubjects(
  subjects: Placed<Forms['subjects']>,
  { procedures, faults }: LibraryKeys,
  roads: readonly string[],
  jobs: readonly string[],
): readonly Diagnostic[] {
  const check = new NameCheck();
  for (const [at, { subject, at: places }] of subjects.form.subjects.entries()) {
    if (subjects.form.subjects.findIndex((other) => other.subject === subject) !== at)
      check.twice(subjects, ['subjects', at, 'subject'], subject);
    for (const [index, place] of places.entries()) {
      const path = ['subjects', at, 'at', index];
      if ('procedure' in place) check.known(subjects, path, place.procedure, procedures, 'procedure');
      if ('fault' in place) check.known(subjects, path, place.fault, faults, 'sign of a fault');
      if ('road' in place) check.known(subjects, path, place.road, roads, 'page of the road');
      if ('job' in place) check.known(subjects, path, place.job, jobs, 'job of the keeper');
    }
  }
  return check.problems;
}

function readFile<T extends z.ZodType>(
  texts: ReadonlyMap<string, string>,
  name: string,
  form: T,
): Outcome<Placed<z.output<T>>> {
  const file = `shared/${name}.yaml`;
  const text = texts.get(`${name}.yaml`);
  if (text === undefined)
    return bad([
      {
        code: 'shared-absent',
        severity: 'error',
        message: `\`${file}\` is not there`,
        mend: 'put it back as it came with the program',
      },
    ]);
  const read = readForm(text, file, form, name);
  if (!read.ok) return read;
  const check = new NameCheck();
  checkNames(read.value, read.value.form, [], check);
  return hasErrors(check.problems) ? bad(check.problems) : read;
}

/** Every condition and selector names what exists, and every text can be filled in. */
function checkNames(placed: Placed<unknown>, value: unknown, path: SpecPath, check: NameCheck): void {
  if (typeof value === 'string') {
    const fault = faultOfText(value);
    if (fault !== undefined)
      check.fault(
        placed,
        path,
        'library-words',
        `the text cannot be read: ${fault}`,
        'see that every `{{` has its `}}`',
      );
    return;
  }
  if (Array.isArray(value)) {
    for (const [at, each] of value.entries()) checkNames(placed, each, [...path, at], check);
    return;
  }
  if (typeof value !== 'object' || value === null) return;
  for (const [key, each] of Object.entries(value)) {
    const here = [...path, key];
    if (key === 'when') check.condition(placed, here, each as ConditionForm | undefined);
    else if (key === 'for' || key === 'of') check.selector(placed, here, each as SelectorForm | undefined);
    else checkNames(placed, each, here, check);
  }
}

/** What the words of the prose are made with, beside the car. */
export interface GuideStyle {
  readonly print: PrintStyle;
  readonly phrases: Phrases;
  readonly language: Language;
}

/** Fields of each file that hold keys, choices and what a keeper wrote, which no language says otherwise. */
const unprinted: { readonly [K in keyof Forms]: readonly string[] } = {
  docent: ['waits', 'until', 'phases', 'emergency', 'written', 'around'],
  readings: [],
  use: [],
  running: ['id'],
  upkeep: ['id', 'job', 'chart', 'who', 'boiler', 'state', 'kind', 'written', 'called-for'],
  crew: ['hurts', 'stop', 'start', 'shut', 'phases'],
  subjects: ['procedure', 'fault', 'road', 'job', 'section'],
};

/** Say everything of one car. */
export function guideFor(
  car: Car,
  figures: CarFigures,
  files: GuideFiles,
  style: GuideStyle,
): Outcome<Guide> {
  const values = {
    ...guideValues(car, figures, style),
    rope: ropeValues(car, files.docent.form.distances, style.phrases),
  };
  const readings = readingValues(car, figures, style.phrases);
  const speaker = new Speaker(car, new Writer({}), values, { ...style, readings });
  const say = <T>({ form, spot }: Placed<T>, keys: readonly string[]) =>
    speaker.say<T>({ form: textsIn(style.language.texts, form, keys), spot });
  const guide: Guide = {
    docent: say(files.docent, unprinted.docent),
    readings: say(files.readings, unprinted.readings),
    use: say(files.use, unprinted.use),
    running: say(files.running, unprinted.running),
    upkeep: say(files.upkeep, unprinted.upkeep),
    crew: say(files.crew, unprinted.crew),
    subjects: say(files.subjects, unprinted.subjects),
  };
  const problems: readonly Diagnostic[] = [
    ...speaker.problems,
    ...unknownOilingPoints(
      car,
      files.upkeep.form.oiling.map(({ id }) => id),
    ),
  ];
  return hasErrors(problems) ? bad(problems) : good(guide);
}
