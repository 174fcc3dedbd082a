/** Asking the questions of a new car, one after the other. */
import { type Asking, judge } from '../newcar/answer';
import type { Kept } from '../newcar/kept';
import type { Question } from '../newcar/questions';
import type { Answers } from '../newcar/skeleton';
import { systemOf } from '../newcar/skeleton';
import type { Terminal } from './terminal';

/** Where answers come from: one line each; it ends when the keeper goes away. */
export type Typed = AsyncIterator<string, void>;

/** What leaves the questions for now. */
export const leaving = 'leave';

/** What goes back to the question before. */
const goingBack = 'back';

/** Whom to ask. */
export interface Asker {
  readonly terminal: Terminal;
  readonly typed: Typed;
  /** Somebody is there who can answer again. If not, an answer that cannot stand leaves its question open. */
  readonly answersAgain: boolean;
  /** The day, year-month-day. */
  readonly today: string;
}

/** Ask what is not answered yet; every answer is on the disk before the next question. */
export async function askAll(
  questions: readonly Question[],
  { kind, answers: before }: Kept,
  save: (kept: Kept) => Promise<unknown>,
  asker: Asker,
): Promise<Answers> {
  const answers = new Map(before);
  const nextOpen = (from: number) =>
    questions.findIndex(({ key }, index) => index >= from && !answers.has(key));
  const count = questions.length - answers.size;
  if (count === 0) return answers;
  asker.terminal.say(
    `\n${count} questions. Type ? for what to measure and where, nothing to pass one over, ${goingBack} for the question before, ${leaving} to leave for now.`,
  );
  let at = nextOpen(0);
  for (let question = questions[at]; question !== undefined; question = questions[at]) {
    asker.terminal.say(`\n${at + 1} of ${questions.length}`);
    const asking = { today: asker.today, system: systemOf(answers) };
    const reply = await askOne(question, answers.get(question.key), asking, asker);
    if (reply.kind === 'leave') break;
    if (reply.kind === 'answer') {
      answers.set(question.key, reply.text);
      await save({ kind, answers });
    }
    at = reply.kind === 'back' ? Math.max(0, at - 1) : nextOpen(at + 1);
  }
  return answers;
}

/** What came of a question. */
type Reply =
  | { readonly kind: 'leave' }
  | { readonly kind: 'pass' }
  | { readonly kind: 'back' }
  | { readonly kind: 'answer'; readonly text: string };

/** Ask until there is an answer that can stand, or none is to be had now; what was answered before is told, and kept. */
async function askOne(
  question: Question,
  before: string | undefined,
  asking: Asking,
  { terminal, typed, answersAgain }: Asker,
): Promise<Reply> {
  const choices = question.choices === undefined ? '' : ` (${question.choices.join(', ')})`;
  const kept = before === undefined ? '' : `\n  So far: ${before}. Type nothing to keep it.`;
  for (;;) {
    terminal.say(`${question.ask}${choices}${kept}`);
    const { value } = await typed.next();
    if (typeof value !== 'string' || value.trim() === leaving) return { kind: 'leave' };
    const text = value.trim();
    if (text === '') return { kind: 'pass' };
    if (text === goingBack) return { kind: 'back' };
    if (text === '?') {
      terminal.say(`  Measure: ${question.measure}.`);
      continue;
    }
    const judged = judge(question, text, asking);
    if (judged.ok === 'not-known') {
      terminal.say(before === undefined ? '  It stays open.' : `  It stays as it was: ${before}.`);
      return { kind: 'pass' };
    }
    if (judged.ok) {
      if (judged.text !== text) terminal.say(`  Taken as: ${judged.text}`);
      return { kind: 'answer', text: judged.text };
    }
    terminal.say(`  ${judged.why}`);
    if (!answersAgain) {
      terminal.say(`  \`${text}\` was not taken; the question stays open.`);
      return { kind: 'pass' };
    }
  }
}
