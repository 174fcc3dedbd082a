/**
 * From markup to a tree that is exactly what was written.
 *
 * Only the tokenizer of parse5 is used. Its tree builder mends bad markup the way browsers do, moving and closing
 * elements; in a printed instruction a moved element is a wrong instruction, so here nothing is mended: every
 * element is closed where it was opened, and anything else is a problem.
 */
import { type Token, Tokenizer } from 'parse5';
import type { Diagnostic } from '../diagnostic/diagnostic';
import { plainTree } from './plainTree';
import { type Finder, markupProblem } from './problem';
import { voidElements } from './subset';

/** A stretch of text, references resolved, white space as written. */
export interface TextNode {
  readonly kind: 'text';
  readonly text: string;
  readonly offset: number;
}

/** One attribute as written. */
export interface AttributeNode {
  readonly name: string;
  readonly value: string;
  readonly offset: number;
}

/** An element as written. */
export interface ElementNode {
  readonly kind: 'element';
  readonly name: string;
  readonly attributes: readonly AttributeNode[];
  readonly children: readonly TreeNode[];
  /** Offset of its start tag in the markup. */
  readonly offset: number;
}

/** Text or an element. */
export type TreeNode = TextNode | ElementNode;

interface Building extends ElementNode {
  readonly children: TreeNode[];
}

/** Reads markup; problems are told to `tell`. */
export function readTree(
  html: string,
  finder: Finder,
  tell: (problem: Diagnostic) => void,
): readonly TreeNode[] {
  return plainTree(html) ?? fullTree(html, finder, tell);
}

/** The same for any markup. */
export function fullTree(
  html: string,
  finder: Finder,
  tell: (problem: Diagnostic) => void,
): readonly TreeNode[] {
  const builder = new TreeBuilder(finder, tell);
  const tokenizer = new Tokenizer({ sourceCodeLocationInfo: true }, builder);
  tokenizer.write(html, true);
  return builder.top;
}

class TreeBuilder {
  readonly top: TreeNode[] = [];
  private readonly open: Building[] = [];

  constructor(
    private readonly finder: Finder,
    private readonly tell: (problem: Diagnostic) => void,
  ) {}

  onCharacter(token: Token.CharacterToken): void {
    const list = this.open.at(-1)?.children ?? this.top;
    const last = list.at(-1);
    if (last?.kind === 'text') list[list.length - 1] = { ...last, text: last.text + token.chars };
    else list.push({ kind: 'text', text: token.chars, offset: offsetOf(token) });
  }

  onWhitespaceCharacter(token: Token.CharacterToken): void {
    this.onCharacter(token);
  }

  /** The tokenizer reports the letter itself as a problem. */
  onNullCharacter(): void {}

  onComment(): void {}

  onDoctype(token: Token.DoctypeToken): void {
    this.report(
      'markup-syntax',
      offsetOf(token),
      'a document type has no place here',
      'leave it out: a template is only the content of a paper',
    );
  }

  onStartTag(token: Token.TagToken): void {
    const attributes = token.attrs.map(({ name, value }) => ({
      name,
      value,
      offset: token.location?.attrs?.[name]?.startOffset ?? offsetOf(token),
    }));
    const node: Building = {
      kind: 'element',
      name: token.tagName,
      attributes,
      children: [],
      offset: offsetOf(token),
    };
    (this.open.at(-1)?.children ?? this.top).push(node);
    const isVoid = voidElements.includes(token.tagName);
    if (!isVoid) this.open.push(node);
    if (token.selfClosing && !isVoid) {
      this.report(
        'markup-unclosed',
        node.offset,
        `\`<${node.name}/>\` does not close itself`,
        `write \`<${node.name}></${node.name}>\``,
      );
      this.open.pop();
    }
  }

  onEndTag(token: Token.TagToken): void {
    const name = token.tagName;
    const at = this.open.findLastIndex((node) => node.name === name);
    if (at < 0) {
      this.report(
        'markup-unclosed',
        offsetOf(token),
        `\`</${name}>\` closes nothing`,
        `take it out, or open \`<${name}>\` before it`,
      );
      return;
    }
    for (const node of this.open.splice(at).slice(1)) this.unclosed(node, `\`</${name}>\``);
  }

  onEof(): void {
    for (const node of this.open) this.unclosed(node, 'the end of the template');
  }

  onParseError(error: { readonly code: string; readonly startOffset: number }): void {
    const words =
      syntaxWords[error.code] ?? `the markup is not well-formed (${error.code.replaceAll('-', ' ')})`;
    this.report('markup-syntax', error.startOffset, words, 'write it as HTML asks for it');
  }

  private unclosed(node: ElementNode, before: string): void {
    this.report(
      'markup-unclosed',
      node.offset,
      `\`<${node.name}>\` is not closed before ${before}`,
      `put \`</${node.name}>\` where it ends`,
    );
  }

  private report(
    code: 'markup-syntax' | 'markup-unclosed',
    offset: number,
    message: string,
    mend: string,
  ): void {
    this.tell(markupProblem(code, this.finder, offset, { message, mend }));
  }
}

/** Commoner slips, in plain words. */
const syntaxWords: Readonly<Record<string, string>> = {
  'duplicate-attribute': 'an attribute is given twice',
  'unknown-named-character-reference':
    'this name after `&` stands for no letter; for the mark itself write `&amp;`',
  'missing-semicolon-after-character-reference': 'the `;` after a letter written with `&` is missing',
  'missing-attribute-value': 'an attribute has an `=` but no value',
  'eof-in-tag': 'the template ends inside a tag',
  'eof-in-comment': 'the template ends inside a comment',
  'invalid-first-character-of-tag-name': 'a `<` stands here that begins no tag; write `&lt;`',
  'control-character-in-input-stream': 'a control character stands here, which cannot be printed',
  'unexpected-null-character': 'a null character stands here, which cannot be printed',
};

function offsetOf(token: { readonly location: { readonly startOffset: number } | null }): number {
  return token.location?.startOffset ?? 0;
}
