/** The folder beside a spec in which a museum or a club keeps templates, words, a theme and plans of its own. */
import { readdir, readFile } from 'node:fs/promises';
import { dirname, join, relative, sep } from 'node:path';
import type { Diagnostic } from '../diagnostic/diagnostic';
import { bad, good, type Outcome } from '../diagnostic/diagnostic';
import type { CarFiles, SharedFiles } from '../kettlebook';
import { valueAt } from '../spec/entry';
import { readSource, type SpecSource } from '../spec/source';

/** The program's files with the folder's in their places, and where those really stand. */
export interface OwnFiles {
  readonly shared: SharedFiles;
  /** The name a file has in the program → the path it was read from. */
  readonly from: ReadonlyMap<string, string>;
}

/** Put the files of the spec's own folder, if it names one, in the places of the program's. */
export async function withOwnFolder(
  shared: SharedFiles,
  { file, text }: CarFiles,
): Promise<Outcome<OwnFiles>> {
  const source = readSource(text, file);
  if (!source.ok) return good({ shared, from: new Map() });
  const own = await replaced(shared, file, source.value);
  if (!own.ok) return own;
  const theme = valueAt(source.value.data, ['print', 'theme']);
  if (typeof theme !== 'string') return own;
  const { texts } = own.value.shared;
  if (!texts.has(`themes/${theme}.yaml`)) return bad([noTheme(theme, texts, source.value)]);
  return good({ ...own.value, shared: { ...own.value.shared, theme } });
}

async function replaced(shared: SharedFiles, file: string, source: SpecSource): Promise<Outcome<OwnFiles>> {
  const path = ['print', 'folder'];
  const named = valueAt(source.data, path);
  if (typeof named !== 'string' || named.trim() === '') return good({ shared, from: new Map() });
  const folder = join(dirname(file), named);
  const at = source.spotOf(path);
  let names: readonly string[];
  try {
    names = await filesIn(folder);
  } catch {
    return bad([noFolder(folder, { at })]);
  }
  const strange = names.filter((name) => placeOf(name, shared) === 'strange');
  if (strange.length > 0) return bad(strange.map((name) => strangeFile(join(folder, name))));
  const texts = new Map(shared.texts);
  const templates = new Map(shared.templates);
  const ownTemplates: string[] = [];
  const from = new Map<string, string>();
  const own = new Set<string>();
  for (const name of names) {
    const place = placeOf(name, shared);
    if (typeof place === 'string') continue;
    const target = place.kind === 'template' ? templates : texts;
    target.set(place.name, await readFile(join(folder, name), 'utf8'));
    own.add(place.name);
    if (place.kind === 'template') ownTemplates.push(place.name);
    from.set(place.kind === 'template' ? place.name : `shared/${place.name}`, join(folder, name));
  }
  const unused = unusedTemplates(ownTemplates, templates, texts.get('papers.yaml') ?? '', shared);
  if (unused.length > 0) return bad(unused.map((name) => unusedTemplate(from.get(name) ?? name)));
  return good({ shared: { ...shared, texts, templates, own }, from });
}

