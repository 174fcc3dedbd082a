/** Signal words, from the gravest down; meanings as in ANSI Z535.6. */
export const signalWords = ['danger', 'warning', 'caution', 'notice'] as const;

/** One signal word. */
export type SignalWord = (typeof signalWords)[number];

/** What warns, the gravest first; of two with one signal word, the one that came first. */
export function gravestFirst<T extends { readonly signal: SignalWord }>(each: readonly T[]): readonly T[] {
  const rank = ({ signal }: T) => signalWords.indexOf(signal);
  return [...each].sort((one, other) => rank(one) - rank(other));
}

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
