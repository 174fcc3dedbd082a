import { describe, expect, it } from 'vitest';
import { closenessOf, withCloseness } from '../../../src/layout/card/closer-parts';
import { box, gap, type Piece } from '../../../src/layout/pieces';
import { origin } from '../../helpers/blocks';
import { squareSetting } from '../../helpers/setting';

const whole = (): Piece => ({ kind: 'break', unlessLeft: { share: 'whole', line: box(1, [], origin()) } });
/** `count` boxes 20 pt tall, `gapPt` apart, after a break that asks for the whole. */
const part = (count: number, gapPt: number): Piece[] => [
  whole(),
  ...Array.from({ length: count }, () => [box(20, [], origin()), gap(gapPt)]).flat(),
];
/** What is left of the spaces in each of these parts, on faces that hold 200 pt. */
const closeness = (...parts: readonly Piece[][]) =>
  closenessOf([box(20, [], origin()), ...parts.flat()], squareSetting(200), {
    parts: new Set(),
    roomOf: () => 200,
  });

describe('parts of a card', () => {
  it('are set closer, as little as it takes and each by itself, where that saves a face', () => {
    // eight boxes and seven gaps of 0.7 × 8 pt are 199.2 pt
    expect(closeness(part(7, 10), part(8, 8), part(8, 6))).toEqual([1, 1, 0.7, 0.85]);
    expect(closeness(part(16, 8))).toEqual([1, 0.7]);
  });

  it('keep their spaces where half of them would not save a face', () => {
    // eight boxes and seven gaps of half of 12 pt are 202 pt
    expect(closeness(part(8, 12), part(3, 12))).toEqual([1, 1, 1]);
  });

  it('that begin no face by themselves are left alone', () => {
    expect(
      closenessOf(part(8, 8).slice(1), squareSetting(200), { parts: new Set(), roomOf: () => 200 }),
    ).toEqual([1]);
  });

  it('have their own share of their spaces, and none of their neighbours', () => {
    const pieces = [box(20, [], origin()), gap(4), ...part(1, 10), ...part(1, 10)];
    const gaps = withCloseness(pieces, [1, 0.5, 0.85]).flatMap((piece) =>
      piece.kind === 'gap' ? piece.heightPt : [],
    );
    expect(gaps).toEqual([4, 5, 8.5]);
  });
});
