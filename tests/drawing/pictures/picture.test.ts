/** Pictures of a museum's own: SVG of plain shapes, read as drawings. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Drawing, PathPiece } from '../../../src/drawing/drawing';
import { arcCurves } from '../../../src/drawing/pictures/arc';
import { readPathData } from '../../../src/drawing/pictures/pathData';
import { readPicture } from '../../../src/drawing/pictures/picture';

const svg = (inside: string, attributes = 'viewBox="0 0 96 48"') =>
  `<svg xmlns="http://www.w3.org/2000/svg" ${attributes}><title>A wheel</title>${inside}</svg>`;

function drawn(text: string): Drawing {
  const read = readPicture(text, 'badge.svg', 'badge');
  if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join('\n'));
  return read.value;
}

/** What is wrong with a picture. */
function faults(text: string): readonly string[] {
  const read = readPicture(text, 'badge.svg', 'badge');
  return read.ok ? [] : read.problems.map(({ message }) => message);
}

const pieces = (inside: string, attributes?: string): readonly PathPiece[] =>
  drawn(svg(inside, attributes)).shapes.flatMap((shape) => (shape.kind === 'path' ? shape.pieces : []));

test('its size is that of the file: a pixel is 1/96 of an inch (CSS 2.1, 4.3.2)', () => {
  expect(drawn(svg(''))).toMatchObject({ name: 'picture-badge', alt: 'A wheel', widthPt: 72, heightPt: 36 });
  expect(drawn(svg('', 'width="25.4mm" height="12.7mm" viewBox="0 0 10 5"'))).toMatchObject({
    widthPt: 72,
    heightPt: 36,
  });
});

test('shapes come where their file has them, moved by what they stand in', () => {
  const frame = 'width="10pt" viewBox="0 0 10 10"';
  expect(pieces('<g transform="translate(2 3)"><path d="M1,1 h2 v2 z"/></g>', frame)).toEqual([
    { op: 'move', x: 3, y: 4 },
    { op: 'line', x: 5, y: 4 },
    { op: 'line', x: 5, y: 6 },
    { op: 'close' },
  ]);
  // a quarter turn takes (1, 0) to (0, 1)
  const [start] = pieces('<line transform="rotate(90)" x1="1" y1="0" x2="2" y2="0" stroke="#000"/>', frame);
  expect(start).toMatchObject({ op: 'move', x: expect.closeTo(0, 9), y: expect.closeTo(1, 9) });
});

test('colours and lines are handed down; a style goes before an attribute', () => {
  const { shapes } = drawn(
    svg(
      '<g fill="#1f4e79" stroke="none"><rect width="4" height="4"/><rect width="4" height="4" fill="#fff" style="fill:#abc;stroke:black;stroke-width:2"/></g>',
    ),
  );
  expect(shapes.map((shape) => ('paint' in shape ? shape.paint : undefined))).toEqual([
    { fill: '#1f4e79' },
    { fill: '#aabbcc', stroke: { colour: '#000000', widthPt: 1.5 } },
  ]);
});

describe('path data (SVG 1.1, 8.3)', () => {
  test('numbers without a letter go on with the command; after a move they are lines', () => {
    expect(readPathData('m1 1 2 0 0 2')).toEqual(readPathData('M1,1 L3,1 L3,3'));
    expect(readPathData('M0 0C1 1 2 1 3 0S5-1 6 0')).toEqual(readPathData('M0 0C1 1 2 1 3 0C4 -1 5 -1 6 0'));
    expect(readPathData('M0 0Q1 1 2 0T4 0')).toEqual(readPathData('M0 0Q1 1 2 0Q3 -1 4 0'));
    expect(readPathData('M0 0a1 1 0 012 0')).toEqual(readPathData('M0 0A1 1 0 0 1 2 0'));
    expect(readPathData('M.5.5-1-1')).toEqual(readPathData('M0.5 0.5 L-1 -1'));
  });

  test.each(['L1 1', 'M1', 'M0 0 X', 'M0 0 L1', 'M0 0 z 1', 'M0 0 a1 1 0 2 1 1 1'])(
    '“%s” is not read',
    (text) => {
      expect(readPathData(text)).toBeUndefined();
    },
  );

  test('every place on an arc lies as far from its centre as the arc says', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 50, noNaN: true }),
        fc.double({ min: 0.1, max: 3, noNaN: true }),
        fc.boolean(),
        (r, angle, sweep) => {
          const turn = sweep ? angle : -angle;
          const end = { x: r * Math.cos(turn), y: r * Math.sin(turn) };
          const curves = arcCurves(r, 0, { rx: r, ry: r, turnDeg: 0, large: false, sweep, ...end });
          let [x, y] = [r, 0];
          for (const piece of curves) {
            if (piece.op !== 'curve') throw new Error('an arc is made of curves');
            const middle = (a: number, b: number, c: number, d: number) => (a + 3 * b + 3 * c + d) / 8;
            const [mx, my] = [middle(x, piece.x1, piece.x2, piece.x), middle(y, piece.y1, piece.y2, piece.y)];
            expect(Math.hypot(mx, my) / r).toBeCloseTo(1, 3);
            [x, y] = [piece.x, piece.y];
          }
          expect(Math.hypot(x - end.x, y - end.y)).toBeLessThan(1e-9 * r + 1e-9);
        },
      ),
    );
  });
});

test.each([
  ['<text>Museum</text>', 'a picture cannot have `<text>`'],
  ['<image href="a.png"/>', 'a picture cannot have `<image>`'],
  ['<rect width="1" height="1" fill="url(#g)"/>', 'a colour cannot be used'],
  ['<rect width="1" height="1" opacity="0.5"/>', 'a shape lets others shine through'],
  ['<path d="M0 0 L"/>', 'a `<path>` cannot be read'],
  ['<path fill-rule="evenodd" d="M0 0 L1 1"/>', 'a shape is filled by the rule `evenodd`'],
  ['<g transform="spin(2)"/>', 'a `transform` cannot be read'],
  ['<rect width="wide" height="1"/>', 'a `<rect>` cannot be read'],
  ['<g>', 'the picture is not well-formed'],
])('refused: %s', (inside, message) => {
  expect(faults(svg(inside))).toContain(message);
});

test('several faults are told at once; a title and a size are wanted', () => {
  expect(faults(svg('<text/><image/>'))).toHaveLength(2);
  expect(faults('<svg viewBox="0 0 1 1"/>')).toEqual(['the picture does not say what it shows']);
  expect(faults('<svg><title>A</title></svg>')).toEqual(['the picture has no size']);
});
