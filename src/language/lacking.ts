/**
 * Texts that a language has not got yet. Such a text goes through the program with a mark around it, so that a paper
 * which would print it can be refused, and no other.
 */
import type { Diagnostic } from '../diagnostic/diagnostic';

const open = '\ue000';
const between = '\ue001';
const close = '\ue002';
const marked = /\ue000([0-9a-f]*)\ue001/g;

/** The text in the language of the library, marked as not yet said in the language of the papers. */
export function lacking(text: string): string {
  const letters = [...text].map((letter) => (letter.codePointAt(0) ?? 0).toString(16).padStart(6, '0'));
  return `${open}${letters.join('')}${between}${text}${close}`;
}

/** The texts of the library that are marked somewhere in `text`, each once, as they stand in their files. */
export function lackingIn(text: string): readonly string[] {
  const found = [...text.matchAll(marked)].map(([, letters = '']) =>
    (letters.match(/.{6}/g) ?? []).map((code) => String.fromCodePoint(Number.parseInt(code, 16))).join(''),
  );
  return [...new Set(found)];
}

/** The text without any marks, for messages to a keeper. */
export function withoutMarks(text: string): string {
  return text.replace(marked, '').replaceAll(close, '');
}

/** Problems with no marks in their words. */
export function withoutMarksIn(problems: readonly Diagnostic[]): readonly Diagnostic[] {
  return problems.map((problem) => ({
    ...problem,
    message: withoutMarks(problem.message),
    ...(problem.found === undefined ? {} : { found: withoutMarks(problem.found) }),
    ...(problem.expected === undefined ? {} : { expected: withoutMarks(problem.expected) }),
    mend: withoutMarks(problem.mend),
    ...(problem.notes === undefined ? {} : { notes: problem.notes.map(withoutMarks) }),
  }));
}
