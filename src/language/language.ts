/** A language of the papers: its words, how it writes numbers, and how it says what the library says. */
import type { NumberWriting } from '../quantity/print';
import type { Dialect } from './dialect';
import type { Furniture, Ways, Words } from './languageForm';
import type { Messages } from './messages';

/** One language, in one country's way of it if the papers ask for that. */
export interface Language {
  /** Language tag (BCP 47), such as `de` or `en-GB`; decides how dates are written and names sorted. */
  readonly tag: string;
  /** What it is called by those who speak it. */
  readonly name: string;
  /** The papers that are whole in it, by name. */
  readonly papers: 'all' | readonly string[];
  readonly numbers: NumberWriting;
  readonly words: Words;
  readonly phrases: Readonly<Record<string, string>>;
  readonly ways: Ways;
  readonly messages: Messages;
  readonly furniture: Furniture;
  /** How it says the texts of the library and of the templates. */
  readonly texts: Dialect;
  /**
   * How it says sentences that the program has put together from English and a car's `own` words: workings of figures,
   * reasons of rules. Only the language of the library has them.
   */
  telling(own: readonly string[]): (sentence: string) => string;
}

/** How a part is named in a sentence: `the pilot valve (F1)`. */
export function partName(
  { messages }: Language,
  { name, tag }: { name: string; tag?: string | undefined },
): string {
  return tag === undefined || tag === ''
    ? messages.say('part', { name })
    : messages.say('part-with-tag', { name, tag });
}

/** Several things as one: `a, b and c`. */
export function listed({ messages }: Language, things: readonly string[]): string {
  const [last = ''] = things.slice(-1);
  if (things.length < 2) return last;
  return messages.say('list-last', {
    before: things.slice(0, -1).join(messages.say('list-comma', {})),
    last,
  });
}
