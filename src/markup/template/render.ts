/**
 * Filling in a template.
 *
 * The template's own tree is walked; every value that is asked for must exist, wherever it is asked for, also
 * in `{{#if}}`. Values are escaped. All problems are collected; a missing value is printed as nothing meanwhile.
 */
import type { Diagnostic, Outcome } from '../../diagnostic/diagnostic';
import { bad, good } from '../../diagnostic/diagnostic';
import { Call } from './call';
import { escapeText } from './escape';
import { type Helpers, holds } from './helpers';
import { nameOf } from './names';
import { Origins, type Source } from './origins';
import { templateProblem } from './problem';
import type { Scope } from './scope';
import type { BlockNode, ContentNode, MustacheNode, PartialNode, ProgramNode, StatementNode } from './syntax';
import { TagWatch } from './tagWatch';

export type { Helper, Helpers } from './helpers';

/** What a template is filled in with: plain data, complete, no optional parts. */
export type Context = Readonly<Record<string, unknown>>;

/** Filled-in markup, with the way back to the templates it came from. */
export interface Markup {
  readonly template: string;
  readonly html: string;
  readonly origins: Origins;
}

/** What a template can call. */
export interface TemplateWorld {
  readonly programs: ReadonlyMap<string, () => ProgramNode>;
  readonly helpers: Helpers;
}

const deepest = 40;

/** Fills in the template `name`. */
export function renderTemplate(name: string, context: Context, world: TemplateWorld): Outcome<Markup> {
  const run = new Rendering(world);
  run.template(name, { value: context, outer: undefined, data: { root: context }, names: {} });
  const problems = [...run.problems.values()];
  return problems.length > 0 ? bad(problems) : good({ template: name, html: run.html, origins: run.origins });
}

/** The body of `{{#> piece}} … {{/piece}}`, to be put in at `{{> @partial-block}}`. */
interface Body {
  readonly template: string;
  readonly program: ProgramNode;
  readonly scope: Scope;
  readonly outer: Body | undefined;
}

class Rendering {
  html = '';
  readonly origins = new Origins();
  /** By place and words, so that a missing value in a list of fifty is told once. */
  readonly problems = new Map<string, Diagnostic>();
  private readonly watch = new TagWatch();
  /** Where each stretch of words stands, for it is put in again and again. */
  private readonly places = new Map<ContentNode, Source>();
  private current = '';
  private body: Body | undefined;
  private depth = 0;
  /** Set when pieces call each other without end: what would follow is only more of the same. */
  private stopped = false;

  constructor(private readonly world: TemplateWorld) {}

  template(name: string, scope: Scope): void {
    const program = this.world.programs.get(name)?.();
    if (!program) return;
    const outer = this.current;
    this.current = name;
    this.program(program, scope);
    this.current = outer;
  }

  private program(node: ProgramNode | undefined, scope: Scope): void {
    for (const statement of node?.body ?? []) if (!this.stopped) this.statement(statement, scope);
  }

  private statement(node: StatementNode, scope: Scope): void {
    switch (node.type) {
      case 'ContentStatement':
        this.content(node);
        break;
      case 'MustacheStatement':
        this.mustache(node, scope);
        break;
      case 'BlockStatement':
        this.block(node, scope);
        break;
      case 'PartialStatement':
      case 'PartialBlockStatement':
        this.partial(node, scope);
        break;
      default:
        break;
    }
  }

  private content(node: ContentNode): void {
    if (node.value === '') return;
    this.origins.add(this.html.length, this.placeOf(node));
    this.watch.read(node.value);
    this.html += node.value;
  }

  /** Where the words of a template stand. */
  private placeOf(node: ContentNode): Source {
    const known = this.places.get(node);
    if (known !== undefined) return known;
    const skipped = node.original.slice(0, Math.max(0, node.original.indexOf(node.value))).split('\n');
    const column =
      skipped.length === 1
        ? node.loc.start.column + (skipped[0]?.length ?? 0)
        : (skipped.at(-1)?.length ?? 0);
    const line = node.loc.start.line + skipped.length - 1;
    const place = { template: this.current, line, column: column + 1, text: node.value };
    this.places.set(node, place);
    return place;
  }

  private mustache(node: MustacheNode, scope: Scope): void {
    const value = this.call(scope).value({ ...node, type: 'SubExpression' }, false);
    if (value === undefined) return;
    const { line, column } = node.loc.start;
    if (typeof value !== 'string' && !(typeof value === 'number' && Number.isFinite(value))) {
      this.report('template-value', node, {
        message: `\`${nameOf(node.path)}\` cannot be printed`,
        found: kindOf(value),
        expected: 'text, or a number',
        mend: 'ask for one of its parts, or decide with `{{#if}}` what to print',
      });
      return;
    }
    if (!this.watch.takesText) {
      this.report('template-place', node, {
        message: `\`${nameOf(node.path)}\` stands ${this.watch.where}, where no value can be put in`,
        mend: 'put values between tags, or inside a quoted attribute: `id="{{name}}"`',
      });
      return;
    }
    this.origins.add(this.html.length, { template: this.current, line, column: column + 1, text: '' });
    this.html += escapeText(String(value));
  }