/** Templates of the folder that replace none, that no paper has and that no template of the folder calls. */
function unusedTemplates(
  names: readonly string[],
  templates: ReadonlyMap<string, string>,
  plans: string,
  program: SharedFiles,
): readonly string[] {
  const source = readSource(plans, 'papers.yaml');
  const own = source.ok ? valueAt(source.value.data, ['own']) : undefined;
  const papers = (Array.isArray(own) ? own : []).map((plan) => valueAt(plan, ['name']));
  const called = names.flatMap((name) =>
    [...(templates.get(name) ?? '').matchAll(/\{\{[~#]*>\s*([\w/-]+)/g)].map(([, piece]) => piece),
  );
  return names.filter(
    (name) => !program.templates.has(name) && !papers.includes(name) && !called.includes(name),
  );
}

/** Problems with the names under which the files of the own folder really stand. */
export function toldFrom(
  problems: readonly Diagnostic[],
  from: ReadonlyMap<string, string>,
): readonly Diagnostic[] {
  return problems.map((problem) => {
    const path = problem.at === undefined ? undefined : from.get(problem.at.file);
    return problem.at === undefined || path === undefined
      ? problem
      : { ...problem, at: { ...problem.at, file: path } };
  });
}

type Placed = { readonly kind: 'template' | 'text'; readonly name: string } | 'strange' | 'not-read';

/**
 * Whose place a file of the folder takes. Steps, cautions and liquids have no place here: a caution is not a matter of
 * taste, and steps are changed in the spec, with a reason.
 */
function placeOf(name: string, shared: SharedFiles): Placed {
  if (/^pictures\/[a-z][a-z0-9-]*\.svg$/.test(name)) return { kind: 'text', name };
  if (!/\.(hbs|ya?ml)$/.test(name)) return 'not-read';
  if (/^templates\/.+\.hbs$/.test(name))
    return { kind: 'template', name: name.replace(/^templates\//, '').replace(/\.hbs$/, '') };
  const mayReplace = name === 'papers.yaml' || isOfLanguage(name, shared);
  return mayReplace || /^themes\/[^/]+\.yaml$/.test(name) ? { kind: 'text', name } : 'strange';
}

/** A word file of a language the program has, a list of words of one of its countries or of cars with one burner, or any file of another language. */
function isOfLanguage(name: string, { texts }: SharedFiles): boolean {
  const [, folder, file = ''] = /^(languages\/[a-z]{2,3}\/)(.+)$/.exec(name) ?? [];
  if (folder === undefined) return false;
  if (![...texts.keys()].some((known) => known.startsWith(folder))) return true;
  return (
    (texts.has(name) && /^(?:language|words|phrases|messages|furniture)\.yaml$/.test(file)) ||
    /^(?:[a-z]{2,3}-[A-Z]{2}|one-burner)\.yaml$/.test(file)
  );
}

async function filesIn(folder: string): Promise<readonly string[]> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  return entries
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join('/'))
    .sort();
}

function noTheme(theme: string, texts: ReadonlyMap<string, string>, source: SpecSource): Diagnostic {
  const names = [...texts.keys()].flatMap((name) => /^themes\/(.+)\.yaml$/.exec(name)?.slice(1) ?? []);
  return {
    code: 'theme-unknown',
    severity: 'error',
    at: source.spotOf(['print', 'theme']),
    message: `there is no theme \`${theme}\``,
    found: `\`${theme}\``,
    expected: names.map((name) => `\`${name}\``).join(', '),
    mend: 'name one of these, or put one of your own into `themes` of the folder that `print.folder` names',
  };
}

function noFolder(folder: string, where: Pick<Diagnostic, 'at'>): Diagnostic {
  return {
    code: 'folder-absent',
    severity: 'error',
    ...where,
    message: `the folder \`${folder}\` is not there or cannot be read`,
    expected: 'a folder beside the spec',
    mend: 'make the folder, or take `folder` out',
  };
}

function unusedTemplate(path: string): Diagnostic {
  return {
    code: 'folder-strange',
    severity: 'error',
    message: `no paper is made from \`${path}\``,
    expected:
      'the name of a template that comes with the program, of a paper under `own` in `papers.yaml`, or of a piece that another template calls',
    mend: 'name the paper under `own` in a `papers.yaml` of the folder, or take the file out',
  };
}

function strangeFile(path: string): Diagnostic {
  return {
    code: 'folder-strange',
    severity: 'error',
    message: `\`${path}\` takes the place of nothing`,
    expected:
      '`templates/….hbs`, `themes/….yaml`, `papers.yaml`, words of a language the program has, or a language it has not',
    mend: 'put it under the name of what it replaces; steps are changed in the spec under `changes`, and cautions not at all',
  };
}
