/**
 * Holds the attributes of an element against the subset; keeps the books of ids and links.
 */
import type { DiagnosticCode } from '../diagnostic/catalogue';
import type { Diagnostic } from '../diagnostic/diagnostic';
import { nearest } from '../diagnostic/nearest';
import type { AttributeRule, Form, FormName } from './forms/form';
import { type Finder, type MarkupWords, markupProblem } from './problem';
import { subset } from './subset';
import type { AttributeNode, ElementNode } from './tree';

/** Names of fields become names in a file and in a list: plain small letters, never a point, which parts names in a PDF. */
const fieldNameForm = /^[a-z][a-z0-9]*(-[a-z0-9]+)*$/;

const idForm = /^[A-Za-z][\w.:-]*$/;

/** Names that attributes may give. */
export interface KnownNames {
  readonly drawings: readonly string[];
  readonly signs: readonly string[];
}

/** Checks attributes one element at a time, then ids and links over the whole paper. */
export class AttributeCheck {
  private readonly ids = new Map<string, number>();
  private readonly fields = new Map<string, number>();
  private readonly links: { readonly target: string; readonly offset: number }[] = [];

  constructor(
    private readonly finder: Finder,
    private readonly names: KnownNames,
    private readonly tell: (problem: Diagnostic) => void,
  ) {}

  /** The sound attributes of `node`, by name. */
  check(node: ElementNode, name: Exclude<FormName, 'paper'>): ReadonlyMap<string, string> {
    const form = subset[name];
    if (node.attributes.length === 0 && form.required === undefined) return none;
    const sound = new Map<string, string>();
    for (const attribute of node.attributes) {
      const rule = Object.hasOwn(form.attributes, attribute.name)
        ? form.attributes[attribute.name]
        : undefined;
      if (!rule) this.unknown(node, attribute, form);
      else if (this.value(attribute, rule)) sound.set(attribute.name, attribute.value);
    }
    for (const required of form.required ?? []) {
      if (node.attributes.some((attribute) => attribute.name === required)) continue;
      const rule = form.attributes[required];
      this.report('markup-attribute', node.offset, {
        message: `\`<${node.name}>\` needs \`${required}\``,
        expected: rule ? ruleWords(rule, this.names) : required,
        mend: `write \`<${node.name} ${required}="…">\``,
      });
    }
    return sound;
  }

  /** Told once the whole paper has been read: links that lead nowhere. */
  finish(): void {
    for (const { target, offset } of this.links) {
      if (this.ids.has(target)) continue;
      const near = nearest(target, this.ids.keys());
      this.report('markup-link', offset, {
        message: `nothing has the id \`${target}\``,
        mend: near === undefined ? 'give the block it should lead to that id' : `did you mean \`#${near}\`?`,
      });
    }
  }

  private unknown(node: ElementNode, attribute: AttributeNode, form: Form): void {
    const known = Object.keys(form.attributes);
    const near = nearest(attribute.name, known);
    this.report('markup-attribute', attribute.offset, {
      message: `\`<${node.name}>\` has no attribute \`${attribute.name}\``,
      expected: known.length === 0 ? 'no attributes' : known.map((name) => `\`${name}\``).join(', '),
      mend: near === undefined ? 'take it out' : `did you mean \`${near}\`?`,
    });
  }

  private value(attribute: AttributeNode, rule: AttributeRule): boolean {
    if (fits(attribute, rule, this.names)) return this.noteNames(attribute, rule);
    const choices = choicesOf(rule, this.names);
    const near = nearest(attribute.value, choices);
    this.report(codeFor(rule), attribute.offset, {
      message: refusal(attribute, rule),
      expected: ruleWords(rule, this.names),
      mend: near === undefined ? 'use one of those' : `did you mean \`${near}\`?`,
    });
    return false;
  }

  private noteNames(attribute: AttributeNode, rule: AttributeRule): boolean {
    if (rule.kind === 'link') this.links.push({ target: attribute.value.slice(1), offset: attribute.offset });
    if (rule.kind === 'id') return this.noteOnce(attribute, this.ids, 'id');
    return rule.kind === 'field-name' ? this.noteOnce(attribute, this.fields, 'field name') : true;
  }

