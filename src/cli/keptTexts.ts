/** The shared texts as they were read when the program was built. */
import { readFile } from 'node:fs/promises';
import { isDeepStrictEqual } from 'node:util';
import { libraryLanguage } from '../language/readLanguages';
import { type KeptText, keepTexts } from '../spec/kept';
import { readSource } from '../spec/source';
import { readSharedFiles } from './sharedFiles';

/** Texts and their data as they stand in a file; for the build to write. Data that would not come back the same are left out. */
export async function textsToKeep(root: string): Promise<string> {
  const { texts } = await readSharedFiles(root);
  const kept: KeptText[] = [];
  for (const [name, text] of texts) {
    if (!/\.ya?ml$/.test(name) || isOfAnotherLanguage(name)) continue;
    const read = readSource(text, name);
    if (!read.ok) continue;
    const { data } = read.value;
    if (isDeepStrictEqual(JSON.parse(JSON.stringify(data)), data)) kept.push([text, data]);
  }
  return JSON.stringify(kept);
}

/** A language other than the library’s is read by few cars, and every run would load what is kept. */
function isOfAnotherLanguage(name: string): boolean {
  return name.startsWith('languages/') && !name.startsWith(`languages/${libraryLanguage}/`);
}

/** Remember what the build has kept in `file`; without one every text is simply read anew. */
export async function recallTexts(file: string): Promise<void> {
  let text: string;
  try {
    text = await readFile(file, 'utf8');
  } catch {
    return;
  }
  keepTexts(JSON.parse(text) as readonly KeptText[]);
}
