/**
 * What was read before of texts that are the same in every run, such as the step library.
 *
 * Reading YAML with the place of every letter, and holding it to its form, takes most of a short command's time. A text that
 * is word for word one that was read before yields the same; its places are worked out only when a problem asks for them.
 */

/** A text and what was read from it without fault. */
export interface KeptText {
  readonly text: string;
  /** Its plain data, as JSON. */
  readonly data?: string;
  /** What came of holding it to a form, as JSON, by the name of the form. */
  readonly forms: Readonly<Record<string, string>>;
}

const kept = new Map<string, KeptText>();

/** Remember what was read of texts. */
export function keepTexts(texts: readonly KeptText[]): void {
  for (const each of texts) kept.set(each.text, each);
}

/** Whether anything is kept of a text that is exactly this. */
export function isKept(text: string): boolean {
  return kept.has(text);
}

/** Data of a text that is exactly one of those kept, as a copy of its own; nothing of any other. */
export function keptData(text: string): { readonly data: unknown } | undefined {
  return copyOf(kept.get(text)?.data);
}

/** What came of a text in a form, likewise. */
export function keptForm(form: string, text: string): { readonly data: unknown } | undefined {
  return copyOf(kept.get(text)?.forms[form]);
}

function copyOf(json: string | undefined): { readonly data: unknown } | undefined {
  return json === undefined ? undefined : { data: JSON.parse(json) };
}

/** Is told what came of a text in a form. */
export type FormWatch = (form: string, text: string, data: unknown) => void;

let watch: FormWatch | undefined;

/** For the build: `told` hears of every form that a text is found to have while `work` is done. */
export function watchingForms<T>(told: FormWatch, work: () => T): T {
  watch = told;
  try {
    return work();
  } finally {
    watch = undefined;
  }
}

/** A text was held to a form and has it. */
export function foundInForm(form: string, text: string, data: unknown): void {
  watch?.(form, text, data);
}
