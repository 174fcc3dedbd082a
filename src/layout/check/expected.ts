/**
 * The words a paper must show, in the order they must be read, straight from its blocks. Written apart from the layout
 * it checks.
 */
import type {
  Block,
  BlockOrigin,
  CautionBlock,
  Inline,
  StepItem,
  StepsBlock,
  TableBlock,
} from '../../markup/block';
import type { SurveyedHeading } from '../survey';
import type { Theme } from '../theme';

/** What a word belongs to, as far as a check asks. */
export type Role =
  | { readonly kind: 'plain' }
  | { readonly kind: 'heading'; readonly block: Block }
  | {
      readonly kind: 'caution';
      readonly step: StepItem;
      readonly caution: CautionBlock;
      readonly steps: StepsBlock;
    }
  | { readonly kind: 'step'; readonly step: StepItem }
  | { readonly kind: 'table-row'; readonly block: TableBlock };

/** One word with what it belongs to. */
export interface ExpectedWord {
  readonly word: string;
  readonly role: Role;
  readonly origin: BlockOrigin;
  /** It is looked up with the card in the hand. */
  readonly lookUp?: boolean;
}

/** What the words depend on besides the blocks. */
export interface WordFacts {
  readonly headings: readonly SurveyedHeading[];
  readonly theme: Theme;
  /** The printed number of the page on which a named thing stands. */
  readonly labelOf: (name: string) => string;
}

const plain: Role = { kind: 'plain' };

/** All words of `blocks` in reading order. */
export function expectedWords(blocks: readonly Block[], facts: WordFacts): ExpectedWord[] {
  return blocks.flatMap((block) => wordsOfBlock(block, facts));
}

/** The words of inlines that stand on their own. */
export function wordsOf(content: readonly Inline[], facts: WordFacts): string[] {
  const text = content.map((inline) => {
    if (inline.kind === 'text') return inline.text;
    return inline.kind === 'break' ? ' ' : facts.labelOf(inline.target);
  });
  return splitAtSpaces(text.join(''));
}

/** Words of a text; U+00A0 does not part words. */
export function splitAtSpaces(text: string): string[] {
  return text.split(/[ \t\n\r\f]+/).filter((word) => word !== '');
}

function wordsOfBlock(block: Block, facts: WordFacts): ExpectedWord[] {
  const { origin } = block;
  const set = (content: readonly Inline[], role: Role = plain) =>
    wordsOf(content, facts).map((word) => ({ word, role, origin }));
  switch (block.kind) {
    case 'heading':
      return set(block.content, { kind: 'heading', block });
    case 'paragraph':
      return set(block.content);
    case 'list':
      return block.items.flatMap((item, index) => [
        ...(block.ordered ? [{ word: `${index + 1}.`, role: plain, origin }] : []),
        ...expectedWords(item, facts),
      ]);
    case 'steps':
      return block.items.flatMap((item, index) => stepWords(item, block, block.start + index, facts));
    case 'table':
      return tableWords(block, facts);
    case 'figure':
      return set(block.caption);
    case 'caution':
      return cautionWords(block, plain, facts);
    case 'signs':
      return block.items.flatMap(({ content }) => set(content));
    case 'definitions':
      return block.items.flatMap(({ term, meaning }) => [...set(term), ...set(meaning)]);
    case 'contents':
      return contentsWords(block.depth, origin, facts);
    case 'group': {
      const words = expectedWords(block.blocks, facts);
      return block.style === 'look-up' ? words.map((word) => ({ ...word, lookUp: true })) : words;
    }
    case 'page-break':
    case 'rule':
      return [];
  }
}

function stepWords(step: StepItem, steps: StepsBlock, value: number, facts: WordFacts): ExpectedWord[] {
  const { origin } = step;
  const cautions = step.cautions.flatMap((caution) =>
    cautionWords(caution, { kind: 'caution', step, caution, steps }, facts),
  );
  const number: ExpectedWord = { word: String(value), role: { kind: 'step', step }, origin };
  const rest = [step.action, step.result, step.remark].flatMap((content) => wordsOf(content, facts));
  return [...cautions, number, ...rest.map((word) => ({ word, role: plain, origin }))];
}

function cautionWords(block: CautionBlock, role: Role, facts: WordFacts): ExpectedWord[] {
  const texts = [block.hazard, block.consequence, block.avoidance].flatMap((content) =>
    wordsOf(content, facts),
  );
  const signal = splitAtSpaces(facts.theme.cautions[block.signal].word);
  return [...signal, ...texts].map((word) => ({ word, role, origin: block.origin }));
}

function tableWords(block: TableBlock, facts: WordFacts): ExpectedWord[] {
  const { origin } = block;
  const rows = (part: TableBlock['body'], role: Role) =>
    part.flatMap(({ cells }) =>
      cells.flatMap(({ content }) => wordsOf(content, facts).map((word) => ({ word, role, origin }))),
    );
  const caption = wordsOf(block.caption, facts).map((word) => ({ word, role: plain, origin }));
  return [...caption, ...rows(block.head, plain), ...rows(block.body, { kind: 'table-row', block })];
}

function contentsWords(depth: number, origin: BlockOrigin, facts: WordFacts): ExpectedWord[] {
  const listed = facts.headings.filter(({ block }) => block.level <= depth);
  return listed.flatMap(({ block, name }) => {
    const title = block.content.filter((inline) => inline.kind !== 'page-of');
    const words = [...wordsOf(title, facts), facts.labelOf(name)];
    return words.map((word) => ({ word, role: plain, origin }));
  });
}
