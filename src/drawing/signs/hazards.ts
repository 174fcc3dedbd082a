/** Symbols of warnings, placed in a triangle 100 wide and 86.6 high. */
import type { Shape } from '../drawing';
import { circle, type Point } from '../shapes';
import { placeFlame } from './flame';
import type { Picture } from './surrounds';
import { bar, drawn, filled } from './trace';

/** A flame above a line. */
export const flameOverLine: Picture = ({ ink, ground }) => [
  ...placeFlame({ x: 50, y: 71 }, 33.5, ink, ground),
  filled('M 28 73.5 L 72 73.5 L 72 77 L 28 77 Z', ink),
];

/** Three wavy lines that rise from a surface. */
export const wavesOverSurface: Picture = ({ ink }) => [
  ...[37.5, 50, 62.5].map((x) =>
    drawn(
      `M ${x} 69 C ${x - 6.5} 63 ${x - 6.5} 60 ${x} 54.5 C ${x + 6.5} 49 ${x + 6.5} 46 ${x} 40`,
      3.5,
      ink,
    ),
  ),
  filled('M 28 73.5 L 72 73.5 L 72 77 L 28 77 Z', ink),
];

/** A crystal of snow: six arms, each with two pairs of branches. */
export const snowCrystal: Picture = ({ ink }) => {
  const centre = { x: 50, y: 57 };
  const at = (angle: number, r: number, from: Point = centre): Point => ({
    x: from.x + r * Math.sin(angle),
    y: from.y - r * Math.cos(angle),
  });
  return Array.from({ length: 6 }, (_, arm) => (arm * Math.PI) / 3).flatMap((angle): Shape[] => {
    const joints = [at(angle, 8), at(angle, 14)];
    return [
      bar(centre, at(angle, 20), 2.7, ink),
      ...joints.flatMap((joint) =>
        [-Math.PI / 3, Math.PI / 3].map((turn) => bar(joint, at(angle + turn, 6, joint), 2, ink)),
      ),
    ];
  });
};

/** A bolt of lightning with the head of an arrow. */
export const lightning: Picture = ({ ink }) => [
  filled(
    'M 54.5 24 L 40.5 51.5 L 50 50 L 46.2 65.5 L 41.6 63.8 L 46 78.5 L 56 67.6 L 51 66.6 L 59.5 44 L 49.5 45.8 L 60 24 Z',
    ink,
  ),
];

/** Steam that comes down from a bar and swells into a cloud. */
export const steamJet: Picture = ({ ink, ground }) => {
  const cloud = [
    { x: 40.6, y: 61 },
    { x: 59.4, y: 61 },
    { x: 50, y: 68.5 },
  ];
  const edge = 2.2;
  const stem = (inset: number) =>
    `M ${45.6 + inset} 43 L ${41.2 + inset} 60 L ${58.8 - inset} 60 L ${54.4 - inset} 43 Z`;
  return [
    filled('M 37.5 34.5 L 62.5 34.5 L 62.5 38 L 37.5 38 Z', ink),
    filled(stem(0), ink),
    ...cloud.map((middle) => circle(middle, 9.8, { fill: ink })),
    ...cloud.map((middle) => circle(middle, 9.8 - edge, { fill: ground })),
    filled(stem(edge), ground),
    bar({ x: 50, y: 45 }, { x: 50, y: 58 }, edge, ink),
  ];
};
