/**
 * Checks the names a template uses, before it is filled in.
 */
import type { Diagnostic } from '../../diagnostic/diagnostic';
import { nearest } from '../../diagnostic/nearest';
import { builtInHelpers, type Helpers } from './helpers';
import { listNames, templateProblem } from './problem';
import type {
  BlockNode,
  CallNode,
  ExpressionNode,
  HashNode,
  LiteralNode,
  MustacheNode,
  PartialNode,
  PathNode,
  Place,
  ProgramNode,
  StatementNode,
} from './syntax';

/** Blocks a template may open with `{{#name}}`. */
export const blockNames = ['if', 'unless', 'each', 'with'] as const;

/** Every wrong name and every unfit construct of one template. */
export function checkNames(
  template: string,
  program: ProgramNode,
  templates: readonly string[],
  helpers: Helpers,
): Diagnostic[] {
  const check = new NameCheck(template, templates, helpers);
  check.program(program);
  return check.problems;
}

class NameCheck {
  readonly problems: Diagnostic[] = [];

  constructor(
    private readonly template: string,
    private readonly templates: readonly string[],
    private readonly helpers: Helpers,
  ) {}

  program(node: ProgramNode | undefined): void {
    for (const statement of node?.body ?? []) this.statement(statement);
  }

  private statement(node: StatementNode): void {
    switch (node.type) {
      case 'MustacheStatement':
        this.mustache(node);
        break;
      case 'BlockStatement':
        this.block(node);
        break;
      case 'PartialStatement':
      case 'PartialBlockStatement':
        this.partial(node);
        break;
      case 'Decorator':
      case 'DecoratorBlock':
        this.decorator(node.loc.start);
        break;
      default:
        break;
    }
  }

  private mustache(node: MustacheNode): void {
    if (!node.escaped) {
      this.report('template-raw', node.loc.start, {
        message: `\`${nameOf(node.path)}\` would be put in as markup`,
        mend: 'write it with two braces, `{{…}}`, so that it is put in as text; markup belongs in the template',
      });
    }
    this.call(node.path, node.params, node.hash);
  }

  private block(node: BlockNode): void {
    const name = nameOf(node.path);
    if (!(blockNames as readonly string[]).includes(name)) {
      this.report('template-helper', node.loc.start, {
        message: `there is no block \`${name}\``,
        found: `{{#${name}}}`,
        expected: listNames(blockNames),
        mend: 'for "if there is one" write `{{#if …}}`, for "for each" write `{{#each …}}`',
      });
    } else if (node.params.length !== 1) {
      this.report('template-syntax', node.loc.start, {
        message: `\`{{#${name}}}\` takes one value, not ${node.params.length}`,
        mend: `write \`{{#${name} value}}\`; put a helper and what it is given in round brackets`,
      });
    } else if (!node.program) {
      this.report('template-syntax', node.loc.start, {
        message: `\`{{^${name}}}\` is not used here`,
        mend: 'write `{{#unless …}}` or `{{else}}`',
      });
    }
    this.values(node.params, node.hash);
    this.program(node.program);
    this.program(node.inverse);
  }

  private partial(node: PartialNode): void {
    const { name } = node;
    if (name.type === 'SubExpression') this.expression(name);
    else if (!(name.type === 'PathExpression' && name.data) && !this.templates.includes(nameOf(name))) {
      const near = nearest(nameOf(name), this.templates);
      this.report('template-unknown', node.loc.start, {
        message: `there is no template \`${nameOf(name)}\` to put in here`,
        expected: listNames(this.templates),
        mend: near === undefined ? 'use the name of a template there is' : `did you mean \`${near}\`?`,
      });
    }
    if (node.params.length > 1) {
      this.report('template-syntax', node.loc.start, {
        message: `\`{{> ${nameOf(name)}}}\` takes one value, not ${node.params.length}`,
        mend: 'give further values by name: `{{> piece value name=other}}`',
      });
    }
    this.values(node.params, node.hash);
    this.program(node.program);
  }

  private decorator(place: Place): void {
    this.report('template-syntax', place, {
      message: 'decorators and inline pieces are not used here',
      mend: 'put the piece in a template file of its own and call it with `{{> name}}`',
    });
  }

  private expression(node: ExpressionNode): void {
    if (node.type === 'SubExpression') this.call(node.path, node.params, node.hash, true);
  }

  private values(params: readonly ExpressionNode[], hash: HashNode | undefined): void {
    for (const param of params) this.expression(param);
    for (const pair of hash?.pairs ?? []) this.expression(pair.value);
  }

  private call(
    path: CallNode['path'],
    params: readonly ExpressionNode[],
    hash?: HashNode,
    always = false,
  ): void {
    this.values(params, hash);
    const isCall = always || params.length > 0 || (hash?.pairs.length ?? 0) > 0;
    const name = nameOf(path);
    if (!isCall || Object.hasOwn(this.helpers, name) || Object.hasOwn(builtInHelpers, name)) return;
    const known = [...Object.keys(builtInHelpers), ...Object.keys(this.helpers)];
    const near = nearest(name, known);
    this.report('template-helper', path.loc.start, {
      message: `there is no helper \`${name}\``,
      expected: listNames(known, 30),
      mend: near === undefined ? 'use one of the helpers there are' : `did you mean \`${near}\`?`,
    });
  }

  private report(
    code: Parameters<typeof templateProblem>[0],
    place: Place,
    words: Parameters<typeof templateProblem>[3],
  ): void {
    this.problems.push(templateProblem(code, this.template, place, words));
  }
}

/** What a path or a literal is called in the template. */
export function nameOf(node: PathNode | LiteralNode | CallNode): string {
  if (node.type === 'PathExpression') return node.original;
  if (node.type === 'SubExpression') return nameOf(node.path);
  return 'value' in node ? String(node.value) : node.type === 'NullLiteral' ? 'null' : 'undefined';
}
