/** The units of a paper that can have a bar beside them: what each says, and the same blocks with bars. */
import { plainText } from '../layout/survey';
import type {
  Block,
  CautionBlock,
  ChangeMark,
  DefinitionItem,
  FigureBlock,
  HeadingBlock,
  Inline,
  Markable,
  StepItem,
  TableRow,
} from '../markup/block';

/** A heading that can be led to. */
export interface Anchor {
  readonly id: string;
  readonly title: string;
}

/** One paragraph, heading, step, caution, row, drawing, caption or word with its meaning. */
export interface Unit {
  readonly kind: string;
  /** What it says and how that is told apart: the same text, the same unit. Page numbers and counted places are no part of it. */
  readonly says: string;
  /** Its words, to tell how like another it is; for a drawing, those of its caption. */
  readonly words: string;
  /** The headings it stands under, as a key. */
  readonly section: string;
  /** The nearest heading above it, or itself, that has an id. */
  readonly anchor: Anchor | undefined;
}

/** Every unit, in the order of reading. Contents and breaks are none: they say nothing of their own. */
export function unitsOf(blocks: readonly Block[]): readonly Unit[] {
  const units: Unit[] = [];
  new UnitWalk((unit) => {
    units.push(unit);
    return undefined;
  }).blocks(blocks);
  return units;
}

/** The same blocks with the mark of each unit, counted as in `unitsOf`. */
export function withChanges(blocks: readonly Block[], changes: readonly (ChangeMark | undefined)[]): Block[] {
  let index = 0;
  return new UnitWalk(() => {
    const change = changes[index];
    index += 1;
    return change;
  }).blocks(blocks);
}

/** A place in a numbered row of headings: `4. Under the seat`. */
const countedPlace = /^\d+\.\s+/;

/** The words of a heading, without the number of its place and without a full stop. */
export function titleOf({ content }: HeadingBlock): string {
  const words = content.map((each) => (each.kind === 'text' ? each.text : ' ')).join('');
  return words.replace(countedPlace, '').trim().replace(/\.$/, '');
}

class UnitWalk {
  private readonly open: HeadingBlock[] = [];
  /** The last row of the table being walked that links may lead to: what stands below it stands under it. */
  private namedRow: { readonly id: string; readonly title: string } | undefined;

  constructor(private readonly visit: (unit: Unit) => ChangeMark | undefined) {}

  blocks(blocks: readonly Block[]): Block[] {
    return blocks.map((block) => this.block(block));
  }

  private block(block: Block): Block {
    switch (block.kind) {
      case 'heading':
        while ((this.open.at(-1)?.level ?? 0) >= block.level) this.open.pop();
        this.open.push(block);
        return this.unit(block, 'heading', `${block.level} ${titleOf(block)}`);
      case 'paragraph':
        return this.unit(block, 'paragraph', `${block.style} ${said(block.content)}`);
      case 'figure':
        return this.figure(block);
      case 'caution':
        return this.caution(block);
      case 'rule':
        return this.unit(block, 'rule', String(block.lines));
      case 'list':
        return { ...block, items: block.items.map((item) => this.blocks(item)) };
      case 'group':
        return { ...block, blocks: this.blocks(block.blocks) };
      case 'steps':
        return { ...block, items: block.items.map((item) => this.step(item)) };
      case 'signs':
        return {
          ...block,
          items: block.items.map((item) =>
            this.unit(item, 'sign', `${item.sign.name} ${said(item.content)}`),
          ),
        };
      case 'definitions':
        return { ...block, items: block.items.map((item) => this.definition(item)) };
      case 'table': {
        const own = block.caption.length === 0 ? block : this.unit(block, 'caption', said(block.caption));
        const head = block.head.map((row) => this.row(row));
        const body = block.body.map((row) => this.row(row));
        this.namedRow = undefined;
        return { ...own, head, body };
      }
      case 'contents':
      case 'page-break':
        return block;
    }
  }

  private figure(block: FigureBlock): FigureBlock {
    const words = said(block.caption);
    return this.unit(block, 'figure', `${words} ${JSON.stringify(block.drawing)}`, words);
  }

  private caution(block: CautionBlock): CautionBlock {
    const parts = [block.hazard, block.consequence, block.avoidance].map(said);
    return this.unit(
      block,
      'caution',
      [
        block.signal,
        block.brief === true ? 'brief' : 'whole',
        ...(block.signs ?? []).map(({ name }) => name),
        ...parts,
      ].join('\n'),
    );
  }

  private step(item: StepItem): StepItem {
    const cautions = item.cautions.map((caution) => this.caution(caution));
    const parts = [item.action, item.result, item.remark].map(said);
    const own = this.unit(item, 'step', [item.critical ? 'critical' : '', ...parts].join('\n'));
    return { ...own, cautions };
  }

  private row(row: TableRow): TableRow {
    const cells = row.cells.map(({ content, span, head, counts }) =>
      counts === true ? '' : `${head} ${span} ${said(content)}`,
    );
    const title = plainText(row.cells[0]?.content ?? []);
    if (row.id !== undefined) this.namedRow = { id: row.id, title };
    return this.unit(row, 'row', cells.join('\n'));
  }

  private definition(item: DefinitionItem): DefinitionItem {
    return this.unit(item, 'definition', [item.term, item.meaning].map(said).join('\n'));
  }

  private unit<T extends Markable>(thing: T, kind: string, says: string, words = says): T {
    const above = this.open.map((heading) => heading.id ?? titleOf(heading));
    const section = [...above, ...(this.namedRow === undefined ? [] : [this.namedRow.id])].join('/');
    const named = this.open.findLast(({ id }) => id !== undefined);
    const heading = named?.id === undefined ? undefined : { id: named.id, title: titleOf(named) };
    const anchor = this.namedRow ?? heading;
    const change = this.visit({ kind, says, words, section, anchor });
    return change === undefined ? thing : { ...thing, change };
  }
}

/** Words as they read. A page number stands for the place it leads to, wherever that came to be printed. */
function said(content: readonly Inline[]): string {
  return content
    .map((each) => {
      if (each.kind === 'break') return '\n';
      if (each.kind === 'page-of') return `(page of ${each.target})`;
      const marks = `${each.strong ? '*' : ''}${each.emphasis ? '_' : ''}`;
      return `${marks}${each.text}${marks}`;
    })
    .join('');
}
