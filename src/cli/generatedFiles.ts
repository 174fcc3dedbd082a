/** The files of the repository that are made from the program itself, so that they say what it does. */

import type { Outcome } from '../diagnostic/diagnostic';
import { diagnosticsReference } from '../diagnostic/reference';
import { readLanguages } from '../language/readLanguages';
import { type Library, readLibrary } from '../procedure/library';
import { libraryGuide } from '../procedure/libraryGuide';
import { specJsonSchemaText } from '../spec/jsonSchema';
import { carSpecReference } from '../spec/reference';
import { figuresPage } from './figuresPage';

/** One file: its path from the root, and how its text is made. `read` reads other files by their paths. */
export interface GeneratedFile {
  readonly path: string;
  readonly text: (read: (path: string) => string) => string;
}

/** All of them. `npm run docs` writes them, and a test holds them current. */
export const generatedFiles: readonly GeneratedFile[] = [
  {
    path: 'docs/car-spec.md',
    text: (read) => `${carSpecReference(read('docs/car-spec.head.md')).trimEnd()}\n`,
  },
  { path: 'docs/figures.md', text: (read) => figuresPage(read) },
  { path: 'docs/diagnostics.md', text: () => diagnosticsReference() },
  {
    path: 'docs/procedures.md',
    text: (read) => libraryGuide(read('docs/procedures.head.md'), libraryFrom(libraryTexts(read))),
  },
  { path: 'shared/spec.schema.json', text: () => specJsonSchemaText() },
];

/** The files of the step library, from which its page lists the steps. */
export const libraryFileNames = [
  'cautions.yaml',
  'languages/en/language.yaml',
  'languages/en/words.yaml',
  'languages/en/phrases.yaml',
  'languages/en/messages.yaml',
  'languages/en/furniture.yaml',
  'procedures/10-before.yaml',
  'procedures/20-water.yaml',
  'procedures/30-fuel.yaml',
  'procedures/40-fire.yaml',
  'procedures/50-steam.yaml',
  'procedures/60-stops.yaml',
  'procedures/70-away.yaml',
  'procedures/80-lay-up.yaml',
  'procedures/90-emergencies.yaml',
] as const;

function libraryFrom(texts: ReadonlyMap<string, string>): Outcome<Library> {
  const languages = readLanguages(texts);
  return languages.ok ? readLibrary(texts, languages.value.plain) : languages;
}

function libraryTexts(read: (path: string) => string): ReadonlyMap<string, string> {
  return new Map(libraryFileNames.map((name) => [name, read(`shared/${name}`)]));
}
