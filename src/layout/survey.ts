/**
 * What must be known of a paper before any of it is laid out: its headings, and every id in it.
 */
import type { Block, BlockOrigin, CautionBlock, HeadingBlock, Inline, StepsBlock } from '../markup/block';
import type { Problems } from './problems';

/** A heading with the name of its destination. */
export interface SurveyedHeading {
  readonly block: HeadingBlock;
  readonly name: string;
  /** Its words alone. */
  readonly title: string;
}

/** Headings in order, and all ids. */
export interface Survey {
  readonly headings: readonly SurveyedHeading[];
  readonly nameOf: ReadonlyMap<HeadingBlock, string>;
  readonly ids: ReadonlySet<string>;
  /** What all steps of the paper leave room for, so that their texts stand at one line throughout. */
  readonly steps: StepsSurvey;
}

/** What stands before the text of any step of a paper. */
export interface StepsSurvey {
  /** Whether any step has a mark beside its number: that it is critical, or that its caution is said above. */
  readonly hasMarks: boolean;
  /** Digits of the longest number. */
  readonly digits: number;
  /** Digits of the longest number of a step whose caution may be said above; none if there is none. */
  readonly saidDigits: number;
}

/** Walks all blocks, also those inside lists and groups. Two things with the same id are a problem. */
export function survey(blocks: readonly Block[], problems: Problems): Survey {
  const headings: SurveyedHeading[] = [];
  const ids = new Set<string>();
  const steps = { hasMarks: false, digits: 1, saidDigits: 0 };
  for (const block of eachBlock(blocks)) {
    for (const id of idsIn(block)) {
      if (ids.has(id)) problems.add(sameId(id), block.origin);
      ids.add(id);
    }
    if (block.kind === 'steps') {
      steps.saidDigits = Math.max(steps.saidDigits, ...saidBefore(block).map(digitsOf));
      steps.hasMarks ||= block.items.some((item) => item.critical) || steps.saidDigits > 0;
      steps.digits = Math.max(steps.digits, digitsOf(block.start + block.items.length - 1));
    }
    if (block.kind !== 'heading') continue;
    const name = block.id ?? `heading ${headings.length + 1}`;
    headings.push({ block, name, title: plainText(block.content) });
    ids.add(name);
  }
  return { headings, nameOf: new Map(headings.map(({ block, name }) => [block, name])), ids, steps };
}

/** The ids of a block: its own, and those of its rows or steps. */
export function idsIn(block: Block): readonly string[] {
  const inside = insideOf(block).flatMap(({ id }) => id ?? []);
  return block.id === undefined ? inside : [block.id, ...inside];
}

function insideOf(block: Block): readonly { readonly id?: string }[] {
  if (block.kind === 'table') return block.body;
  return block.kind === 'steps' ? block.items : [];
}

/** Every block, those inside others after the one that holds them. */
export function eachBlock(blocks: readonly Block[]): readonly Block[] {
  const all: Block[] = [];
  addEach(blocks, all);
  return all;
}

function addEach(blocks: readonly Block[], all: Block[]): void {
  for (const block of blocks) {
    all.push(block);
    if (block.kind === 'group') addEach(block.blocks, all);
    else if (block.kind === 'list') for (const item of block.items) addEach(item, all);
    else if (block.kind === 'steps') for (const item of block.items) all.push(...item.cautions);
  }
}

/** The words of inlines, without page references, on one line. */
export function plainText(content: readonly Inline[]): string {
  let text = '';
  for (const inline of content) {
    if (inline.kind === 'text') text += inline.text;
    else if (inline.kind === 'break') text += ' ';
  }
  return spaced.test(text) ? text.replace(/\s+/g, ' ').trim() : text;
}

/** Spaces at the ends, several together, or of another kind. */
const spaced = /^ | $| {2}|[^\S ]/;

/** By what a caution is known to say the same as another; nothing if it is to be said wherever it stands. */
export function saidKey(block: CautionBlock): string | undefined {
  // a mark of change is read beside the words it belongs to
  if (block.brief !== true || block.change !== undefined) return undefined;
  return `${block.signal} ${block.says ?? plainText(block.hazard)}`;
}

function digitsOf(value: number): number {
  return String(value).length;
}

/** Numbers of the steps with a caution that stands before an earlier step of the list too. */
function saidBefore({ items, start }: StepsBlock): number[] {
  const said = new Set<string>();
  return items.flatMap(({ cautions }, index) => {
    const keys = cautions.flatMap((caution) => saidKey(caution) ?? []);
    const before = keys.some((key) => said.has(key));
    for (const key of keys) said.add(key);
    return before ? [start + index] : [];
  });
}

/** Where a list of blocks begins, for problems of the paper as a whole. */
export function originOf(blocks: readonly Block[]): BlockOrigin {
  return blocks[0]?.origin ?? { template: 'paper', line: 1, column: 1 };
}

function sameId(id: string) {
  return {
    code: 'layout-duplicate-id',
    severity: 'error',
    message: `two things in this paper have the id \`${id}\``,
    found: id,
    expected: 'an id of its own for each',
    mend: 'change one of the two',
  } as const;
}
