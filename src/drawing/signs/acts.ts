/** Symbols of what must, may or must not be done, and of what helps, placed in a frame 100 wide and high. */
import type { Colour, Shape } from '../drawing';
import type { Point } from '../shapes';
import { placeFlame } from './flame';
import type { Picture } from './surrounds';
import { bar, drawn, filled } from './trace';

/** A match that burns. */
export const burningMatch: Picture = ({ ink, ground }) => [
  bar({ x: 33, y: 75 }, { x: 55, y: 49 }, 5, ink),
  ...placeFlame({ x: 57.5, y: 53 }, 36, ink, ground),
];

/** A hand whose finger touches a surface. */
export const handOnSurface: Picture = ({ ink }) => [
  filled('M 22 66 L 62 66 L 62 71.5 L 22 71.5 Z', ink),
  // arm and back of the hand
  filled('M 72 19 L 84 31 L 73 46 C 69 52 60 55 54 50 C 49 46 52 40 58 35 Z', ink),
  // forefinger, thumb, and the fingers that are bent
  bar({ x: 57, y: 46 }, { x: 43.5, y: 60.8 }, 6, ink),
  drawn('M 56 40 C 50 42 46 44 43 48', 5.4, ink),
  bar({ x: 63, y: 49 }, { x: 57.5, y: 56.5 }, 5.6, ink),
  bar({ x: 69, y: 46 }, { x: 65, y: 53.5 }, 5.4, ink),
];

/** A bucket of water poured on a flame. */
export const bucketOnFlame: Picture = ({ ink, ground }) => [
  // the bucket lies on its side, its mouth to the left; its handle hangs from the mouth
  filled('M 51.5 27 L 60.5 47.5 L 81 41.5 L 72.5 22 Z', ink),
  drawn('M 51.5 27 C 44 23 56 15.5 72.5 22', 2, ink),
  // water
  drawn('M 55 40 C 48 43 42 48 40 56', 3, ink),
  drawn('M 57.5 45.5 C 52 48 47 52 45.5 58', 3, ink),
  drawn('M 52 34 C 44 37 37 42 34 51', 3, ink),
  ...placeFlame({ x: 38, y: 83 }, 26, ink, ground),
];

/** A pair of gloves. */
export const gloves: Picture = ({ ink }) => [
  ...glove({ x: 31.5, y: 50 }, -9, 1, ink),
  ...glove({ x: 68.5, y: 50 }, 9, -1, ink),
];

/** A glove with its fingers up; `side` 1 has its thumb at the right. Its middle stands at `at`, turned by `degrees`. */
function glove(at: Point, degrees: number, side: 1 | -1, ink: Colour): Shape[] {
  const angle = (degrees * Math.PI) / 180;
  const put = (x: number, y: number): Point => ({
    x: at.x + side * x * Math.cos(angle) - y * Math.sin(angle),
    y: at.y + side * x * Math.sin(angle) + y * Math.cos(angle),
  });
  const outline = (points: readonly (readonly [number, number])[]) =>
    `${points
      .map(([x, y], index) => {
        const point = put(x, y);
        return `${index === 0 ? 'M' : 'L'} ${point.x} ${point.y}`;
      })
      .join(' ')} Z`;
  const fingers = [
    [-8.4, -17],
    [-2.8, -21.5],
    [2.8, -21],
    [8.4, -16],
  ] as const;
  return [
    ...fingers.map(([x, tip]) => bar(put(x, 3), put(x, tip), 4.9, ink)),
    bar(put(7, 11), put(15, -1.5), 5.2, ink),
    filled(
      outline([
        [-10.8, 0],
        [10.8, 0],
        [10.8, 9],
        [8.4, 16],
        [-8.4, 16],
        [-10.8, 9],
      ]),
      ink,
    ),
    filled(
      outline([
        [-9.5, 18.4],
        [9.5, 18.4],
        [10.5, 26],
        [-10.5, 26],
      ]),
      ink,
    ),
  ];
}

/** A fire extinguisher beside a flame. */
export const extinguisherAndFlame: Picture = ({ ink, ground }) => [
  { kind: 'rect', x: 24, y: 37, width: 24, height: 50, radius: 7, paint: { fill: ink } },
  { kind: 'rect', x: 32, y: 25, width: 8, height: 14, paint: { fill: ink } },
  drawn('M 36 25 L 50 17.5', 5, ink),
  drawn('M 33 29 C 20 29 17 34 17 52', 4, ink),
  { kind: 'rect', x: 24, y: 52, width: 24, height: 10, paint: { fill: ground } },
  ...placeFlame({ x: 71, y: 87 }, 50, ink, ground),
];

/** A cross with arms of one length. */
export const cross: Picture = ({ ink }) => [
  filled(
    'M 39 18 L 61 18 L 61 39 L 82 39 L 82 61 L 61 61 L 61 82 L 39 82 L 39 61 L 18 61 L 18 39 L 39 39 Z',
    ink,
  ),
];
