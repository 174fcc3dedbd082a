/** Random blocks for property tests: every kind, any order, any nesting, and what a careless template might write. */
import fc from 'fast-check';
import type { Block, CautionBlock, StepItem } from '../../src/markup/block';
import {
  briefCaution,
  caution,
  cell,
  contents,
  definitions,
  figure,
  group,
  heading,
  list,
  pageBreak,
  paragraph,
  rule,
  step,
  steps,
  table,
} from './blocks';

const word = fc.oneof(
  {
    weight: 12,
    arbitrary: fc.constantFrom(
      ...'a of the pilot valve shut open until steady hiss boiler pressure glass vaporizer automatic burner'.split(
        ' ',
      ),
    ),
  },
  {
    weight: 2,
    arbitrary: fc.constantFrom('40\u00a0psi', 'low-water', '1/2', 'left/right', '—', '“shut”', '2026-04-12'),
  },
  {
    weight: 1,
    arbitrary: fc.constantFrom(
      'righthandpilotfuelstopvalve',
      'theverylongnameofavalvethatsomebodythoughtwouldbehelpfulonce',
    ),
  },
);
const text = (most: number) =>
  fc.array(word, { minLength: 1, maxLength: most }).map((words) => words.join(' '));
const maybe = (most: number) => fc.oneof(fc.constant(''), text(most));

const anyCaution: fc.Arbitrary<CautionBlock> = fc
  .tuple(fc.constantFrom('danger', 'warning', 'caution', 'notice'), text(5), maybe(9), maybe(9), fc.boolean())
  .map(([signal, hazard, consequence, avoidance, brief]) =>
    brief ? briefCaution(signal, hazard) : caution(signal, hazard, consequence, avoidance),
  );

/** Few, so that one stands before several steps of a list. */
const usualCaution = fc
  .constantFrom(
    ['danger', 'Vapor lit late goes off like a shot.'],
    ['warning', 'Scalding jet.'],
    ['notice', 'Let it drip.'],
  )
  .map(([signal, hazard]) => briefCaution(signal, hazard));

const anyStep: fc.Arbitrary<StepItem> = fc
  .record({
    action: maybe(14),
    result: maybe(8),
    remark: maybe(8),
    critical: fc.boolean(),
    cautions: fc.oneof(
      { weight: 4, arbitrary: fc.constant([]) },
      { weight: 1, arbitrary: fc.array(fc.oneof(anyCaution, usualCaution), { maxLength: 2 }) },
    ),
  })
  .map(({ action, ...rest }) => step(action, rest));

const anySteps = fc
  .tuple(
    fc.array(anyStep, { minLength: 1, maxLength: 7 }),
    fc.constantFrom('number', 'tick'),
    fc.integer({ min: 1, max: 120 }),
  )
  .map(([items, mark, start]) => steps(items, mark, start));

/** A row whose first cell is not empty. */
const anyRow = (columns: number) =>
  fc
    .tuple(text(5), fc.array(maybe(5), { minLength: columns - 1, maxLength: columns - 1 }))
    .map(([first, rest]) => [first, ...rest]);

const anyTable = fc
  .integer({ min: 1, max: 4 })
  .chain((columns) =>
    fc.record({
      rows: fc.array(anyRow(columns), { maxLength: 12 }),
      head: fc.option(fc.array(maybe(2), { minLength: columns, maxLength: columns }), { nil: undefined }),
      caption: maybe(4),
      style: fc.constantFrom('ruled', 'plain', 'large'),
      striped: fc.boolean(),
      section: fc.option(fc.tuple(fc.nat({ max: 12 }), text(3)), { nil: undefined }),
      columns: fc.array(
        fc.record({
          align: fc.constantFrom('left', 'right', 'centre'),
          weight: fc.integer({ min: 0, max: 3 }),
        }),
        { minLength: columns, maxLength: columns },
      ),
    }),
  )
  .map(({ head, section, ...rest }): Block => {
    const made = table(head === undefined ? rest : { ...rest, head });
    if (section === undefined) return made;
    const row = { cells: [cell(section[1], 'column', made.columns.length)] };
    const at = Math.min(section[0], made.body.length);
    return { ...made, body: [...made.body.slice(0, at), row, ...made.body.slice(at)] };
  });

const anyFigure = fc
  .tuple(fc.integer({ min: 10, max: 250 }), fc.integer({ min: 10, max: 150 }), maybe(5))
  .map(([width, height, caption]) => figure(width, height, caption));

const leaf: fc.Arbitrary<Block> = fc.oneof(
  { weight: 4, arbitrary: text(40).map((words) => paragraph(words)) },
  {
    weight: 1,
    arbitrary: fc
      .tuple(text(12), fc.constantFrom('lead', 'note'))
      .map(([words, style]) => paragraph(words, style)),
  },
  { weight: 2, arbitrary: anySteps },
  { weight: 2, arbitrary: anyTable },
  { weight: 1, arbitrary: anyCaution },
  { weight: 1, arbitrary: anyFigure },
  {
    weight: 1,
    arbitrary: fc.array(fc.tuple(text(3), text(9)), { minLength: 1, maxLength: 4 }).map(definitions),
  },
  { weight: 1, arbitrary: fc.integer({ min: 0, max: 5 }).map(rule) },
);

/** A heading never stands alone: something follows it. */
const headed = fc
  .tuple(fc.constantFrom(1, 2, 3, 4), text(5), leaf)
  .map(([level, words, below]): Block[] => [heading(level, words), below]);

const nested: fc.Arbitrary<Block[]> = fc.oneof(
  { weight: 6, arbitrary: leaf.map((block) => [block]) },
  { weight: 3, arbitrary: headed },
  {
    weight: 1,
    arbitrary: fc
      .tuple(
        fc.array(fc.array(leaf, { minLength: 1, maxLength: 2 }), { minLength: 1, maxLength: 3 }),
        fc.boolean(),
      )
      .map(([items, ordered]) => [list(items, ordered)]),
  },
  {
    weight: 1,
    arbitrary: fc
      .tuple(
        fc.array(
          fc.oneof(
            headed,
            leaf.map((block) => [block]),
          ),
          { minLength: 1, maxLength: 4 },
        ),
        fc.constantFrom('plain', 'boxed', 'columns'),
      )
      .map(([blocks, style]) => [group(blocks.flat(), style)]),
  },
  { weight: 1, arbitrary: fc.constant(0).map(() => [contents(2)]) },
);

/** Any paper: blocks and page breaks in any order. */
export const anyBlocks: fc.Arbitrary<Block[]> = fc
  .array(
    fc.oneof(
      { weight: 9, arbitrary: nested },
      {
        weight: 1,
        arbitrary: fc
          .constantFrom(undefined, 'half' as const, 'third' as const, 'whole' as const)
          .map((unlessLeft) => [pageBreak(unlessLeft)]),
      },
    ),
    {
      minLength: 1,
      maxLength: 9,
    },
  )
  .map((blocks) => blocks.flat());

/** What a card may hold: steps, cautions, small tables under headings. */
export const anyCard: fc.Arbitrary<Block[]> = fc
  .tuple(
    text(3),
    fc.array(
      fc.tuple(
        text(3),
        fc.oneof(anySteps, anySteps, anyTable, anyCaution),
        fc.constantFrom([], [], [pageBreak()], [pageBreak('half')]),
      ),
      { minLength: 1, maxLength: 4 },
    ),
  )
  .map(([title, parts]) => [
    heading(1, title),
    ...parts.flatMap(([words, block, after]) => [heading(2, words), block, ...after]),
  ]);
