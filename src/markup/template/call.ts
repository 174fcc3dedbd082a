/**
 * Working out one expression of a template: a path, a literal, or a helper with what it is given.
 */
import type { Diagnostic } from '../../diagnostic/diagnostic';
import { builtInHelpers, type Helper, type Helpers } from './helpers';
import { nameOf } from './names';
import { templateProblem } from './problem';
import { findValue, type Scope } from './scope';
import type { CallNode, ExpressionNode, HashNode, LiteralNode, PathNode } from './syntax';

/** Works out expressions in one scope. A problem is told and yields `undefined`. */
export class Call {
  constructor(
    private readonly scope: Scope,
    private readonly helpers: Helpers,
    private readonly template: string,
    private readonly tell: (problem: Diagnostic) => void,
  ) {}

  /** The value of an expression. `always`: a call in brackets is a helper even with nothing given to it. */
  value(node: ExpressionNode, always: boolean): unknown {
    if (node.type === 'PathExpression') return this.path(node);
    if (node.type !== 'SubExpression') return literal(node);
    const given = node.params.length > 0 || (node.hash?.pairs.length ?? 0) > 0;
    const helper = this.helper(nameOf(node.path));
    if (helper && !/^(?:this\b|\.)/.test(nameOf(node.path))) return this.helped(node, helper);
    if (node.path.type !== 'PathExpression') return literal(node.path);
    return given || always ? undefined : this.path(node.path);
  }

  /** The `key=value` pairs of a call. */
  named(hash: HashNode | undefined): Record<string, unknown> {
    const named: Record<string, unknown> = {};
    for (const { key, value } of hash?.pairs ?? []) named[key] = this.value(value, true);
    return named;
  }

  private helper(name: string): Helper | undefined {
    if (Object.hasOwn(this.helpers, name)) return this.helpers[name];
    return Object.hasOwn(builtInHelpers, name) ? builtInHelpers[name] : undefined;
  }

  private helped(node: CallNode, helper: Helper): unknown {
    const values = node.params.map((param) => this.value(param, true));
    const named = this.named(node.hash);
    // what is missing has been told already; the helper would only complain a second time
    if (values.includes(undefined) || Object.values(named).includes(undefined)) return undefined;
    try {
      const result = helper(values, named);
      if (result !== undefined) return result;
      this.failed(node, 'it gave no value');
    } catch (error) {
      this.failed(node, error instanceof Error ? error.message : String(error));
    }
    return undefined;
  }

  private failed(node: CallNode, why: string): void {
    this.tell(
      templateProblem('template-helper', this.template, node.loc.start, {
        message: `the helper \`${nameOf(node.path)}\` could not do its work: ${why}`,
        mend: 'see that it is given what it needs',
      }),
    );
  }

  private path(node: PathNode): unknown {
    const found = findValue(node, this.scope);
    if (found.ok) return found.value;
    this.tell(
      templateProblem('template-missing', this.template, node.loc.start, {
        message: `there is no \`${found.missing}\` in ${found.inside}`,
        found: `{{${node.original}}}`,
        expected: found.known,
        mend: found.near === undefined ? 'use a name that is known here' : `did you mean \`${found.near}\`?`,
        path: node.original,
      }),
    );
    return undefined;
  }
}

function literal(node: LiteralNode | PathNode): unknown {
  return 'value' in node ? node.value : null;
}
