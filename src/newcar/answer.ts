/** Whether an answer can stand in a spec. */

import type { UnitSystem } from '../quantity/dimension';
import { parseQuantity } from '../quantity/parse';
import { printQuantity } from '../quantity/print';
import { quantity } from '../quantity/quantity';
import { dimensionWords } from '../quantity/wording';
import { entryOf } from '../spec/entry';
import type { Amount, Question } from './questions';

/** The answer as it will be written; that nobody knows; or what is wrong with it and how to mend it. */
export type Judged =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: 'not-known' }
  | { readonly ok: false; readonly why: string };

/** What is known while questions are asked. */
export interface Asking {
  /** The day, year-month-day, which may be answered as `today`. */
  readonly today: string;
  /** The units that a bare nothing is written in. */
  readonly system: UnitSystem;
}

/** What people type who do not know: it must not come out as the name of anything. */
const notKnown =
  /^(?:\?+|-+|–|—|n\/?a|tb[cd]|unknown|not known|not sure|no idea|(?:i )?(?:do not|don['’]?t) know(?: yet)?|(?:it )?has none)\.?$/i;

/** Judge an answer as it was typed. */
export function judge(question: Question, typed: string, asking: Asking): Judged {
  const text = typed.trim();
  if (notKnown.test(text)) return { ok: 'not-known' };
  const { answer } = question;
  switch (answer) {
    case 'words':
      return { ok: true, text };
    case 'number':
      return number(question, text);
    case 'date':
      return date(text, asking);
    case 'one-of':
      return oneOf(question, text);
    default:
      return amount(answer, text, asking);
  }
}

function amount(dimension: Amount, text: string, { system }: Asking): Judged {
  // no length, no volume, no pressure is the same in every unit
  if (/^[-+]?0+(?:\.0+)?$/.test(text) && dimension !== 'share') {
    const nothing = printQuantity(quantity(dimension, 0), { system, inFull: true, decimals: 0 });
    return { ok: true, text: nothing.replaceAll('\u00a0', ' ') };
  }
  const read = parseQuantity(text, dimension);
  if (read.ok) return { ok: true, text };
  return {
    ok: false,
    why: `That cannot be read as ${dimensionWords[dimension].name}: ${read.mend}.`,
  };
}

function number({ least = 0, whole = false }: Question, text: string): Judged {
  const value = Number(text);
  if (!Number.isFinite(value) || value <= 0) {
    const meant = /\d+(?:\.\d+)?/.exec(text)?.[0];
    const such = meant === undefined ? `, such as ${whole ? '4' : '4 or 1.5'}` : `: ${meant}`;
    return { ok: false, why: `That is not a number alone. Write figures and nothing else${such}.` };
  }
  if (whole && !Number.isInteger(value)) return { ok: false, why: 'That wants a whole number.' };
  if (value < least) return { ok: false, why: `That wants ${least} at the least.` };
  return { ok: true, text };
}

/** A choice by its word, by its place in the list, by another word for it, or by how either begins. */
function oneOf({ choices = [], also = {} }: Question, text: string): Judged {
  const typed = text.toLowerCase();
  const words = choices.map((choice) =>
    [choice, ...(entryOf(also, choice) ?? [])].map((each) => each.toLowerCase()),
  );
  const whole = words.findIndex((each) => each.includes(typed));
  const begun = words.flatMap((each, index) =>
    each.some((word) => word.startsWith(typed) || typed.startsWith(`${word} `)) ? [index] : [],
  );
  const [only, ...others] = begun;
  const at = whole >= 0 ? whole : others.length === 0 && only !== undefined ? only : Number(text) - 1;
  const chosen = choices[at];
  return chosen === undefined
    ? { ok: false, why: `Choose one of: ${choices.join(', ')}.` }
    : { ok: true, text: chosen };
}

function date(text: string, { today }: Asking): Judged {
  if (text.toLowerCase() === 'today') return { ok: true, text: today };
  if (isDate(text)) return { ok: true, text };
  const there = /^\d{4}-\d{2}-\d{2}$/.test(text) ? 'There is no such day.' : 'That is not a date.';
  return { ok: false, why: `${there} Write year-month-day, such as 2026-03-14.` };
}

function isDate(text: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false;
  const day = new Date(`${text}T00:00:00Z`);
  return !Number.isNaN(day.getTime()) && day.toISOString().startsWith(text);
}
