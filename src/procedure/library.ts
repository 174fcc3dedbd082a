/** The step library: files in, a checked library out, or everything that is wrong with them at once. */

import type * as z from 'zod';
import { bad, type Diagnostic, good, hasErrors, type Outcome, type Spot } from '../diagnostic/diagnostic';
import type { Language } from '../language/language';
import { inForm } from '../spec/inForm';
import { problemsOf } from '../spec/problems';
import { readSource, type SpecPath, type SpecSource } from '../spec/source';
import { checkLibrary } from './libraryCheck';
import { type CautionForm, cautionFileForm, type ProcedureForm, procedureFileForm } from './libraryForm';
import { phases } from './procedure';

/** A piece of the library with its place: `spot` gives the place of anything under it. */
export interface Placed<T> {
  readonly form: T;
  readonly spot: (path: SpecPath) => Spot;
}

/** A standing notice: to whom the papers defer. */
export interface Notice {
  readonly id: string;
  readonly title: string;
  readonly says: readonly string[];
}

/** The step library. */
export interface Library {
  /** Procedures in the order of the day, then the emergencies. */
  readonly procedures: readonly Placed<ProcedureForm>[];
  readonly cautions: ReadonlyMap<string, Placed<CautionForm>>;
  readonly notices: readonly Placed<Notice>[];
  /** The language its texts are in, with the phrases they share. */
  readonly language: Language;
}

/**
 * Read and check the library. `files` maps names relative to the folder `shared` to texts: `cautions.yaml` and every
 * file under `procedures/`; other files are passed over. `language` is the one they are written in. `foundGood`: these very
 * texts were read before, and every name in them was found to exist.
 */
export function readLibrary(
  files: ReadonlyMap<string, string>,
  language: Language,
  { foundGood = false } = {},
): Outcome<Library> {
  const problems: Diagnostic[] = [];
  const procedures: Placed<ProcedureForm>[] = [];
  for (const [name, text] of [...files].sort(([a], [b]) => (a < b ? -1 : 1))) {
    if (!/^procedures\/[^/]+\.ya?ml$/.test(name)) continue;
    const read = readForm(text, name, procedureFileForm, 'procedures');
    if (!read.ok) {
      problems.push(...read.problems);
      continue;
    }
    const { form, spot } = read.value;
    procedures.push(
      ...form.procedures.map((each, index) => ({
        form: each,
        spot: (path: SpecPath) => spot(['procedures', index, ...path]),
      })),
    );
  }
  const cautionFile = readNamed(files, 'cautions.yaml', cautionFileForm, 'cautions');
  if (!cautionFile.ok) problems.push(...cautionFile.problems);
  if (!cautionFile.ok || problems.length > 0) return bad(problems);

  const library: Library = {
    procedures: inOrderOfDay(procedures),
    cautions: new Map(
      Object.entries(cautionFile.value.form.cautions).map(([id, form]) => [
        id,
        { form, spot: (path) => cautionFile.value.spot(['cautions', id, ...path]) },
      ]),
    ),
    notices: cautionFile.value.form.notices.map((form, at) => ({
      form,
      spot: (path) => cautionFile.value.spot(['notices', at, ...path]),
    })),
    language,
  };
  const found = foundGood ? [] : checkLibrary(library);
  return hasErrors(found) ? bad(found) : good(library, found);
}

/** By phase; in one phase what comes after another stands behind it, the rest as in the files. */
function inOrderOfDay(procedures: readonly Placed<ProcedureForm>[]): readonly Placed<ProcedureForm>[] {
  const comesAfter = ({ form: one }: Placed<ProcedureForm>) =>
    procedures.some(({ form }) => form.phase === one.phase && one.after.includes(form.id)) ? 1 : 0;
  return [...procedures].sort(
    (a, b) => phases.indexOf(a.form.phase) - phases.indexOf(b.form.phase) || comesAfter(a) - comesAfter(b),
  );
}

function readNamed<T extends z.ZodType>(
  files: ReadonlyMap<string, string>,
  file: string,
  form: T,
  name: string,
): Outcome<Placed<z.output<T>>> {
  const text = files.get(file);
  if (text !== undefined) return readForm(text, file, form, name);
  return bad([
    {
      code: 'library-form',
      severity: 'error',
      message: `the library has no file \`${file}\``,
      mend: 'put it back into the folder `shared`',
    },
  ]);
}

/** Read one YAML file of a given form, which has a name of its own. Problems of form have the code `library-form`. */
export function readForm<T extends z.ZodType>(
  text: string,
  file: string,
  form: T,
  name: string,
): Outcome<Placed<z.output<T>>> {
  const read = readSource(text, file);
  if (!read.ok) return bad(read.problems.map(asLibraryProblem));
  const parsed = inForm(read.value, form, name);
  if (!parsed.success) return bad(problemsOf(parsed.error.issues, read.value, form).map(asLibraryProblem));
  return good({ form: parsed.data, spot: keyOrValue(read.value) });
}

function keyOrValue(source: SpecSource): (path: SpecPath) => Spot {
  return (path) => (typeof path.at(-1) === 'number' ? source.spotOfValue(path) : source.spotOfKey(path));
}

function asLibraryProblem(problem: Diagnostic): Diagnostic {
  const empty =
    problem.code === 'spec-empty'
      ? {
          expected: 'the keys and values of a library file',
          mend: 'put the file back as it came with the program',
        }
      : {};
  return { ...problem, code: 'library-form', ...empty };
}
