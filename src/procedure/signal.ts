/** Signal words, from the gravest down; meanings as in ANSI Z535.6. */
export const signalWords = ['danger', 'warning', 'caution', 'notice'] as const;

/** One signal word. */
export type SignalWord = (typeof signalWords)[number];
