/** Whether an answer can stand in a spec. */
import { parseQuantity } from '../quantity/parse';
import type { Question } from './questions';

/** The answer as it will be written, or what is wrong with it and how to mend it. */
export type Judged =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly why: string };

/** Judge an answer as it was typed. */
export function judge(question: Question, typed: string): Judged {
  const text = typed.trim();
  const { answer, choices = [] } = question;
  switch (answer) {
    case 'words':
      return { ok: true, text };
    case 'number':
      return number(question, text);
    case 'date':
      return isDate(text)
        ? { ok: true, text }
        : { ok: false, why: 'That is not a date. Write year-month-day, such as 2026-03-14.' };
    case 'one-of':
      return oneOf(text, choices);
    default: {
      const read = parseQuantity(text, answer);
      return read.ok
        ? { ok: true, text }
        : { ok: false, why: `That cannot be read: expected ${read.expected}. To mend it, ${read.mend}.` };
    }
  }
}

function number({ least = 0, whole = false }: Question, text: string): Judged {
  const value = Number(text);
  if (!Number.isFinite(value) || value <= 0)
    return {
      ok: false,
      why: `That is not a number. Write figures alone, such as 4${whole ? '' : ' or 1.5'}.`,
    };
  if (whole && !Number.isInteger(value)) return { ok: false, why: 'That wants a whole number.' };
  if (value < least) return { ok: false, why: `That wants ${least} at the least.` };
  return { ok: true, text };
}

/** A choice by its word or by its place in the list. */
function oneOf(text: string, choices: readonly string[]): Judged {
  const chosen =
    choices.find((each) => each.toLowerCase() === text.toLowerCase()) ?? choices[Number(text) - 1];
  return chosen === undefined
    ? { ok: false, why: `Choose ${choices.join(', ')}.` }
    : { ok: true, text: chosen };
}

function isDate(text: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false;
  const day = new Date(`${text}T00:00:00Z`);
  return !Number.isNaN(day.getTime()) && day.toISOString().startsWith(text);
}
