/** The files of the repository that are made from the program itself, so that they say what it does. */
import { diagnosticsReference } from '../diagnostic/reference';
import { specJsonSchemaText } from '../spec/jsonSchema';
import { carSpecReference } from '../spec/reference';

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
  { path: 'docs/diagnostics.md', text: () => diagnosticsReference() },
  { path: 'shared/spec.schema.json', text: () => specJsonSchemaText() },
];
