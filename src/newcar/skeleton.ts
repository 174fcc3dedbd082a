/** Filling a skeleton in with answers: what was not answered is left out and says so, never made up. */
import { stringify } from 'yaml';
import type { UnitSystem } from '../quantity/dimension';
import { parseQuantity } from '../quantity/parse';
import { printQuantity } from '../quantity/print';
import { quantity } from '../quantity/quantity';
import type { Question } from './questions';

/** Key of a question → what was answered. */
export type Answers = ReadonlyMap<string, string>;

/** A line of a skeleton that waits for an answer: `  capacity: <water-capacity>`. */
const waiting = /^(\s*)([\w-]+): <([a-z0-9-]+)>$/;

/** The end of a line that is left out if the answer to a question is nothing, or nothing of it: `  -  #? gasoline-share`. */
const onlyIf = / {2}#\? ([a-z0-9-]+)$/;

/** The keys of the questions a skeleton waits for, each once, in the order of the questions. */
export function questionsFor(skeleton: string, questions: readonly Question[]): readonly Question[] {
  const lines = skeleton.split('\n').map((line) => line.replace(onlyIf, ''));
  const keys = new Set(lines.flatMap((line) => waiting.exec(line)?.[3] ?? []));
  return questions.filter(({ key }) => keys.has(key));
}

/** The spec as far as it has been answered. */
export function fillIn(skeleton: string, questions: readonly Question[], answers: Answers): string {
  const byKey = new Map(questions.map((question) => [question.key, question]));
  const isNothing = (key: string | undefined) =>
    /^(0(?!\d)|(none|nothing)$)/i.test(answers.get(key ?? '') ?? '');
  const wanted = skeleton
    .split('\n')
    .filter((line) => !isNothing(onlyIf.exec(line)?.[1]))
    .map((line) => line.replace(onlyIf, ''));
  const lines = wanted.map((line) => {
    const [, indent = '', field = '', key = ''] = waiting.exec(line) ?? [];
    const question = byKey.get(key);
    if (question === undefined) return line;
    const answer = answers.get(key);
    if (answer !== undefined) return `${indent}${field}: ${written(question, answer)}`;
    const estimate = estimateFor(question, byKey, answers);
    if (estimate !== undefined)
      return `${indent}${field}: ${estimate}    # estimated, not measured: ${question.measure}`;
    return `${indent}# not answered: ${field}:    # measure: ${question.measure}`;
  });
  return lines.join('\n');
}

/** Words in quotes where YAML, in its older version too, would take them for something else: `yes`, `1:30`. */
function written({ answer }: Question, text: string): string {
  return answer === 'words' ? stringify(text, { lineWidth: 0, version: '1.1' }).trimEnd() : text;
}

/** The usual share of another amount, marked `about`; nothing where that is not known or no estimate is usual. */
function estimateFor(
  { about }: Question,
  byKey: ReadonlyMap<string, Question>,
  answers: Answers,
): string | undefined {
  const whole = about === undefined ? undefined : answers.get(about.of);
  const kind = about === undefined ? undefined : byKey.get(about.of)?.answer;
  if (about === undefined || whole === undefined || kind === undefined) return undefined;
  if (kind === 'words' || kind === 'date' || kind === 'number' || kind === 'one-of') return undefined;
  const read = parseQuantity(whole, kind);
  if (!read.ok) return undefined;
  const part = quantity(kind, read.quantity.si * about.share);
  const system = systemOf(answers);
  return `about ${printQuantity(part, { system, inFull: true, decimals: 2 })}`.replaceAll('\u00a0', ' ');
}

/** The units the keeper’s papers have first; metric until that is answered. */
export function systemOf(answers: Answers): UnitSystem {
  return systems.find((each) => each === answers.get('units')) ?? 'metric';
}

const systems: readonly UnitSystem[] = ['us', 'imperial', 'metric'];
