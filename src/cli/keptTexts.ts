/** The shared texts as they were read and found good when the program was built. */
import { readFileSync } from 'node:fs';
import { isDeepStrictEqual } from 'node:util';
import { openWorkshop, type SharedFiles } from '../kettlebook';
import { libraryLanguage } from '../language/readLanguages';
import { type KeptText, keepTexts, watchingForms } from '../spec/kept';
import { readSource } from '../spec/source';
import { readSharedFiles } from './sharedFiles';

/** What the build keeps. */
interface Kept {
  /** Every text that all cars read, by name. */
  readonly texts: Readonly<Record<string, KeptText>>;
  readonly templates: Readonly<Record<string, string>>;
  /** Whether a workshop opened with these very files and had nothing to say of them. */
  readonly good: boolean;
}

let recalled: Kept | undefined;

/** What is to be kept, as it stands in a file; for the build to write. Data that would not come back the same are left out. */
export function textsToKeep(root: string): string {
  const shared = readSharedFiles(root);
  const forms = new Map<string, Record<string, string>>();
  const opened = watchingForms(
    (form, text, data) => {
      const json = asJson(data);
      if (json !== undefined) forms.set(text, { ...forms.get(text), [form]: json });
    },
    () => openWorkshop(shared),
  );
  const kept: Kept = {
    texts: Object.fromEntries(
      ofEveryCar(shared).map(([name, text]) => [name, keptText(name, text, forms.get(text) ?? {})]),
    ),
    templates: Object.fromEntries(shared.templates),
    good: opened.ok && opened.remarks.length === 0,
  };
  return JSON.stringify(kept);
}

/** What is always read in one form is kept in that alone. */
function keptText(name: string, text: string, forms: KeptText['forms']): KeptText {
  if (Object.keys(forms).length > 0 || !/\.ya?ml$/.test(name)) return { text, forms };
  const read = readSource(text, name);
  const data = read.ok ? asJson(read.value.data) : undefined;
  return data === undefined ? { text, forms } : { text, data, forms };
}

/** As JSON, if the very same comes back. */
function asJson(data: unknown): string | undefined {
  const json = JSON.stringify(data);
  return json !== undefined && isDeepStrictEqual(JSON.parse(json), data) ? json : undefined;
}

/** Texts without those of other languages than the library’s: few cars read them, and every run would load what is kept. */
function ofEveryCar({ texts }: SharedFiles): readonly (readonly [name: string, text: string])[] {
  return [...texts].filter(
    ([name]) => !name.startsWith('languages/') || name.startsWith(`languages/${libraryLanguage}/`),
  );
}

/** Remember what the build has kept in `file`; without one every text is simply read and checked anew. */
export function recallTexts(file: string): void {
  let json: string;
  try {
    json = readFileSync(file, 'utf8');
  } catch {
    return;
  }
  recalled = JSON.parse(json) as Kept;
  // what is kept of nothing but the text is read as any other text is
  keepTexts(
    Object.values(recalled.texts).filter(
      ({ data, forms }) => data !== undefined || Object.keys(forms).length > 0,
    ),
  );
}

/** Whether these files are, name by name and letter by letter, those that the build found good: not one more, less or other. */
export function foundGood(shared: SharedFiles): boolean {
  if (recalled?.good !== true) return false;
  const { texts, templates } = recalled;
  const now = ofEveryCar(shared);
  return (
    now.length === Object.keys(texts).length &&
    now.every(([name, text]) => texts[name]?.text === text) &&
    shared.templates.size === Object.keys(templates).length &&
    [...shared.templates].every(([name, text]) => templates[name] === text)
  );
}
