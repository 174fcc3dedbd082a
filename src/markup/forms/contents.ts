/** What forms hold, and the attributes that many carry. */
import type { AttributeRule } from './form';

/** What may be led to. */
export const id = { id: { kind: 'id' } } as const;
/** Words, and some at least. */
export const words = { text: 'words', filled: true } as const;
/** Other forms alone, and some at least. */
export const parts = { text: 'none', filled: true } as const;
/** Nothing, or nothing that is needed. */
export const empty = { text: 'none', filled: false } as const;
/** One of some classes. */
export const classOf = (...values: string[]): Readonly<Record<string, AttributeRule>> => ({
  class: { kind: 'one-of', values },
});
