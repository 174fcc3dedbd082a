/**
 * The parts of a parsed template, as the Handlebars parser makes them. Only what the renderer reads is named.
 */

/** A place in a template. Lines count from 1, columns from 0, as the parser counts. */
export interface Place {
  readonly line: number;
  readonly column: number;
}

interface Node {
  readonly loc: { readonly start: Place; readonly end: Place };
}

/** `a.b`, `../a`, `@index`, `this`. `depth` counts the `../`; `data` is true after an `@`. */
export interface PathNode extends Node {
  readonly type: 'PathExpression';
  readonly data: boolean;
  readonly depth: number;
  readonly parts: readonly string[];
  readonly original: string;
}

/** A value written in the template itself. */
export type LiteralNode = Node &
  (
    | { readonly type: 'StringLiteral'; readonly value: string }
    | { readonly type: 'NumberLiteral'; readonly value: number }
    | { readonly type: 'BooleanLiteral'; readonly value: boolean }
    | { readonly type: 'NullLiteral' }
    | { readonly type: 'UndefinedLiteral' }
  );

/** A helper with what it is given: `(helper a b key=c)`. */
export interface CallNode extends Node {
  readonly type: 'SubExpression';
  readonly path: PathNode | LiteralNode;
  readonly params: readonly ExpressionNode[];
  readonly hash?: HashNode;
}

/** Anything that yields a value. */
export type ExpressionNode = PathNode | LiteralNode | CallNode;

/** The `key=value` pairs of a call. */
export interface HashNode extends Node {
  readonly type: 'Hash';
  readonly pairs: readonly { readonly key: string; readonly value: ExpressionNode }[];
}

/** A run of statements. */
export interface ProgramNode extends Node {
  readonly type: 'Program';
  readonly body: readonly StatementNode[];
  readonly blockParams?: readonly string[];
}

/** Markup as it stands. `value` is `original` less the white space that belongs to lines of block tags. */
export interface ContentNode extends Node {
  readonly type: 'ContentStatement';
  readonly original: string;
  readonly value: string;
}

/** `{{value}}` or `{{helper value}}`. */
export interface MustacheNode extends Node {
  readonly type: 'MustacheStatement';
  readonly path: PathNode | LiteralNode;
  readonly params: readonly ExpressionNode[];
  readonly hash?: HashNode;
  readonly escaped: boolean;
}

/** `{{#name …}} … {{else}} … {{/name}}`. */
export interface BlockNode extends Node {
  readonly type: 'BlockStatement';
  readonly path: PathNode | LiteralNode;
  readonly params: readonly ExpressionNode[];
  readonly hash?: HashNode;
  readonly program?: ProgramNode;
  readonly inverse?: ProgramNode;
}

/** `{{> name context key=value}}`; with a program, `{{#> name}} … {{/name}}`. */
export interface PartialNode extends Node {
  readonly type: 'PartialStatement' | 'PartialBlockStatement';
  readonly name: PathNode | LiteralNode | CallNode;
  readonly params: readonly ExpressionNode[];
  readonly hash?: HashNode;
  readonly program?: ProgramNode;
}

/** `{{!-- words --}}`. */
export interface CommentNode extends Node {
  readonly type: 'CommentStatement';
}

/** `{{* name}}` and `{{#*inline "name"}}`: not part of what templates may use here. */
export interface DecoratorNode extends Node {
  readonly type: 'Decorator' | 'DecoratorBlock';
}

/** One statement of a template. */
export type StatementNode =
  | ContentNode
  | MustacheNode
  | BlockNode
  | PartialNode
  | CommentNode
  | DecoratorNode;
