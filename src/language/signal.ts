/** Signal words, from the gravest down; meanings as in ANSI Z535.6. */
export const signalWords = ['danger', 'warning', 'caution', 'notice'] as const;

/** One signal word. */
export type SignalWord = (typeof signalWords)[number];

/** Something for each signal word, with the word as a language prints it. */
export function withSignalWords<T extends Readonly<Record<SignalWord, object>>>(
  each: T,
  words: Readonly<Record<SignalWord, string>>,
): { readonly [S in SignalWord]: T[S] & { readonly word: string } } {
  return {
    danger: { ...each.danger, word: words.danger },
    warning: { ...each.warning, word: words.warning },
    caution: { ...each.caution, word: words.caution },
    notice: { ...each.notice, word: words.notice },
  };
}
