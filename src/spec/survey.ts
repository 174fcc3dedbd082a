/**
 * One walk over the parsed file before its data is taken: keys that stand twice, anchors that never end, nesting
 * past all reason; and which value each alias stands for.
 */
import { type Alias, isAlias, isMap, isScalar, isSeq, type Node } from 'yaml';
import type { Diagnostic } from '../diagnostic/diagnostic';
import { endless, keyTwice, noAnchor, type SpotAt, tooDeep } from './form';

/** What the walk found. */
export interface Survey {
  readonly problems: readonly Diagnostic[];
  /** The value each alias stands for. */
  readonly targets: ReadonlyMap<Alias, Node>;
}

/** Deeper than this nothing is read; a spec goes down six levels. */
const deepest = 64;

/** The most values that all aliases of a file may stand for together. */
const mostCopied = 20_000;

/** Walk over everything under `root`. */
export function survey(root: Node, spotAt: SpotAt): Survey {
  const walk = new Walk(spotAt);
  walk.size(root, 0);
  return { problems: walk.problems, targets: walk.targets };
}

class Walk {
  readonly problems: Diagnostic[] = [];
  readonly targets = new Map<Alias, Node>();
  private readonly anchors = new Map<string, Node>();
  private readonly sizes = new Map<Node, number>();
  private readonly open = new Set<Node>();
  private copied = 0;

  constructor(private readonly spotAt: SpotAt) {}

  /** How many values stand under a node once every alias in it is written out. */
  size(node: unknown, depth: number): number {
    if (isAlias(node)) return this.aliasSize(node);
    if (!isMap(node) && !isSeq(node) && !isScalar(node)) return 0;
    if (node.anchor !== undefined) this.anchors.set(node.anchor, node);
    if (isScalar(node)) return 1;
    if (depth > deepest) {
      if (depth === deepest + 1) this.problems.push(tooDeep(this.place(node)));
      return 1;
    }
    this.open.add(node);
    const children: readonly unknown[] = isMap(node)
      ? node.items.flatMap((pair) => [pair.key, pair.value])
      : node.items;
    const sum = children.reduce<number>((total, child) => total + this.size(child, depth + 1), 1);
    if (isMap(node)) this.lookForDoubles(node.items.map((pair) => pair.key));
    this.open.delete(node);
    this.sizes.set(node, sum);
    return sum;
  }

  private aliasSize(alias: Alias): number {
    const target = this.anchors.get(alias.source);
    if (target === undefined) {
      this.problems.push(noAnchor(alias.source, this.place(alias)));
      return 1;
    }
    this.targets.set(alias, target);
    const size = this.sizes.get(target) ?? 1;
    const within = this.copied <= mostCopied;
    this.copied += size;
    const overflows = within && this.copied > mostCopied;
    if (this.open.has(target) || overflows) this.problems.push(endless(alias.source, this.place(alias)));
    return size;
  }

  private lookForDoubles(keys: readonly unknown[]): void {
    const first = new Map<string, unknown>();
    for (const key of keys) {
      const node = isAlias(key) ? this.anchors.get(key.source) : key;
      const name = keyText(node);
      if (node === undefined || name === undefined) continue;
      const other = first.get(name);
      if (other === undefined) first.set(name, node);
      else this.problems.push(keyTwice(name, this.place(key), this.place(other)));
    }
  }

  private place(node: unknown) {
    const range = isAlias(node) || isMap(node) || isSeq(node) || isScalar(node) ? node.range : undefined;
    return this.spotAt(range?.[0] ?? 0);
  }
}

/** A key as plain data has it; nothing for a key that is not a single value. */
export function keyText(key: unknown): string | undefined {
  if (!isScalar(key)) return undefined;
  return key.value === null ? '' : String(key.value);
}