  private noteOnce(attribute: AttributeNode, known: Map<string, number>, what: string): boolean {
    const first = known.get(attribute.value);
    if (first === undefined) {
      known.set(attribute.value, attribute.offset);
      return true;
    }
    const { template, line } = this.finder(first);
    this.report('markup-id', attribute.offset, {
      message: `the ${what} \`${attribute.value}\` is given twice`,
      found: `the first stands at ${template}:${line}`,
      mend: `give one of them another ${what}`,
    });
    return false;
  }

  private report(code: DiagnosticCode, offset: number, words: MarkupWords): void {
    this.tell(markupProblem(code, this.finder, offset, words));
  }
}

const none: ReadonlyMap<string, string> = new Map();

/** The words of an attribute that holds several. */
export function wordsIn(value: string): readonly string[] {
  return value.split(/[ \t\n\r\f]+/).filter((word) => word !== '');
}

function codeFor({ kind }: AttributeRule): DiagnosticCode {
  if (kind === 'drawing') return 'markup-drawing';
  return kind === 'signs' ? 'markup-sign' : 'markup-value';
}

function refusal({ name, value }: AttributeNode, { kind }: AttributeRule): string {
  if (kind === 'drawing') return `there is no drawing \`${value}\``;
  if (kind === 'signs') return `there is no safety sign \`${value}\` to be drawn`;
  return `\`${name}\` cannot be \`${value}\``;
}

function fits({ name, value }: AttributeNode, rule: AttributeRule, { drawings, signs }: KnownNames): boolean {
  switch (rule.kind) {
    case 'one-of':
      return rule.values.includes(value);
    case 'words': {
      const words = wordsIn(value);
      const known = words.every((word) => rule.groups.some((group) => group.includes(word)));
      return known && rule.groups.every((group) => words.filter((word) => group.includes(word)).length <= 1);
    }
    case 'count':
      return /^\d{1,6}$/.test(value) && Number(value) >= rule.least && Number(value) <= rule.most;
    case 'flag':
      return value === '' || value === name;
    case 'id':
      return idForm.test(value);
    case 'link':
      return value.startsWith('#') && idForm.test(value.slice(1));
    case 'field-name':
      return fieldNameForm.test(value);
    case 'text':
      return value.trim() !== '';
    case 'drawing':
      return drawings.includes(value);
    case 'signs': {
      const numbers = wordsIn(value);
      return (
        numbers.length >= 1 &&
        numbers.length <= rule.most &&
        new Set(numbers).size === numbers.length &&
        numbers.every((number) => signs.includes(number))
      );
    }
  }
}

function choicesOf(rule: AttributeRule, { drawings, signs }: KnownNames): readonly string[] {
  if (rule.kind === 'one-of') return rule.values;
  if (rule.kind === 'words') return rule.groups.flat();
  if (rule.kind === 'signs') return signs;
  return rule.kind === 'drawing' ? drawings : [];
}

/** What an attribute may hold, in words. */
export function ruleWords(
  rule: AttributeRule,
  { drawings, signs }: KnownNames = { drawings: [], signs: [] },
): string {
  switch (rule.kind) {
    case 'one-of':
      return rule.values.map((value) => `\`${value}\``).join(', ');
    case 'words':
      return rule.groups
        .map((group) => group.map((word) => `\`${word}\``).join(' or '))
        .join(', with or without ');
    case 'count':
      return `a whole number from ${rule.least} to ${rule.most}`;
    case 'flag':
      return 'nothing: its being there is enough';
    case 'id':
      return 'a letter, then letters, figures, `-`, `_`, `.` or `:`';
    case 'link':
      return '`#` and the id of a block';
    case 'field-name':
      return 'small letters and figures in words joined by `-`, once in a paper';
    case 'text':
      return 'words';
    case 'drawing':
      return drawings.length === 0
        ? 'the name of a drawing'
        : drawings.map((name) => `\`${name}\``).join(', ');
    case 'signs': {
      const one = 'the number of a safety sign';
      const what = rule.most === 1 ? one : `${one}, or up to ${rule.most} of them`;
      return signs.length === 0 ? what : `${what}: ${signs.map((name) => `\`${name}\``).join(', ')}`;
    }
  }
}
