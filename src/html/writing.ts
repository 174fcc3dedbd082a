/**
 * What the writers of blocks share while one page is written: the look, the names of things, and counters.
 */
import type { FontSet } from '../font/metrics';
import { eachBlock, idsIn, plainText } from '../layout/survey';
import type { Block, HeadingBlock } from '../markup/block';
import { type Html, onLines } from './element';
import type { ScreenLook } from './look';

/** A heading that can be led to. */
export interface NamedHeading {
  readonly block: HeadingBlock;
  readonly name: string;
  readonly title: string;
}

/** One page being written. */
export interface Writing {
  readonly look: ScreenLook;
  /** What drawings were measured with. */
  readonly fonts: FontSet;
  readonly headings: readonly NamedHeading[];
  readonly nameOf: ReadonlyMap<HeadingBlock, string>;
  /** Every id that a block of the paper has. */
  readonly ids: ReadonlySet<string>;
  /** What things with an id are called, for those who hear a link to one. */
  readonly titles: ReadonlyMap<string, string>;
  /** How many steps the paper has. */
  readonly stepCount: number;
  /** Whether there is anything to fill in. */
  readonly hasFields: boolean;
  /** Whether any step is one whose omission nothing later would show. */
  readonly hasCritical: boolean;
  /** The name of the first contents of the paper, if it has any. */
  readonly contentsName: string | undefined;
  /** A name of the page's own, different from every id of a block: those begin with a letter. */
  fresh(kind: string): string;
  /** Writes blocks that stand in another. */
  blocks(blocks: readonly Block[]): Html;
}

/** Walks the blocks once and learns what their writers need to know; `write` is what writes any one of them. */
export function beginWriting(
  blocks: readonly Block[],
  { look, fonts }: Pick<Writing, 'look' | 'fonts'>,
  write: (block: Block, writing: Writing) => Html,
): Writing {
  const all = eachBlock(blocks);
  const headings = headingsOf(all);
  const counts = new Map<string, number>();
  const writing: Writing = {
    look,
    fonts,
    headings,
    nameOf: new Map(headings.map(({ block, name }) => [block, name])),
    ids: new Set(all.flatMap(idsIn)),
    titles: titlesOf(all),
    stepCount: all.reduce((sum, block) => sum + (block.kind === 'steps' ? block.items.length : 0), 0),
    hasFields: all.some(hasField),
    hasCritical: all.some((block) => block.kind === 'steps' && block.items.some((item) => item.critical)),
    contentsName: contentsName(all),
    fresh: (kind) => {
      const count = (counts.get(kind) ?? 0) + 1;
      counts.set(kind, count);
      return `_${kind}-${count}`;
    },
    blocks: (inside) => onLines(inside.map((block) => write(block, writing))),
  };
  return writing;
}

function hasField(block: Block): boolean {
  if (block.kind === 'rule') return block.field !== undefined;
  return (
    block.kind === 'table' && block.body.some(({ cells }) => cells.some(({ field }) => field !== undefined))
  );
}

function headingsOf(all: readonly Block[]): NamedHeading[] {
  return all
    .filter((block) => block.kind === 'heading')
    .map((block, index) => ({
      block,
      name: block.id ?? `_heading-${index + 1}`,
      title: plainText(block.content),
    }));
}

function titlesOf(all: readonly Block[]): Map<string, string> {
  return new Map(
    all.flatMap((block) => {
      const title = titleOf(block);
      const own = block.id === undefined || title === '' ? [] : [[block.id, title] as const];
      return [...own, ...rowTitles(block)];
    }),
  );
}

/** A row is called by what stands in its first cell that says something. */
function rowTitles(block: Block): readonly (readonly [string, string])[] {
  if (block.kind !== 'table') return [];
  return block.body.flatMap(({ id, cells }) => {
    const title = cells.map(({ content }) => plainText(content)).find((words) => words !== '');
    return id === undefined || title === undefined ? [] : [[id, title] as const];
  });
}

function titleOf(block: Block): string {
  if (block.kind === 'heading') return plainText(block.content);
  if (block.kind === 'table' || block.kind === 'figure') return plainText(block.caption);
  return block.kind === 'caution' ? plainText(block.hazard) : '';
}

function contentsName(all: readonly Block[]): string | undefined {
  const first = all.find((block) => block.kind === 'contents');
  return first === undefined ? undefined : (first.id ?? '_contents');
}
