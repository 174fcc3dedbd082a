/**
 * What was read before of texts that are the same in every run, such as the step library.
 *
 * Reading YAML with the place of every letter takes most of a short command's time. A text that is word for word one
 * that was read before yields the same data; its places are worked out only when a problem asks for them.
 */

/** A text and the plain data that was read from it, as JSON. */
export type KeptText = readonly [text: string, json: string];

const kept = new Map<string, string>();

/** Remember data of texts that were read whole and without fault. */
export function keepTexts(texts: readonly KeptText[]): void {
  for (const [text, json] of texts) kept.set(text, json);
}

/** Data of a text that is exactly one of those kept, as a copy of its own; nothing of any other. */
export function keptData(text: string): { readonly data: unknown } | undefined {
  const json = kept.get(text);
  return json === undefined ? undefined : { data: JSON.parse(json) };
}
