/** Work that is done when its answer is first asked for, and never again. */
export function once<T>(work: () => T): () => T {
  let known: { readonly answer: T } | undefined;
  return () => {
    known ??= { answer: work() };
    return known.answer;
  };
}
