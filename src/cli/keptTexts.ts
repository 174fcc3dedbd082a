/** The shared texts as they were read and found good when the program was built. */
import { readFileSync } from 'node:fs';
import { isDeepStrictEqual } from 'node:util';
import { openWorkshop, type SharedFiles } from '../kettlebook';
import { libraryLanguage } from '../language/readLanguages';
import { keepTexts } from '../spec/kept';
import { readSource } from '../spec/source';
import { readSharedFiles } from './sharedFiles';

/** What the build keeps. */
interface Kept {
  /** Every text that all cars read, by name, with its data as JSON if it is plain data. */
  readonly texts: Readonly<Record<string, readonly [text: string, json?: string]>>;
  readonly templates: Readonly<Record<string, string>>;
  /** Whether a workshop opened with these very files and had nothing to say of them. */
  readonly good: boolean;
}

let recalled: Kept | undefined;

/** What is to be kept, as it stands in a file; for the build to write. Data that would not come back the same are left out. */
export function textsToKeep(root: string): string {
  const shared = readSharedFiles(root);
  const opened = openWorkshop(shared);
  const kept: Kept = {
    texts: Object.fromEntries(ofEveryCar(shared).map(([name, text]) => [name, withData(name, text)])),
    templates: Object.fromEntries(shared.templates),
    good: opened.ok && opened.remarks.length === 0,
  };
  return JSON.stringify(kept);
}

function withData(name: string, text: string): Kept['texts'][string] {
  const read = /\.ya?ml$/.test(name) ? readSource(text, name) : undefined;
  if (read?.ok !== true) return [text];
  const { data } = read.value;
  const json = JSON.stringify(data);
  return isDeepStrictEqual(JSON.parse(json), data) ? [text, json] : [text];
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
  keepTexts(
    Object.values(recalled.texts).flatMap(([text, data]) =>
      data === undefined ? [] : [[text, data] as const],
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
    now.every(([name, text]) => texts[name]?.[0] === text) &&
    shared.templates.size === Object.keys(templates).length &&
    [...shared.templates].every(([name, text]) => templates[name] === text)
  );
}
