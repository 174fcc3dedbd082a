import { describe, expect, it } from 'vitest';
import { paginateChapters } from '../../../src/layout/pages/chapters';
import { box, gap, type Piece, type Splittable } from '../../../src/layout/pieces';
import { origin } from '../../helpers/blocks';
import { squareSetting } from '../../helpers/setting';

/** `count` boxes 20 pt tall, `gapPt` apart; a page holds 200 pt. */
function chapter(count: number, gapPt: number): Piece[] {
  return Array.from({ length: count }, () => [box(20, [], origin()), gap(gapPt)]).flat();
}

/** How many boxes stand on each page, and where the second of each stands. */
function pagesOf(...chapters: readonly Piece[][]) {
  const pages = paginateChapters(chapters, squareSetting(200));
  return { counts: pages.map((page) => page.length), second: pages.map((page) => page[1]?.y) };
}

describe('chapters on new pages', () => {
  it('begin each on a page of its own', () => {
    expect(pagesOf(chapter(3, 10), chapter(2, 10)).counts).toEqual([3, 2]);
  });

  it('are set closer, as little as it takes, where that saves a last page that holds little', () => {
    // eight boxes and seven gaps of 40/7 pt are 200 pt
    expect(pagesOf(chapter(7, 10))).toEqual({ counts: [7], second: [30] });
    expect(pagesOf(chapter(8, 8))).toEqual({ counts: [8], second: [20 + 0.7 * 8] });
    expect(pagesOf(chapter(8, 6))).toEqual({ counts: [8], second: [20 + 0.9 * 6] });
  });

  it('keep their spaces where closing them up saves nothing, or where the last page holds more than a little', () => {
    // eight boxes and seven gaps of two fifths of 15 pt are 202 pt
    expect(pagesOf(chapter(8, 15))).toEqual({ counts: [6, 2], second: [35, 35] });
    // the last three boxes would fit if the gaps were halved
    expect(pagesOf(chapter(10, 9))).toEqual({ counts: [7, 3], second: [29, 29] });
  });

  it('are set closer still where the last page that is left would hold next to nothing', () => {
    const boxes = Array.from({ length: 73 }, () => [box(15, [], origin()), gap(9)]).flat();
    const pages = paginateChapters([boxes], squareSetting(200));
    // 0.9 of the gaps save one of ten pages, but leave a box alone on the last; 0.6 of them leave four there
    expect(pages.map((page) => page.length)).toEqual([10, 10, 10, 10, 10, 10, 10, 3]);
    expect(pages[0]?.[1]?.y).toBeCloseTo(15 + 0.6 * 9, 6);
  });

  it('do not close up their neighbours', () => {
    expect(pagesOf(chapter(8, 6), chapter(7, 10))).toEqual({ counts: [8, 7], second: [25.4, 30] });
  });

  it('are closed up in each part that begins on a new page, and only there', () => {
    const pages = pagesOf([...chapter(8, 6), { kind: 'break' }, ...chapter(7, 10)]);
    expect(pages).toEqual({ counts: [8, 7], second: [25.4, 30] });
  });

  it('close up what has space inside it, which keeps its name and what it holds on to', () => {
    const shrinking = (heightPt: number): Splittable => ({
      kind: 'splittable',
      heightPt,
      leastPt: heightPt,
      wantPt: heightPt,
      keep: 'free',
      anchors: [],
      origin: origin(),
      closer: (share) => shrinking(share * heightPt),
      take: () => ({ kind: 'all', box: box(heightPt, [], origin()) }),
    });
    const named = { ...shrinking(60), anchors: [{ name: 'here', y: 0 }] };
    const boxes = paginateChapters([[box(150, [], origin()), named]], squareSetting(200)).flat();
    // 50 pt are left; of 60 pt those are less than 0.9
    expect(boxes.map(({ y }) => y)).toEqual([0, 150]);
    expect(boxes[1]?.box.heightPt).toBeCloseTo(48, 6);
    expect(boxes[1]?.box.anchors).toEqual([{ name: 'here', y: 0 }]);
  });

  it('are one page if there is nothing in them', () => {
    expect(pagesOf().counts).toEqual([0]);
    expect(pagesOf([{ kind: 'break' }], chapter(1, 10)).counts).toEqual([1]);
  });
});
