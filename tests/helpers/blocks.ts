/** Builders of blocks for tests: short to write, complete as values. Every block has a place of its own. */
import type { Drawing } from '../../src/drawing/drawing';
import type {
  Block,
  BlockOrigin,
  CautionBlock,
  HeadingBlock,
  Inline,
  StepItem,
  TableCell,
  TableColumn,
  TableRow,
  TextRun,
} from '../../src/markup/block';

let line = 0;

/** A new place in a template called `test`. */
export function origin(): BlockOrigin {
  line += 1;
  return { template: 'test', line, column: 1 };
}

/** Inlines from text; `*strong*` and `_emphasis_` mark whole stretches. */
export function inlines(text: string): Inline[] {
  if (text === '') return [];
  return text
    .split(/(\*[^*]+\*|_[^_]+_)/)
    .filter((part) => part !== '')
    .map((part): TextRun => {
      const strong = part.startsWith('*') && part.length > 2;
      const emphasis = part.startsWith('_') && part.length > 2;
      return { kind: 'text', text: strong || emphasis ? part.slice(1, -1) : part, strong, emphasis };
    });
}

const made = <T extends object>(block: T, id?: string) => ({
  ...block,
  origin: origin(),
  ...(id === undefined ? {} : { id }),
});

export const heading = (level: HeadingBlock['level'], text: string, id?: string): HeadingBlock =>
  made({ kind: 'heading', level, content: inlines(text) } as const, id);

export const paragraph = (
  text: string | readonly Inline[],
  style: 'body' | 'lead' | 'note' = 'body',
  id?: string,
): Block =>
  made({ kind: 'paragraph', style, content: typeof text === 'string' ? inlines(text) : text } as const, id);

export const list = (items: readonly (string | readonly Block[])[], ordered = false): Block =>
  made({
    kind: 'list',
    ordered,
    items: items.map((item) => (typeof item === 'string' ? [paragraph(item)] : item)),
  } as const);

/** A step; what is left out is empty. */
export function step(
  action: string,
  rest: { result?: string; remark?: string; critical?: boolean; cautions?: readonly CautionBlock[] } = {},
): StepItem {
  return {
    origin: origin(),
    cautions: rest.cautions ?? [],
    action: inlines(action),
    result: inlines(rest.result ?? ''),
    remark: inlines(rest.remark ?? ''),
    critical: rest.critical ?? false,
  };
}

export const steps = (items: readonly StepItem[], mark: 'number' | 'tick' = 'number', start = 1): Block =>
  made({ kind: 'steps', mark, start, items } as const);

export const caution = (
  signal: CautionBlock['signal'],
  hazard: string,
  consequence = '',
  avoidance = '',
  id?: string,
): CautionBlock =>
  made(
    {
      kind: 'caution',
      signal,
      hazard: inlines(hazard),
      consequence: inlines(consequence),
      avoidance: inlines(avoidance),
    } as const,
    id,
  );

/** A caution in brief, as cards say it. */
export const briefCaution = (signal: CautionBlock['signal'], hazard: string): CautionBlock => ({
  ...caution(signal, hazard),
  brief: true,
});

/** A cell; `head` says what it heads. */
export const cell = (text: string, head: TableCell['head'] = 'none', span = 1): TableCell => ({
  content: inlines(text),
  span,
  head,
});

/** What a table is made of, in plain text. */
export interface TableText {
  readonly caption?: string;
  readonly head?: readonly string[];
  readonly rows: readonly (readonly string[])[];
  readonly columns?: readonly TableColumn[];
  readonly style?: 'ruled' | 'plain' | 'large';
  readonly striped?: boolean;
  readonly id?: string;
}

/** A table with one head row and plain cells. */
export function table(text: TableText): Extract<Block, { kind: 'table' }> {
  const count = text.rows[0]?.length ?? text.head?.length ?? 1;
  const columns =
    text.columns ?? Array.from({ length: count }, () => ({ align: 'left', weight: 1 }) as const);
  const head: TableRow[] =
    text.head === undefined ? [] : [{ cells: text.head.map((words) => cell(words, 'column')) }];
  return made(
    {
      kind: 'table',
      caption: inlines(text.caption ?? ''),
      columns,
      head,
      body: text.rows.map((row) => ({ cells: row.map((words) => cell(words)) })),
      style: text.style ?? 'ruled',
      striped: text.striped ?? false,
    } as const,
    text.id,
  );
}

/** A drawing of the given size with a line across and a word in it. */
export function drawing(widthPt: number, heightPt: number, name = 'drawing'): Drawing {
  const stroke = { colour: '#000000', widthPt: 1 } as const;
  return {
    name,
    widthPt,
    heightPt,
    alt: `a ${name}`,
    shapes: [
      { kind: 'rect', x: 0, y: 0, width: widthPt, height: heightPt, paint: { stroke } },
      {
        kind: 'text',
        x: 2,
        y: heightPt - 2,
        text: 'a',
        face: 'text',
        sizePt: 10,
        colour: '#000000',
        anchor: 'start',
      },
    ],
  };
}

export const figure = (widthPt: number, heightPt: number, caption = '', id?: string): Block =>
  made({ kind: 'figure', drawing: drawing(widthPt, heightPt), caption: inlines(caption) } as const, id);

export const definitions = (items: readonly (readonly [string, string])[]): Block =>
  made({
    kind: 'definitions',
    items: items.map(([term, meaning]) => ({ term: inlines(term), meaning: inlines(meaning) })),
  } as const);

export const contents = (depth: 1 | 2 | 3 = 2): Block => made({ kind: 'contents', depth } as const);

export const group = (
  blocks: readonly Block[],
  style: 'plain' | 'boxed' | 'columns' | 'look-up' | 'close' = 'plain',
  id?: string,
): Block => made({ kind: 'group', style, blocks } as const, id);

export const pageBreak = (unlessLeft?: 'half' | 'third' | 'whole'): Block =>
  made({ kind: 'page-break', ...(unlessLeft === undefined ? {} : { unlessLeft }) } as const);

export const rule = (lines = 0): Block => made({ kind: 'rule', lines } as const);

/** At least so many lines to write on, and as many as the page has room for. */
export const linesToFoot = (lines: number): Block => made({ kind: 'rule', lines, fill: true } as const);

/** A reference to the page on which `target` stands. */
export const pageOf = (target: string): Inline => ({ kind: 'page-of', target });

/** Text that leads to `target`. */
export const linked = (text: string, target: string): Inline => ({
  kind: 'text',
  text,
  strong: false,
  emphasis: false,
  link: target,
});

/** `count` different words. */
export function words(count: number, from = 0): string {
  return Array.from({ length: count }, (_, index) => `word${from + index}`).join(' ');
}
