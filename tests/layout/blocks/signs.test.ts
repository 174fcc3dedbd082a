import { describe, expect, it } from 'vitest';
import { drawSign } from '../../../src/drawing/signs/signs';
import { checkLaidOut } from '../../../src/layout/check';
import type { LaidOut, PlacedShape } from '../../../src/layout/frame';
import { handDistanceM } from '../../../src/layout/legibility';
import { pointsPerMm } from '../../../src/layout/sheet';
import type { Block } from '../../../src/markup/block';
import { caution, inlines, origin } from '../../helpers/blocks';
import { squareFonts } from '../../helpers/squareMetrics';
import { evenTheme, laidOutCleanly, squareOptions, textsOf } from '../../helpers/squarePage';

const flame = drawSign('W021', 'a flame');
const gloves = drawSign('M009', 'gloves');
/** A fortieth of the distance at which a book is held. */
const heightPt = (handDistanceM * 1000 * pointsPerMm) / 40;

function figuresOf({ structure }: LaidOut) {
  return structure.flatMap(({ type, alt, box }) => (type === 'Figure' ? [{ alt, box }] : []));
}

const numbersOn = ({ pages }: LaidOut) =>
  pages.flatMap(({ items }) =>
    items.flatMap((item) => (item.kind === 'shape' && item.shape.kind === 'text' ? [item.shape.text] : [])),
  );

function expectSound(blocks: readonly Block[], laidOut: LaidOut): void {
  const leastPt = { text: 5, 'text-bold': 5, 'text-italic': 5, narrow: 5, 'narrow-bold': 5 };
  const options = { fonts: squareFonts, theme: evenTheme, leastPt };
  expect(checkLaidOut(blocks, laidOut, options).map(({ code }) => code)).toEqual([]);
}

describe('signs beside a caution', () => {
  const words = ['Hot.', 'It burns whoever touches it.', 'Gloves on.'] as const;
  const signed = { ...caution('warning', ...words), signs: [flame, gloves] };

  it('stand left of its words, as high as the distance asks, each above its number', () => {
    const laidOut = laidOutCleanly([signed], squareOptions(40, 20));
    const [one, other] = figuresOf(laidOut);
    expect([one?.alt, other?.alt]).toEqual(['a flame', 'gloves']);
    // the label has a line of 12 pt
    const [left = 0, top = 0, right = 0, bottom = 0] = one?.box ?? [];
    expect(bottom - top).toBeCloseTo(heightPt + 12, 6);
    // the number has four square letters and is wider than the sign
    expect(right - left).toBe(40);
    expect(other?.box?.[0]).toBeCloseTo(right + heightPt / 4, 6);
    expect(numbersOn(laidOut)).toEqual(['W021', 'M009']);
    const body = textsOf(laidOut.pages[0]).slice(1);
    for (const { x } of body) expect(x).toBeGreaterThan(other?.box?.[2] ?? 400);
    expectSound([signed], laidOut);
  });

  it('belong to the caution in the tree, and lie within its frame', () => {
    const { structure, pages } = laidOutCleanly([signed], squareOptions(40, 20));
    const parents = structure.flatMap(({ type, parent }) => (type === 'Figure' ? [parent] : []));
    expect(parents.map((parent) => structure[parent ?? -1]?.type)).toEqual(['Div', 'Div']);
    const frame = (pages[0]?.items ?? []).findLast(
      (item): item is PlacedShape => item.kind === 'shape',
    )?.shape;
    if (frame?.kind !== 'rect') throw new Error('no frame');
    for (const { box } of figuresOf({ structure, pages, destinations: [], outline: [] }))
      expect(box?.[3]).toBeLessThanOrEqual(frame.y + frame.height);
  });

  it('take no room where there are none', () => {
    const [page] = laidOutCleanly([caution('warning', ...words)], squareOptions(40, 20)).pages;
    expect(textsOf(page)[1]?.x).toBe(10);
  });
});

describe('a list of signs', () => {
  const block: Block = {
    kind: 'signs',
    origin: origin(),
    items: [
      { sign: flame, content: inlines('Fuel.') },
      {
        sign: gloves,
        content: inlines('Gloves on before anything is lit, and until the metal is cold again.'),
      },
    ],
  };

  it('has each sign at the left and its words beside it, none over another', () => {
    const laidOut = laidOutCleanly([block], squareOptions(30, 20));
    const boxes = figuresOf(laidOut).map(({ box }) => box ?? [0, 0, 0, 0]);
    expect(boxes[0]?.[3]).toBeLessThanOrEqual(boxes[1]?.[1] ?? 0);
    for (const { x } of textsOf(laidOut.pages[0])) expect(x).toBeGreaterThanOrEqual(boxes[0]?.[2] ?? 999);
    expectSound([block], laidOut);
  });

  it('is a list in the tree: sign as its label, words as its body', () => {
    const { structure } = laidOutCleanly([block], squareOptions(30, 20));
    expect(structure.slice(1).map(({ type }) => type)).toEqual([
      'L',
      ...['LI', 'Lbl', 'Figure', 'LBody'],
      ...['LI', 'Lbl', 'Figure', 'LBody'],
    ]);
  });

  it('breaks between two signs and never within one', () => {
    const laidOut = laidOutCleanly([block], squareOptions(30, 6));
    expect(laidOut.pages.length).toBe(2);
    expectSound([block], laidOut);
  });
});
