import fc from 'fast-check';
import { expect, test } from 'vitest';
import { drawGlass, type GlassMark } from '../../src/drawing/glass';
import { drawingFaults } from '../helpers/drawingFaults';
import { english } from '../helpers/english';
import { plexFonts } from '../helpers/fonts';

const draw = (marks: readonly GlassMark[], sizePt = 18, widthPt = 290) =>
  drawGlass({ glass: 'water glass G1', marks, say: english.messages.say, sizePt, widthPt }, plexFonts);

const marks: readonly GlassMark[] = [
  { kind: 'lowest', share: 0.25, name: 'lowest level with a fire', detail: 'one quarter of the glass' },
  { kind: 'working', share: 0.5, name: 'working level', detail: 'half way up' },
  { kind: 'highest', share: 0.9, name: 'highest level' },
];

/** Upper and lower edge of the first rectangle with this fill, or without any. */
function boxOf(drawing: ReturnType<typeof draw>, filled: boolean) {
  const [found] = drawing.shapes.flatMap((shape) =>
    shape.kind === 'rect' && shape.radius === 0 && (shape.paint.fill !== undefined) === filled ? [shape] : [],
  );
  return { top: found?.y ?? Number.NaN, bottom: (found?.y ?? 0) + (found?.height ?? 0) };
}

test('the water stands as high in the glass as it should', () => {
  for (const share of [0, 0.2, 0.5, 1]) {
    const drawing = draw([{ kind: 'working', share, name: 'working level' }]);
    const [water, glass] = [boxOf(drawing, true), boxOf(drawing, false)];
    expect(water.bottom).toBeCloseTo(glass.bottom, 6);
    expect((water.bottom - water.top) / (glass.bottom - glass.top)).toBeCloseTo(share, 6);
  }
});

test('the level to keep differs from its limits without colour: a whole heavy line and bold words', () => {
  const { shapes } = draw(marks);
  const lines = shapes.flatMap((shape) =>
    shape.kind === 'path' && shape.paint.stroke !== undefined ? [shape.paint.stroke] : [],
  );
  expect(lines.filter(({ dashPt }) => dashPt === undefined)).toHaveLength(1);
  expect(lines.filter(({ dashPt }) => dashPt !== undefined)).toHaveLength(2);
  const bold = shapes.flatMap((shape) =>
    shape.kind === 'text' && shape.face === 'narrow-bold' ? [shape.text] : [],
  );
  expect(bold).toEqual(['1/2 working level']);
});

test('says the same in words, from the top down', () => {
  expect(draw(marks).alt).toBe(
    'The water as it should stand in the water glass G1, and its limits, from the top down. highest level. ' +
      'working level, half way up. lowest level with a fire, one quarter of the glass.',
  );
});

test('whatever the levels, the words and the width, nothing overlaps, and all words have the size asked for', () => {
  const kinds = ['highest', 'working', 'lowest'] as const;
  const anyMark = fc.record({
    kind: fc.constantFrom(...kinds),
    share: fc.double({ min: 0, max: 1, noNaN: true }),
    words: fc.integer({ min: 1, max: 9 }),
  });
  fc.assert(
    fc.property(
      fc.array(anyMark, { minLength: 1, maxLength: 5 }),
      fc.integer({ min: 11, max: 24 }),
      fc.integer({ min: 200, max: 400 }),
      (all, sizePt, widthPt) => {
        const drawing = draw(
          all.map(({ kind, share, words }) => ({
            kind,
            share,
            name: `level ${'word '.repeat(words).trim()}`,
          })),
          sizePt,
          widthPt,
        );
        expect(drawingFaults(drawing)).toEqual([]);
        for (const shape of drawing.shapes) if (shape.kind === 'text') expect(shape.sizePt).toBe(sizePt);
      },
    ),
    { numRuns: 60 },
  );
});

test('a level has its fraction of the glass where an eye can judge it, and none where it stands at none', () => {
  const labels = (share: number) =>
    draw([{ kind: 'working', share, name: 'level' }]).shapes.flatMap((shape) =>
      shape.kind === 'text' ? [shape.text] : [],
    );
  for (const [share, label] of [
    [0.25, '1/4 level'],
    [1 / 3, '1/3 level'],
    [0.84, '5/6 level'],
    [0.4, '2/5 level'],
    [0.28, 'level'],
    [0.9, 'level'],
  ] as const)
    expect(labels(share), `${share}`).toEqual([label]);
});

test('leaders of levels that are a sixth of the glass apart go straight to their words', () => {
  const drawing = draw([
    { kind: 'highest', share: 0.875, name: 'highest level' },
    { kind: 'working', share: 0.5, name: 'working level' },
    { kind: 'lowest', share: 1 / 3, name: 'lowest level' },
  ]);
  const leaders = drawing.shapes.flatMap((shape) =>
    shape.kind === 'path' ? [shape.pieces.flatMap((piece) => ('y' in piece ? [piece.y] : []))] : [],
  );
  expect(leaders).toHaveLength(3);
  for (const ys of leaders) expect(new Set(ys).size).toBe(1);
  expect(drawingFaults(drawing)).toEqual([]);
});
