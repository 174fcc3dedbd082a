/**
 * What the readers of elements share.
 */
import type { DiagnosticCode } from '../diagnostic/catalogue';
import type { Drawing } from '../drawing/drawing';
import type { Block, Inline } from './block';
import { type Checked, formWords } from './check';
import type { MarkupWords } from './problem';

/** Reads one kind of element; tells what is wrong and gives nothing if it cannot be read. */
export type ElementReader = (node: Checked, reader: Reader) => Block | undefined;

/** What a reader of an element may call on. */
export interface Reader {
  readonly drawings: ReadonlyMap<string, Drawing>;
  /** The signs with these numbers, which have been checked; none for an attribute that is not there. */
  signs(numbers: string | undefined): readonly Drawing[];
  /** The blocks among the children of `node`, in order. */
  blocks(node: Checked): readonly Block[];
  /** The words of `node`. */
  words(node: Checked | undefined): readonly Inline[];
  report(code: DiagnosticCode, node: Checked, words: MarkupWords): void;
}

/** A part an element has: how many of which form. */
export interface PartRule<Name extends string> {
  readonly form: Name;
  readonly least: number;
  readonly most: number;
}

/** The children of `node` by form. Told: parts missing, too many, or not in the order of `rules`. */
export function takeParts<Name extends Checked['form']>(
  node: Checked,
  reader: Reader,
  rules: readonly PartRule<Name>[],
): Readonly<Record<Name, readonly Checked[]>> {
  const parts = Object.fromEntries(rules.map(({ form }) => [form, [] as Checked[]])) as Record<
    Name,
    Checked[]
  >;
  const order = rules.map(({ form }) => form as string);
  let reached = 0;
  for (const child of elementsOf(node)) {
    const at = order.indexOf(child.form);
    if (at < 0) continue;
    if (at < reached) {
      reader.report('markup-place', child, {
        message: `${formWords(child.form)} stands after ${formWords(rules[reached]?.form ?? child.form)}`,
        expected: rules.map(({ form }) => formWords(form)).join(', '),
        mend: 'put the parts in this order',
      });
    }
    reached = Math.max(reached, at);
    parts[child.form as Name].push(child);
  }
  for (const { form, least, most } of rules) checkCount(node, reader, form, parts[form], least, most);
  return parts;
}

function checkCount(
  node: Checked,
  reader: Reader,
  form: Checked['form'],
  found: readonly Checked[],
  least: number,
  most: number,
): void {
  if (found.length < least) {
    reader.report('markup-part', node, {
      message: `${formWords(node.form)} needs ${formWords(form)}`,
      mend: `put one in ${formWords(node.form)}`,
    });
  }
  const extra = found[most];
  if (extra) {
    reader.report('markup-part', extra, {
      message: `${formWords(node.form)} takes only ${most} of ${formWords(form)}`,
      mend: 'take the others out, or join them',
    });
  }
}

/** The elements among the children of `node`. */
export function elementsOf(node: Checked): readonly Checked[] {
  return node.children.filter((child): child is Checked => child.kind === 'element');
}

/** Origin and id, as every block has them. */
export function baseOf(node: Checked): { readonly origin: Checked['origin']; readonly id?: string } {
  const id = node.attributes.get('id');
  return id === undefined ? { origin: node.origin } : { origin: node.origin, id };
}
