/**
 * From the text of templates to templates ready to be filled in.
 *
 * Everything that can be known before there is a car is checked here: the form of the text, the names of
 * helpers and of pieces, and that no value can be put in as markup.
 */
import { parse } from 'handlebars/dist/cjs/handlebars/compiler/base.js';
import type { Diagnostic, Outcome } from '../../diagnostic/diagnostic';
import { bad, good } from '../../diagnostic/diagnostic';
import { calledIn } from './called';
import { checkNames } from './names';
import { templateProblem } from './problem';
import type { Context, Helpers, Markup } from './render';
import { renderTemplate } from './render';
import type { ProgramNode } from './syntax';

/** A set of templates that may call each other. */
export interface Templates {
  readonly names: readonly string[];
  /** What the set knows of a template that has this text here. */
  readonly found: FoundGood;
  /** Reads a template and every one that it calls, if they have not been read: for whoever has time before it has what to fill in. */
  open(name: string): void;
  /** Fills in one template. Every missing or unfit value is reported, at its place. */
  render(name: string, context: Context): Outcome<Markup>;
}

/** The tree of a template; parsed when it is first asked for, if not before. */
type Tree = () => ProgramNode;

/**
 * The tree of a template that was found good with the same helpers, beside templates of the same names, if it had this text
 * letter for letter; nothing of any other.
 */
export type FoundGood = (name: string, source: string) => Tree | undefined;

/** For templates all of which were found good before, as they are: each is read when it is filled in. */
export const allFoundGood: FoundGood = (_, source) => treeLater(source);

/**
 * Reads a set of templates, given by name. A template calls another with `{{> name}}`; the helpers given are
 * the only ones it can call, besides those built in (`if`, `unless`, `each`, `with`, `lookup`, `eq`, `and`, `or`, `not`).
 * What was `found` good before is not checked again.
 */
export function compileTemplates(
  sources: Readonly<Record<string, string>>,
  helpers: Helpers = {},
  found?: FoundGood,
): Outcome<Templates> {
  const programs = new Map<string, Tree>();
  const read: (readonly [name: string, program: ProgramNode])[] = [];
  const problems: Diagnostic[] = [];
  for (const [name, source] of Object.entries(sources)) {
    const known = found?.(name, source);
    if (known !== undefined) {
      programs.set(name, known);
      continue;
    }
    try {
      const program = parse(plainLines(source));
      programs.set(name, () => program);
      read.push([name, program]);
    } catch (error) {
      problems.push(syntaxProblem(name, error));
    }
  }
  const names = Object.keys(sources);
  for (const [name, program] of read) problems.push(...checkNames(name, program, names, helpers));
  if (problems.length > 0) return bad(problems);
  const render = (name: string, context: Context): Outcome<Markup> =>
    programs.has(name)
      ? renderTemplate(name, context, { programs, helpers })
      : bad([unknownTemplate(name, names)]);
  return good({
    names,
    open: (name) => openAll(name, programs, new Set()),
    found: (name, source) => (sources[name] === source ? programs.get(name) : undefined),
    render,
  });
}

function openAll(name: string, programs: ReadonlyMap<string, Tree>, opened: Set<string>): void {
  if (opened.has(name)) return;
  opened.add(name);
  for (const called of calledIn(programs.get(name)?.())) openAll(called, programs, opened);
}

function treeLater(source: string): Tree {
  let known: ProgramNode | undefined;
  return () => {
    const program = known ?? parse(plainLines(source));
    known = program;
    return program;
  };
}

/** Line ends as `\n`, no byte order mark. */
function plainLines(text: string): string {
  return text.replace(/^\uFEFF/, '').replace(/\r\n?/g, '\n');
}

function unknownTemplate(name: string, names: readonly string[]): Diagnostic {
  return {
    code: 'template-unknown',
    severity: 'error',
    message: `there is no template \`${name}\``,
    mend: `use one of the templates there are: ${names.join(', ')}`,
  };
}

function syntaxProblem(template: string, error: unknown): Diagnostic {
  const text = error instanceof Error ? error.message : String(error);
  const { lineNumber, column } = error as { lineNumber?: number; column?: number };
  const line = lineNumber ?? Number(/line (\d+)/.exec(text)?.[1] ?? 1);
  const got = /got '([^']*)'/.exec(text)?.[1];
  return templateProblem(
    'template-syntax',
    template,
    { line, column: column ?? 0 },
    {
      message:
        got === 'EOF'
          ? 'the template ends while a block is still open'
          : `the template cannot be read: ${firstLine(text)}`,
      mend: 'see that every `{{` has its `}}`, and every `{{#name}}` its `{{/name}}`',
    },
  );
}

/** The parser puts an excerpt and a list of its own token names below the first line; they help nobody. */
function firstLine(text: string): string {
  const [first = '', excerpt = ''] = text.split('\n');
  const plain = first.replace(/ - \d+:\d+$/, '').replace(/:$/, '');
  return excerpt === '' ? plain : `${plain}, near \`${excerpt.trim()}\``;
}
