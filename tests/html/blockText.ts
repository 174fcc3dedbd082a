/** Random blocks for property tests, and the words that blocks hold, told without the writer's help. */
import fc from 'fast-check';
import type { Block, CautionBlock, Inline, TextRun } from '../../src/markup/block';
import {
  caution,
  cell,
  definitions,
  drawing,
  group,
  list,
  origin,
  pageBreak,
  rule,
  step,
  steps,
} from '../helpers/blocks';

/** Text as a keeper might write it, and as somebody with bad intent might. No controls: a page cannot hold them. */
const text = fc.oneof(
  fc.constantFrom(
    '<script>alert(1)</script>',
    '</p></main><h1>hello',
    '"><img src=x onerror=alert(1)>',
    "' onclick='alert(1)",
    '&amp; &lt; &#60; &copy',
    ']]> --> <!-- x',
    '</style></script></svg>',
    'javascript:alert(1)',
    '½ in − 3 °C',
    'Ωmega, Жук, ñandú',
  ),
  fc.string({ unit: 'grapheme', minLength: 1, maxLength: 24 }).filter((words) => !/\p{Cc}/u.test(words)),
);

const run: fc.Arbitrary<TextRun> = fc.record({
  kind: fc.constant('text' as const),
  text,
  strong: fc.boolean(),
  emphasis: fc.boolean(),
});
const lineEnd: fc.Arbitrary<Inline> = fc.constant({ kind: 'break' });
const content: fc.Arbitrary<readonly Inline[]> = fc.array(fc.oneof({ weight: 5, arbitrary: run }, lineEnd), {
  minLength: 1,
  maxLength: 4,
});
const maybe = fc.oneof(content, fc.constant([]));

const cautionBlock: fc.Arbitrary<CautionBlock> = fc
  .record({
    signal: fc.constantFrom('danger', 'warning', 'caution', 'notice'),
    hazard: content,
    consequence: maybe,
    avoidance: maybe,
  })
  .map((parts) => ({ ...caution(parts.signal, ''), ...parts }));

const stepItem = fc
  .record({
    cautions: fc.array(cautionBlock, { maxLength: 2 }),
    action: content,
    result: maybe,
    remark: maybe,
    critical: fc.boolean(),
  })
  .map((parts) => ({ ...step(''), ...parts }));

const tableBlock: fc.Arbitrary<Block> = fc
  .record({
    caption: maybe,
    head: fc.array(content, { minLength: 3, maxLength: 3 }),
    rows: fc.array(fc.array(maybe, { minLength: 3, maxLength: 3 }), { minLength: 1, maxLength: 4 }),
    striped: fc.boolean(),
  })
  .map(({ caption, head, rows, striped }) => ({
    kind: 'table',
    origin: origin(),
    caption,
    columns: (['left', 'right', 'centre'] as const).map((align) => ({ align, weight: 1 })),
    head: [{ cells: head.map((words) => ({ ...cell('', 'column'), content: words })) }],
    body: rows.map((row) => ({
      cells: row.map((words, index) => ({ ...cell('', index === 0 ? 'row' : 'none'), content: words })),
    })),
    style: 'ruled',
    striped,
  }));

const paragraphBlock: fc.Arbitrary<Block> = fc
  .record({ style: fc.constantFrom('body', 'lead', 'note'), content })
  .map((parts) => ({ kind: 'paragraph', origin: origin(), ...parts }));

const leaf: fc.Arbitrary<Block> = fc.oneof(
  paragraphBlock,
  fc
    .record({ level: fc.constantFrom(1, 2, 3, 4), content })
    .map((parts): Block => ({ kind: 'heading', origin: origin(), ...parts })),
  cautionBlock,
  fc
    .record({
      items: fc.array(stepItem, { minLength: 1, maxLength: 4 }),
      mark: fc.constantFrom('number', 'tick'),
      start: fc.integer({ min: 1, max: 99 }),
    })
    .map(({ items, mark, start }) => steps(items, mark, start)),
  tableBlock,
  fc
    .array(fc.record({ term: content, meaning: content }), { minLength: 1, maxLength: 3 })
    .map((items): Block => ({ ...definitions([]), kind: 'definitions', items })),
  content.map((caption): Block => ({ kind: 'figure', origin: origin(), drawing: drawing(80, 40), caption })),
  fc.constant(rule(0)),
  fc.constant(rule(3)),
  fc.constantFrom(undefined, 'half' as const, 'third' as const, 'whole' as const).map(pageBreak),
);

/** Papers of any blocks, also inside each other. */
export const papers: fc.Arbitrary<readonly Block[]> = fc.array(
  fc.oneof(
    { weight: 4, arbitrary: leaf },
    { weight: 1, arbitrary: fc.array(leaf, { maxLength: 3 }).map((blocks) => group(blocks, 'boxed')) },
    {
      weight: 1,
      arbitrary: fc
        .array(fc.array(paragraphBlock, { minLength: 1, maxLength: 2 }), { minLength: 1, maxLength: 3 })
        .map((items) => list(items)),
    },
  ),
  { maxLength: 8 },
);

/** Every word of a paper in order, as its blocks hold it; white space and the contents left out. */
export function wordsIn(blocks: readonly Block[]): string {
  return blocks.map(wordsOf).join('').replace(/\s+/gu, '');
}

function wordsOf(block: Block): string {
  switch (block.kind) {
    case 'heading':
    case 'paragraph':
      return plain(block.content);
    case 'list':
      return block.items.map(wordsIn).join('');
    case 'steps':
      return block.items
        .map((item) => wordsIn(item.cautions) + plain(item.action) + plain(item.result) + plain(item.remark))
        .join('');
    case 'table':
      return (
        plain(block.caption) +
        [...block.head, ...block.body]
          .flatMap(({ cells }) => cells.map((each) => plain(each.content)))
          .join('')
      );
    case 'figure':
      return plain(block.caption);
    case 'caution':
      return plain(block.hazard) + plain(block.consequence) + plain(block.avoidance);
    case 'signs':
      return block.items.map(({ content }) => plain(content)).join('');
    case 'definitions':
      return block.items.map(({ term, meaning }) => plain(term) + plain(meaning)).join('');
    case 'group':
      return wordsIn(block.blocks);
    case 'contents':
    case 'page-break':
    case 'rule':
      return '';
  }
}

function plain(content: readonly Inline[]): string {
  return content.map((inline) => (inline.kind === 'text' ? inline.text : ' ')).join('');
}
