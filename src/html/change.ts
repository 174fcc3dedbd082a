/** What is shown and heard of something that reads otherwise than in the issue before. */
import type { ChangeMark } from '../markup/block';
import { element, type Html } from './element';
import type { Writing } from './writing';

/** A bar is drawn beside what has these names of a class; the words are heard and not seen. */
export interface ShownChange {
  readonly names: readonly string[];
  readonly before: readonly Html[];
  readonly after: readonly Html[];
}

/** What a mark comes to on a screen; nothing for none. */
export function shownChange(change: ChangeMark | undefined, { look }: Writing): ShownChange {
  const heard = (words: string) => [element('span', { class: 'heard' }, ` ${words} `)];
  const { changed = false, goneAfter = false } = change ?? {};
  return {
    names: [...(changed ? ['changed'] : []), ...(goneAfter ? ['gone-after'] : [])],
    before: changed ? heard(look.words.changed) : [],
    after: goneAfter ? heard(look.words.goneAfter) : [],
  };
}

/** Names of a class as an attribute; none if there are none. */
export function classOf(...names: readonly (string | undefined)[]): string | undefined {
  const all = names.filter((name) => name !== undefined && name !== '');
  return all.length === 0 ? undefined : all.join(' ');
}
