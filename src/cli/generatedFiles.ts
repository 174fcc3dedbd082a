/** The files of the repository that are made from the program itself, so that they say what it does. */
import { diagnosticsReference } from '../diagnostic/reference';
import { readLibrary } from '../procedure/library';
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
    text: (read) => libraryGuide(read('docs/procedures.head.md'), readLibrary(libraryTexts(read))),
  },
  { path: 'shared/spec.schema.json', text: () => specJsonSchemaText() },
];

/** The files of the step library, from which its page lists the steps. */
export const libraryFileNames = [
  'cautions.yaml',
  'words/phrases.yaml',
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

function libraryTexts(read: (path: string) => string): ReadonlyMap<string, string> {
  return new Map(libraryFileNames.map((name) => [name, read(`shared/${name}`)]));
}
