/** Everything that is said in words and is no car’s own, in the English of one car’s papers. */
import type { Outcome } from '../diagnostic/diagnostic';
import { bad, good } from '../diagnostic/diagnostic';
import { compileTemplates, type Templates } from '../markup/template/compile';
import type { Library } from '../procedure/library';
import type { GlossaryEntry, SignsAndCauses } from '../procedure/reference';
import { type Dialect, formIn, plainDialect, textsIn } from './dialect';
import { templateHelpers } from './templateHelpers';
import type { Words } from './words';

/** Words of the library, the word list and the templates. */
export interface Sayings {
  readonly dialect: Dialect;
  readonly library: Library;
  readonly words: Words;
  readonly glossary: readonly GlossaryEntry[];
  readonly faults: readonly SignsAndCauses[];
  readonly templates: Templates;
  /** Text of every template, for the fingerprint. */
  readonly templateText: string;
}

/** The same before any dialect, with the templates as text. */
export type PlainSayings = Pick<Sayings, 'library' | 'words' | 'glossary' | 'faults'> & {
  readonly templateSources: ReadonlyMap<string, string>;
};

/** What is said in a dialect; without one, as it stands in the files. */
export function sayingsIn(plain: PlainSayings, dialect: Dialect = plainDialect): Outcome<Sayings> {
  const sources = [...plain.templateSources]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([name, text]) => [name, dialect.sayTemplate(text)] as const);
  const templates = compileTemplates(Object.fromEntries(sources), templateHelpers);
  if (!templates.ok) return bad(templates.problems);
  return good(
    {
      dialect,
      library: libraryIn(dialect, plain.library),
      words: textsIn(dialect, plain.words),
      glossary: formIn(dialect, plain.glossary),
      faults: formIn(dialect, plain.faults),
      templates: templates.value,
      templateText: sources.flat().join('\n'),
    },
    templates.remarks,
  );
}

function libraryIn(dialect: Dialect, library: Library): Library {
  return {
    procedures: library.procedures.map(({ form, spot }) => ({ form: formIn(dialect, form), spot })),
    cautions: new Map(
      [...library.cautions].map(([id, { form, spot }]) => [id, { form: formIn(dialect, form), spot }]),
    ),
    notices: library.notices.map(({ form, spot }) => ({ form: formIn(dialect, form), spot })),
    phrases: textsIn(dialect, library.phrases),
    ways: textsIn(dialect, library.ways),
  };
}
