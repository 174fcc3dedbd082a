/** Reading what all cars share from the folders beside the program. */
import { readdirSync, readFileSync } from 'node:fs';
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

/**
 * Read `shared` and `templates` under `root`. Throws if a folder or font is missing: then the program itself is broken.
 * One file after the other: some hundred small files are read in less time than it takes to set up reading them at once.
 */
export function readSharedFiles(root: string): SharedFiles {
  const fonts = Object.entries(fontNames).map(
    ([face, file]) => [face, new Uint8Array(readFileSync(join(root, 'shared', 'fonts', file)))] as const,
  );
  return {
    texts: readTexts(join(root, 'shared'), /\.(ya?ml|css|js)$/, (name) => name),
    templates: readTexts(join(root, 'templates'), /\.hbs$/, (name) => name.replace(/\.hbs$/, '')),
    fonts: Object.fromEntries(fonts) as SharedFiles['fonts'],
  };
}

function readTexts(
  folder: string,
  wanted: RegExp,
  nameOf: (name: string) => string,
): ReadonlyMap<string, string> {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && wanted.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name))
    .sort();
  return new Map(
    files.map((file) => [nameOf(relative(folder, file).split(sep).join('/')), readFileSync(file, 'utf8')]),
  );
}
