/**
 * Holds a tree against the subset. What comes out is sound: readers of elements need not look twice.
 */
import type { DiagnosticCode } from '../diagnostic/catalogue';
import type { Diagnostic } from '../diagnostic/diagnostic';
import { nearest } from '../diagnostic/nearest';
import { AttributeCheck, type KnownNames } from './attributes';
import type { BlockOrigin } from './block';
import type { Form, FormName } from './forms/form';
import { type Finder, type MarkupWords, markupProblem } from './problem';
import { forms, root, subset } from './subset';
import type { ElementNode, TextNode, TreeNode } from './tree';

/** An element that fits the subset. */
export interface Checked {
  readonly kind: 'element';
  readonly form: Exclude<FormName, 'paper'>;
  readonly attributes: ReadonlyMap<string, string>;
  readonly children: readonly (TextNode | Checked)[];
  readonly origin: BlockOrigin;
  readonly offset: number;
}

/** Words are anything but the white space of ASCII: a fixed space is a word. */
export function hasWords(text: string): boolean {
  return /[^ \t\n\r\f]/.test(text);
}

/** Checks a whole paper. Elements that do not fit are told and left out. */
export class SubsetCheck {
  readonly attributes: AttributeCheck;

  constructor(
    private readonly finder: Finder,
    names: KnownNames,
    private readonly tell: (problem: Diagnostic) => void,
  ) {
    this.attributes = new AttributeCheck(finder, names, tell);
  }

  /** The nodes that fit inside `parent`. */
  nodes(nodes: readonly TreeNode[], parent: FormName): readonly (TextNode | Checked)[] {
    const fitting: (TextNode | Checked)[] = [];
    for (const node of nodes) {
      const checked = node.kind === 'text' ? this.text(node, parent) : this.element(node, parent);
      if (checked) fitting.push(checked);
    }
    return fitting;
  }

  private text(node: TextNode, parent: FormName): TextNode | undefined {
    if (parent !== root && subset[parent].text === 'words') return node;
    if (hasWords(node.text)) {
      const lead = /^[ \t\n\r\f]*/.exec(node.text)?.[0].length ?? 0;
      this.report('markup-place', node.offset + lead, {
        message: `words stand directly in ${formWords(parent)}`,
        found: excerpt(node.text),
        expected: childWords(parent),
        mend: parent === root ? 'put them in a `<p>`' : 'put them in one of the elements that belong there',
      });
    }
    return undefined;
  }

  private element(node: ElementNode, parent: FormName): Checked | undefined {
    const form = this.chooseForm(node, parent);
    if (form === undefined) return undefined;
    const rule = subset[form];
    const attributes = this.attributes.check(node, form);
    if (rule.filled && !isFilled(node)) {
      this.report('markup-empty', node.offset, {
        message: `${formWords(form)} is empty`,
        mend: 'fill it, or leave it out with `{{#if}}` when there is nothing to say',
      });
    }
    const children = this.nodes(node.children, form);
    return {
      kind: 'element',
      form,
      attributes,
      children,
      origin: this.finder(node.offset),
      offset: node.offset,
    };
  }

  private chooseForm(node: ElementNode, parent: FormName): Checked['form'] | undefined {
    const here = fittingIn(parent, node.name);
    if (here.length > 0) return this.chooseByClass(node, here);
    const named = forms.filter(([, form]) => form.element === node.name);
    if (named.length === 0) {
      const near = nearest(node.name, new Set(forms.map(([, form]) => form.element)));
      this.report('markup-element', node.offset, {
        message: `\`<${node.name}>\` is not part of the markup`,
        mend:
          near === undefined
            ? 'use one of the elements that docs/markup.md lists'
            : `did you mean \`<${near}>\`?`,
      });
      return undefined;
    }
    this.report('markup-place', node.offset, {
      message: `\`<${node.name}>\` may not stand in ${formWords(parent)}`,
      expected: childWords(parent),
      mend: `\`<${node.name}>\` belongs in ${placesOf(named.map(([, form]) => form))}`,
    });
    return undefined;
  }

  private chooseByClass(node: ElementNode, here: readonly NamedForm[]): Checked['form'] | undefined {
    const [only, another] = here;
    const written = node.attributes.find(({ name }) => name === 'class');
    if (only && !another && !written && only[1].marker === undefined) return only[0];
    const words = (written?.value ?? '').split(/[ \t\n\r\f]+/).filter((word) => word !== '');
    const marked = here.find(([, form]) => form.marker !== undefined && words.includes(form.marker));
    if (marked) return marked[0];
    const plain = here.find(([, form]) => form.marker === undefined);
    const markers = here.flatMap(([, form]) => form.marker ?? []);
    if (plain && (words.length === 0 || 'class' in plain[1].attributes)) return plain[0];
    const near = nearest(words[0] ?? '', markers);
    this.report('markup-value', written?.offset ?? node.offset, {
      message:
        words.length === 0
          ? `\`<${node.name}>\` needs a class here`
          : `\`<${node.name}>\` has no class \`${words.join(' ')}\` here`,
      expected: markers.map((marker) => `\`${marker}\``).join(', '),
      mend: near === undefined ? 'give it one of these classes' : `did you mean \`${near}\`?`,
    });
    return undefined;
  }

  private report(code: DiagnosticCode, offset: number, words: MarkupWords): void {
    this.tell(markupProblem(code, this.finder, offset, words));
  }
}

type NamedForm = readonly [Checked['form'], Form];

/** The forms of an element of this name that may stand in `parent`. */
function fittingIn(parent: FormName, name: string): readonly NamedForm[] {
  let inParent = fitting.get(parent);
  if (inParent === undefined) {
    const all = forms.filter(([, form]) => form.within.includes(parent));
    const names = new Set(all.map(([, form]) => form.element));
    inParent = new Map(
      [...names].map((element) => [element, all.filter(([, form]) => form.element === element)]),
    );
    fitting.set(parent, inParent);
  }
  return inParent.get(name) ?? none;
}

const fitting = new Map<FormName, ReadonlyMap<string, readonly NamedForm[]>>();

const none: readonly NamedForm[] = [];

/** A form in a sentence: `<ol class="steps">`. */
export function formWords(name: FormName): string {
  if (name === root) return 'the paper itself';
  const { element, marker } = subset[name];
  return marker === undefined ? `\`<${element}>\`` : `\`<${element} class="${marker}">\``;
}

function childWords(parent: FormName): string {
  const names = forms.filter(([, form]) => form.within.includes(parent)).map(([name]) => formWords(name));
  const text = parent !== root && subset[parent].text === 'words' ? ['words'] : [];
  return [...text, ...new Set(names)].join(', ') || 'nothing';
}

function placesOf(named: readonly Form[]): string {
  return [...new Set(named.flatMap((form) => form.within.map(formWords)))].join(', ');
}

function isFilled(node: ElementNode): boolean {
  return node.children.some((child) => (child.kind === 'text' ? hasWords(child.text) : child.name !== 'br'));
}

function excerpt(text: string): string {
  const plain = text.trim().replace(/\s+/g, ' ');
  return plain.length > 40 ? `${plain.slice(0, 39)}…` : plain;
}
