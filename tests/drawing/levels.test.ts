import fc from 'fast-check';
import { expect, test } from 'vitest';
import { drawLevels, type LevelMark } from '../../src/drawing/levels';
import { drawingFaults } from '../helpers/drawingFaults';
import { english } from '../helpers/english';
import { plexFonts } from '../helpers/fonts';

const draw = (marks: readonly LevelMark[], top = 14) =>
  drawLevels(
    {
      of: 'boiler',
      from: 'the lower tube plate',
      unit: 'in',
      top,
      marks,
      say: english.messages.say,
      decimal: '.',
    },
    plexFonts,
  );
const mark = (kind: LevelMark['kind'], at: number, name: string): LevelMark => ({
  kind,
  at,
  name,
  height: `${at} in`,
});

test('words keep clear of each other and of the frame, also where five things stand at one height', () => {
  const marks = [
    mark('danger', 3.5, 'never under this'),
    ...(['level', 'cock', 'cut', 'glass', 'working'] as const).map((kind) => mark(kind, 5, `the ${kind}`)),
    mark(
      'glass',
      13.9,
      'top of the glass, which has a name so long that it takes three lines of the drawing or four',
    ),
  ];
  expect(drawingFaults(draw(marks))).toEqual([]);
});

test('whatever the heights, nothing overlaps and everything is named once', () => {
  const kinds = ['level', 'working', 'danger', 'glass', 'cock', 'cut'] as const;
  const anyMark = fc.record({
    kind: fc.constantFrom(...kinds),
    at: fc.double({ min: 0, max: 14, noNaN: true }),
    words: fc.integer({ min: 1, max: 14 }),
  });
  fc.assert(
    fc.property(fc.array(anyMark, { minLength: 1, maxLength: 16 }), (all) => {
      const marks = all.map(({ kind, at, words }, index) =>
        mark(kind, at, `mark${index} ${'word '.repeat(words).trim()}`),
      );
      const drawing = draw(marks);
      expect(drawingFaults(drawing)).toEqual([]);
      const words = drawing.shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []));
      for (const index of marks.keys())
        expect(words.filter((line) => new RegExp(`mark${index}\\b`).test(line))).toHaveLength(1);
    }),
    { numRuns: 60 },
  );
});

test('heights are to one scale: twice as high stands twice as far above the bottom of the shell', () => {
  const { shapes } = draw([mark('cock', 4, 'lower'), mark('cock', 8, 'upper')], 16);
  const holes = shapes.flatMap((shape) => (shape.kind === 'circle' ? [shape.cy] : [])).sort((a, b) => a - b);
  const shell = shapes.find((shape) => shape.kind === 'rect' && shape.radius === 3);
  if (shell?.kind !== 'rect') throw new Error('no shell');
  const bottom = shell.y + shell.height;
  const [upper = 0, lower = 0] = holes;
  expect((bottom - upper) / (bottom - lower)).toBeCloseTo(2, 9);
  expect((bottom - upper) / shell.height).toBeCloseTo(0.5, 9);
});

test('water stands up to the working level, and the words for a screen reader name every height', () => {
  const drawing = draw([mark('working', 7, 'working level'), mark('danger', 3, 'never under this')]);
  expect(drawing.alt).toContain('7 in: working level. 3 in: never under this');
});
