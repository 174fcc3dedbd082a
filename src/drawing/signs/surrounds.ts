/**
 * The shapes that safety signs stand in, 100 units wide, with their colours.
 *
 * Proportions are those of BGV A8 (Germany, 2002), section 4: ring 0.1 and bar 0.08 of the diameter of a prohibition, the
 * bar falling from the upper left to the lower right at 45° and nowhere interrupted; border 0.06 of the base of a warning,
 * its sides at 60°; the safety colour covers 35 % of a prohibition and half of any other sign at the least. That the corners
 * of a warning are rounded is said in ASR A1.3, table 1 (Germany, 2022); how much is not, so that is ours.
 *
 * Colours: RAL 3001, 1003, 6032 and 5005, which ISO 3864-4 gives as safety colours, in the screen values commonly printed
 * beside them; black and white are plain, to print sharply.
 */
import type { Colour, Shape } from '../drawing';
import { circle, type Point } from '../shapes';
import { bar } from './trace';

/** Safety colours and those that stand on them. */
export const safetyColours = {
  red: '#9b2423',
  yellow: '#f9a800',
  green: '#237f52',
  blue: '#005387',
  black: '#000000',
  white: '#ffffff',
} as const satisfies Readonly<Record<string, Colour>>;

const { red, yellow, green, blue, black, white } = safetyColours;

/** A sign without its name: shapes in a frame 100 wide. */
export interface SignShape {
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly Shape[];
}

/** What the symbol in a sign is drawn with. */
export interface SymbolInk {
  readonly ink: Colour;
  readonly ground: Colour;
}

/** Draws a symbol. */
export type Picture = (ink: SymbolInk) => readonly Shape[];

const size = 100;
const middle = { x: size / 2, y: size / 2 };
const triangleHeight = (size * Math.sqrt(3)) / 2;

/** A warning: a black border around yellow, the symbol in black. */
export function warning(picture: Picture): SignShape {
  const shapes = [
    triangle(0, 5, black),
    triangle(0.06 * size, 1.5, yellow),
    ...picture({ ink: black, ground: yellow }),
  ];
  return { width: size, height: triangleHeight, shapes };
}

/** A prohibition: the symbol in black on white, under a red ring and bar. */
export function prohibition(picture: Picture): SignShape {
  const ring = 0.1 * size;
  const reach = (size / 2 - ring / 2) / Math.SQRT2;
  const across: Shape = {
    ...bar(
      { x: middle.x - reach, y: middle.y - reach },
      { x: middle.x + reach, y: middle.y + reach },
      0.08 * size,
      red,
    ),
  };
  const shapes = [
    circle(middle, size / 2 - ring, { fill: white }),
    ...picture({ ink: black, ground: white }),
    across,
    circle(middle, (size - ring) / 2, { stroke: { colour: red, widthPt: ring } }),
  ];
  return { width: size, height: size, shapes };
}

/** What must be done: a blue disc, the symbol in white. */
export function mandatory(picture: Picture): SignShape {
  const disc = circle(middle, size / 2, { fill: blue });
  return { width: size, height: size, shapes: [disc, ...picture({ ink: white, ground: blue })] };
}

/** First aid and ways out: a green square, the symbol in white. */
export function safeCondition(picture: Picture): SignShape {
  return square(picture, green);
}

/** What puts fires out: a red square, the symbol in white. */
export function fireEquipment(picture: Picture): SignShape {
  return square(picture, red);
}

function square(picture: Picture, ground: Colour): SignShape {
  const field: Shape = { kind: 'rect', x: 0, y: 0, width: size, height: size, paint: { fill: ground } };
  return { width: size, height: size, shapes: [field, ...picture({ ink: white, ground })] };
}

/** The triangle, its sides moved inwards by `inset`, its corners rounded to about the radius `r`. */
function triangle(inset: number, r: number, fill: Colour): Shape {
  const inradius = triangleHeight / 3;
  const scale = (inradius - inset) / inradius;
  const centre = { x: size / 2, y: (2 * triangleHeight) / 3 };
  const corners = [
    { x: size / 2, y: 0 },
    { x: size, y: triangleHeight },
    { x: 0, y: triangleHeight },
  ].map(({ x, y }) => ({ x: centre.x + (x - centre.x) * scale, y: centre.y + (y - centre.y) * scale }));
  const reach = r * Math.sqrt(3);
  const pieces = corners.flatMap((corner, index) => {
    const before = towards(corner, corners[(index + 2) % 3] ?? corner, reach);
    const after = towards(corner, corners[(index + 1) % 3] ?? corner, reach);
    const [one, other] = [towards(before, corner, (2 * reach) / 3), towards(after, corner, (2 * reach) / 3)];
    return [
      { op: index === 0 ? ('move' as const) : ('line' as const), ...before },
      { op: 'curve' as const, x1: one.x, y1: one.y, x2: other.x, y2: other.y, ...after },
    ];
  });
  return { kind: 'path', pieces: [...pieces, { op: 'close' }], paint: { fill } };
}

/** The point `length` from one point on the way to another. */
function towards(from: Point, to: Point, length: number): Point {
  const whole = Math.hypot(to.x - from.x, to.y - from.y);
  if (whole === 0) return from;
  return { x: from.x + ((to.x - from.x) * length) / whole, y: from.y + ((to.y - from.y) * length) / whole };
}
