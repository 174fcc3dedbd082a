/**
 * A quick reader of markup that is written as it ought to be: tags in small letters, quoted attributes, everything closed
 * where it was opened, the usual references and no strange letters.
 *
 * It either gives the very tree that the full reader gives, or gives up without a word, and the full reader says what is wrong.
 * A test holds the two together.
 */
import { voidElements } from './subset';
import type { AttributeNode, ElementNode, TextNode, TreeNode } from './tree';

/** The tree of `html`; nothing if there is anything in it that needs a closer look. */
export function plainTree(html: string): readonly TreeNode[] | undefined {
  return strange.test(html) ? undefined : new PlainReader(html).read();
}

/** Letters that the full reader refuses, mends or counts as two. */
const strange = /[^\t\n\f\u0020-\u007e\u00a0-\ud7ff\ue000-\ufdcf\ufdf0-\ufffd]/;

type Building = Omit<ElementNode, 'children'> & { readonly children: Writable[] };
type Writable = { -readonly [K in keyof TextNode]: TextNode[K] } | Building;

const noAttributes: readonly AttributeNode[] = [];

class PlainReader {
  private at = 0;
  private readonly top: Writable[] = [];
  private readonly open: Building[] = [];
  private children = this.top;

  constructor(private readonly html: string) {}

  read(): readonly TreeNode[] | undefined {
    const { html } = this;
    while (this.at < html.length) {
      const next = html.charCodeAt(this.at) === lessThan ? this.tag() : this.text();
      if (!next) return undefined;
    }
    return this.open.length === 0 ? this.top : undefined;
  }

  /** Each step reads on; false if it met something that is not plain. */
  private text(): boolean {
    const offset = this.at;
    const found = this.html.indexOf('<', offset);
    this.at = found === -1 ? this.html.length : found;
    const text = resolved(this.html.slice(offset, this.at));
    if (text === undefined) return false;
    const last = this.children[this.children.length - 1];
    if (last?.kind === 'text') last.text += text;
    else this.children.push({ kind: 'text', text, offset });
    return true;
  }

  private tag(): boolean {
    const next = this.html.charCodeAt(this.at + 1);
    if (next === slash) return this.endTag();
    return isSmallLetter(next) ? this.startTag() : this.comment();
  }

  private startTag(): boolean {
    const offset = this.at;
    this.at += 1;
    const name = this.name();
    const attributes = this.html.charCodeAt(this.at) === greaterThan ? noAttributes : this.attributes();
    if (attributes === undefined || this.html.charCodeAt(this.at) !== greaterThan) return false;
    this.at += 1;
    const node: Building = { kind: 'element', name, attributes, children: [], offset };
    this.children.push(node);
    if (voids.has(name)) return true;
    this.open.push(node);
    this.children = node.children;
    return true;
  }

  /** Only the end of what was opened last. */
  private endTag(): boolean {
    this.at += 2;
    const name = this.name();
    if (name === '' || this.open.pop()?.name !== name || this.html.charCodeAt(this.at) !== greaterThan)
      return false;
    this.at += 1;
    this.children = this.open[this.open.length - 1]?.children ?? this.top;
    return true;
  }

  private comment(): boolean {
    const from = this.at + 4;
    const end = this.html.indexOf('-->', from);
    if (end === -1 || !this.html.startsWith('<!--', this.at)) return false;
    if (/^-?>|<!-|--!|-$/.test(this.html.slice(from, end))) return false;
    this.at = end + 3;
    return true;
  }

  /** Small letters, figures and hyphens. */
  private name(): string {
    const from = this.at;
    let code = this.html.charCodeAt(this.at);
    while (isSmallLetter(code) || (code >= 0x30 && code <= 0x39) || code === hyphen) {
      this.at += 1;
      code = this.html.charCodeAt(this.at);
    }
    return this.html.slice(from, this.at);
  }

  private attributes(): readonly AttributeNode[] | undefined {
    const attributes: AttributeNode[] = [];
    while (isSpace(this.html.charCodeAt(this.at))) {
      while (isSpace(this.html.charCodeAt(this.at))) this.at += 1;
      if (this.html.charCodeAt(this.at) === greaterThan) break;
      const offset = this.at;
      const name = this.name();
      const value = this.html.charCodeAt(this.at) === equals ? this.value() : '';
      if (name === '' || value === undefined) return undefined;
      if (attributes.some((known) => known.name === name)) return undefined;
      attributes.push({ name, value, offset });
    }
    return attributes;
  }

  private value(): string | undefined {
    const quote = this.html.charAt(this.at + 1);
    if (quote !== '"' && quote !== "'") return undefined;
    const from = this.at + 2;
    const end = this.html.indexOf(quote, from);
    if (end === -1) return undefined;
    this.at = end + 1;
    return resolved(this.html.slice(from, end));
  }
}

const voids: ReadonlySet<string> = new Set(voidElements);

const [lessThan, greaterThan, slash, hyphen, equals] = [0x3c, 0x3e, 0x2f, 0x2d, 0x3d];

const isSmallLetter = (code: number): boolean => code >= 0x61 && code <= 0x7a;

const isSpace = (code: number): boolean => code === 0x20 || code === 0x0a || code === 0x09 || code === 0x0c;

/** Text with its references resolved; nothing if it has one that is not among the usual ones. */
function resolved(text: string): string | undefined {
  if (!text.includes('&')) return text;
  let known = true;
  const plain = text.replace(/&([^;&]*;?)/g, (_, name: string) => {
    const letter = references.get(name);
    if (letter === undefined) known = false;
    return letter ?? '';
  });
  return known ? plain : undefined;
}

const references: ReadonlyMap<string, string> = new Map([
  ['amp;', '&'],
  ['lt;', '<'],
  ['gt;', '>'],
  ['quot;', '"'],
  ['#x27;', "'"],
  ['nbsp;', '\u00a0'],
]);
