/**
 * Words: from text, `strong`, `em`, `br` and `a` to runs in one style, white space collapsed as HTML does.
 */
import { withApostrophes } from './apostrophes';
import type { Inline, TextRun } from './block';
import type { Checked } from './check';
import { withFiguresBound } from './figures';
import { withUnitOnce } from './spans';
import type { TextNode } from './tree';

type Style = Omit<TextRun, 'kind' | 'text'>;

const plain: Style = { strong: false, emphasis: false };

/** The words of an element. Line breaks at either end are kept: they were asked for. */
export function readInlines(nodes: readonly (TextNode | Checked)[]): readonly Inline[] {
  const line = new LineOfWords();
  line.nodes(nodes, plain);
  return line.finish();
}

class LineOfWords {
  private readonly list: Inline[] = [];

  nodes(nodes: readonly (TextNode | Checked)[], style: Style): void {
    for (const node of nodes) {
      if (node.kind === 'text') this.text(node.text, style);
      else this.element(node, style);
    }
  }

  finish(): readonly Inline[] {
    this.trimEnd();
    return this.list;
  }

  private element(node: Checked, style: Style): void {
    const target = node.attributes.get('href')?.slice(1);
    if (node.form === 'strong') this.nodes(node.children, { ...style, strong: true });
    else if (node.form === 'em') this.nodes(node.children, { ...style, emphasis: true });
    else if (node.form === 'a' && target !== undefined) this.nodes(node.children, { ...style, link: target });
    else if (node.form === 'a.page' && target !== undefined) this.list.push({ kind: 'page-of', target });
    else if (node.form === 'br') {
      this.trimEnd();
      this.list.push({ kind: 'break' });
    }
  }

  private text(written: string, style: Style): void {
    const single = toCollapse.test(written) ? written.replace(/[ \t\n\r\f]+/g, ' ') : written;
    const collapsed = withUnitOnce(withFiguresBound(withApostrophes(single)));
    const text = this.atLineStartOrSpace() ? collapsed.replace(/^ /, '') : collapsed;
    if (text === '') return;
    const last = this.list.at(-1);
    if (last?.kind === 'text' && sameStyle(last, style))
      this.list[this.list.length - 1] = { ...last, text: last.text + text };
    else this.list.push({ kind: 'text', text, ...style });
  }

  private atLineStartOrSpace(): boolean {
    const last = this.list.at(-1);
    return last === undefined || last.kind === 'break' || (last.kind === 'text' && last.text.endsWith(' '));
  }

  private trimEnd(): void {
    const last = this.list.at(-1);
    if (last?.kind !== 'text' || !last.text.endsWith(' ')) return;
    const text = last.text.slice(0, -1);
    if (text === '') this.list.pop();
    else this.list[this.list.length - 1] = { ...last, text };
  }
}

const toCollapse = /[\t\n\r\f]| {2}/;

function sameStyle(a: Style, b: Style): boolean {
  return a.strong === b.strong && a.emphasis === b.emphasis && a.link === b.link;
}