  private block(node: BlockNode, scope: Scope): void {
    const [param] = node.params;
    if (!param) return;
    const value = this.call(scope).value(param, true);
    if (value === undefined) return;
    const name = nameOf(node.path);
    if (name === 'each') this.each(node, scope, value);
    else if (holds(value) === (name === 'unless')) this.program(node.inverse, scope);
    else this.program(node.program, name === 'with' ? inner(scope, value, {}, node.program, [value]) : scope);
  }

  private each(node: BlockNode, scope: Scope, list: unknown): void {
    if (list !== null && typeof list !== 'object') {
      this.report('template-value', node, {
        message: '`{{#each}}` needs a list',
        found: kindOf(list),
        expected: 'a list, or a group of named values',
        mend: 'use `{{#if}}` or `{{#with}}` for a single value',
      });
      return;
    }
    const values: readonly unknown[] = Array.isArray(list) ? list : Object.values(list ?? {});
    const keys: readonly (string | number)[] | undefined = Array.isArray(list)
      ? undefined
      : Object.keys(list ?? {});
    if (values.length === 0) this.program(node.inverse, scope);
    values.forEach((value, index) => {
      const key = keys?.[index] ?? index;
      const data = { index, key, first: index === 0, last: index === values.length - 1 };
      this.program(node.program, inner(scope, value, data, node.program, [value, key]));
    });
  }

  private partial(node: PartialNode, scope: Scope): void {
    if (node.name.type === 'PathExpression' && node.name.data) {
      this.bodyOfPartial(node);
      return;
    }
    const call = this.call(scope);
    const name = node.name.type === 'SubExpression' ? String(call.value(node.name, true)) : nameOf(node.name);
    if (!this.world.programs.has(name)) {
      this.report('template-unknown', node, {
        message: `there is no template \`${name}\` to put in here`,
        mend: 'use the name of a template there is',
      });
      return;
    }
    if (this.depth >= deepest) {
      this.stopped = true;
      this.report('template-depth', node, {
        message: `\`${name}\` is put in inside itself, again and again`,
        mend: 'see which piece calls itself, and stop it with `{{#if}}`',
      });
      return;
    }
    const [param] = node.params;
    const value = param ? call.value(param, true) : scope.value;
    const named = call.named(node.hash);
    // what is missing has been told; inside the piece it would only be told again
    if (value === undefined || Object.values(named).includes(undefined)) return;
    const base = typeof value === 'object' ? value : {};
    const context = Object.keys(named).length === 0 ? value : { ...base, ...named };
    const outer = this.body;
    if (node.program) this.body = { template: this.current, program: node.program, scope, outer };
    this.depth += 1;
    this.template(name, { value: context, outer: undefined, data: { root: scope.data.root }, names: {} });
    this.depth -= 1;
    this.body = outer;
  }

  private bodyOfPartial(node: PartialNode): void {
    const body = this.body;
    if (!body || nameOf(node.name) !== '@partial-block') {
      this.report('template-unknown', node, {
        message: `\`${nameOf(node.name)}\` has nothing to put in`,
        mend: 'call this piece with `{{#> name}} … {{/name}}`',
      });
      return;
    }
    const current = this.current;
    this.current = body.template;
    this.body = body.outer;
    this.program(body.program, body.scope);
    this.body = body;
    this.current = current;
  }

  private call(scope: Scope): Call {
    return new Call(scope, this.world.helpers, this.current, (problem) => this.note(problem));
  }

  private report(
    code: Parameters<typeof templateProblem>[0],
    node: StatementNode,
    words: Parameters<typeof templateProblem>[3],
  ): void {
    this.note(templateProblem(code, this.current, node.loc.start, words));
  }

  private note(problem: Diagnostic): void {
    const { file, line, column } = problem.at ?? { file: '', line: 0, column: 0 };
    this.problems.set(`${file}:${line}:${column} ${problem.message}`, problem);
  }
}

/** The scope of a block's inside. */
function inner(
  scope: Scope,
  value: unknown,
  data: object,
  program: ProgramNode | undefined,
  given: readonly unknown[],
): Scope {
  const params = program?.blockParams ?? [];
  const named = Object.fromEntries(params.map((name, index) => [name, given[index]]));
  const names = params.length === 0 ? scope.names : { ...scope.names, ...named };
  return { value, outer: scope, data: { ...scope.data, ...data }, names };
}

/** A value's kind, for a sentence. */
function kindOf(value: unknown): string {
  if (value === null) return 'no value (`null`)';
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (typeof value === 'object') return 'a group of values';
  if (typeof value === 'boolean') return `yes or no (\`${value}\`)`;
  return typeof value === 'number'
    ? `\`${value}\`, which is not a number that can be printed`
    : `a ${typeof value}`;
}
