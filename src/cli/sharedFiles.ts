/** Reading what all cars share from the folders beside the program. */
import { readdir, readFile } from 'node:fs/promises';
import { join, relative, sep } from 'node:path';
import type { Face } from '../font/metrics';
import type { SharedFiles } from '../kettlebook';

const fontNames: Readonly<Record<Face, string>> = {
  text: 'IBMPlexSans-Regular.woff',
  'text-italic': 'IBMPlexSans-Italic.woff',
  'text-bold': 'IBMPlexSans-Bold.woff',
  narrow: 'IBMPlexSansCondensed-Regular.woff',
  'narrow-bold': 'IBMPlexSansCondensed-Bold.woff',
};

/** Read `shared` and `templates` under `root`. Throws if a folder or font is missing: then the program itself is broken. */
export async function readSharedFiles(root: string): Promise<SharedFiles> {
  const [texts, templates, fonts] = await Promise.all([
    readTexts(join(root, 'shared'), /\.(ya?ml|css|js)$/, (name) => name),
    readTexts(join(root, 'templates'), /\.hbs$/, (name) => name.replace(/\.hbs$/, '')),
    Promise.all(
      Object.entries(fontNames).map(
        async ([face, file]) =>
          [face, new Uint8Array(await readFile(join(root, 'shared', 'fonts', file)))] as const,
      ),
    ),
  ]);
  return { texts, templates, fonts: Object.fromEntries(fonts) as SharedFiles['fonts'] };
}

async function readTexts(
  folder: string,
  wanted: RegExp,
  nameOf: (name: string) => string,
): Promise<ReadonlyMap<string, string>> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  const files = entries
    .filter((entry) => entry.isFile() && wanted.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name))
    .sort();
  const texts = await Promise.all(files.map((file) => readFile(file, 'utf8')));
  return new Map(
    files.map((file, index) => [nameOf(relative(folder, file).split(sep).join('/')), texts[index] ?? '']),
  );
}
