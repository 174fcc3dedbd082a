import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type DipstickInput,
  depthY,
  drawDipstick,
  headLines,
  stripWidthPt,
} from '../../src/drawing/dipstick';
import { rulerAcross, rulerUpright } from '../../src/drawing/ruler';
import { drawStripSheet } from '../../src/drawing/stripSheet';
import { drawValveTag, type ValveTagInput } from '../../src/drawing/valveTag';
import { drawingFaults } from '../helpers/drawingFaults';
import { plexFonts } from '../helpers/fonts';

const strip: DipstickInput = {
  name: 'strip',
  tank: 'water tank T4',
  head: ['Marigold', 'Issue C, 7GKX·4MRT'],
  left: {
    unit: 'US gal',
    marks: [
      { depthMm: 25.4, words: '2' },
      { depthMm: 76.2, words: '' },
      { depthMm: 127, words: '10' },
    ],
  },
  right: { unit: 'L', marks: [{ depthMm: 50, words: '15' }] },
  depths: { unit: 'in', marks: [1, 2, 3, 4, 5].map((inch) => ({ depthMm: inch * 25.4, words: `${inch}` })) },
  levels: [
    { depthMm: 12, words: 'cannot be drawn' },
    { depthMm: 40, words: 'reserve' },
    { depthMm: 140, words: 'fill to here' },
  ],
  cannotBeDrawnMm: 12,
  reserveMm: 40,
  fromMm: 0,
  toMm: 150,
  joins: [],
  foot: 'end of the stick',
};

/** Level lines that begin at one of the edges and are no longer than a mark, by height. */
const levels = (input: DipstickInput, edge = 0) =>
  drawDipstick(input, plexFonts).shapes.flatMap((shape) => {
    if (shape.kind !== 'path') return [];
    const [from, to] = shape.pieces;
    return from &&
      to &&
      'x' in from &&
      'x' in to &&
      from.x === edge &&
      from.y === to.y &&
      Math.abs(to.x - edge) < 20
      ? [from.y]
      : [];
  });

const wordsOn = (input: DipstickInput) =>
  drawDipstick(input, plexFonts).shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []));

describe('a dipstick strip', () => {
  it('has its marks at their true distances: four inches are 288 points', () => {
    const [low = 0, middle = 0, high = 0] = levels(strip);
    expect(low - high).toBeCloseTo(288, 9);
    expect(low - middle).toBeCloseTo(144, 9);
    expect(levels(strip, stripWidthPt)).toEqual([depthY(strip, 50)]);
    expect(depthY(strip, 0) - depthY(strip, 100)).toBeCloseTo((100 * 72) / 25.4, 9);
    expect(drawDipstick(strip, plexFonts).widthPt).toBeCloseTo((48 * 72) / 25.4, 9);
  });

  it('says what cannot be drawn, where the reserve begins, how far to fill', () => {
    for (const { words } of strip.levels) expect(wordsOn(strip)).toContain(words);
    const crowded = {
      ...strip,
      levels: strip.levels.map((level, index) => ({ ...level, depthMm: 1 + index / 2 })),
    };
    for (const { words } of strip.levels) expect(wordsOn(crowded)).toContain(words);
    expect(drawingFaults(drawDipstick(crowded, plexFonts))).toEqual([]);
  });

  it('goes on over several pieces; a figure that an end would cut stands on the other piece', () => {
    const upper = { ...strip, fromMm: 50, joins: [{ depthMm: 60, words: 'A' }], foot: 'goes on' };
    expect(levels(upper)).toHaveLength(2);
    expect(wordsOn(upper).filter((words) => words === 'A')).toHaveLength(2);
    expect(drawDipstick(upper, plexFonts).alt).toContain('10 US gal at 127.0 mm');
    expect(wordsOn({ ...upper, fromMm: 126.5 })).not.toContain('10');
    expect(levels({ ...upper, fromMm: 126.5 })).toHaveLength(1);
    expect(() => drawDipstick({ ...strip, fromMm: 150 }, plexFonts)).toThrow(RangeError);
  });

  it('names its tank in legible type, or refuses', () => {
    const long = 'auxiliary feed water tank in the left-hand rear corner of the tonneau';
    expect(headLines({ ...strip, tank: long }, plexFonts)?.every(({ sizePt }) => sizePt >= 8)).toBe(true);
    expect(drawingFaults(drawDipstick({ ...strip, tank: long }, plexFonts))).toEqual([]);
    const longer = `${long} ${long} ${long}`;
    expect(headLines({ ...strip, tank: longer }, plexFonts)).toBeUndefined();
    expect(() => drawDipstick({ ...strip, tank: longer }, plexFonts)).toThrow(RangeError);
  });

  it('stays in its frame, words apart', () => {
    expect(drawingFaults(drawDipstick(strip, plexFonts))).toEqual([]);
  });
});

describe('a sheet of strips', () => {
  const sheet = drawStripSheet({ name: 'sheet', strips: [strip, { ...strip, toMm: 60 }] }, plexFonts);

  it('stands them on one line beside the ruler, nothing over anything', () => {
    expect(drawingFaults(sheet)).toEqual([]);
    const feet = sheet.shapes.flatMap((shape) =>
      shape.kind === 'text' && shape.text === strip.foot ? [shape.y] : [],
    );
    expect(new Set(feet).size).toBe(1);
    expect(sheet.alt).toContain('ruler of 100 mm and 4 in');
  });
});

describe('a ruler', () => {
  it.each([
    ['across', rulerAcross],
    ['upright', rulerUpright],
  ] as const)('%s is 100 mm on one side and 4 in on the other, from one end', (way, draw) => {
    const ends = draw({ x: 0, y: 0 }).flatMap((shape) => {
      if (shape.kind !== 'path') return [];
      const [from, to] = shape.pieces;
      if (!(from && to && 'x' in from && 'x' in to)) return [];
      return way === 'across'
        ? [{ along: from.x, over: to.y - from.y }]
        : [{ along: -from.y, over: to.x - from.x }];
    });
    const reach = (side: 1 | -1) => {
      const own = ends
        .filter(({ over }) => Math.sign(over) === side && Math.abs(over) < 10)
        .map(({ along }) => along);
      return Math.max(...own) - Math.min(...own);
    };
    expect(reach(-1)).toBeCloseTo((100 * 72) / 25.4, 9);
    expect(reach(1)).toBeCloseTo(4 * 72, 9);
  });
});

const tag: ValveTagInput = {
  name: 'tag',
  form: 'round',
  side: 'front',
  tag: 'F1',
  valve: 'main fuel tank valve',
  does: 'Lets main fuel out of the main tank.',
  parked: 'Parked: shut',
};
const forms = ['round', 'oblong'] as const;
const sides = ['front', 'back'] as const;

describe('a valve tag', () => {
  it('has its true size', () => {
    const round = drawValveTag(tag, plexFonts);
    expect([round.widthPt, round.heightPt].map((size) => (size * 25.4) / 72)).toEqual([50, 50]);
  });

  it('says on its front which valve it is, on its back what it does and how it is parked', () => {
    for (const form of forms) {
      const words = (side: 'front' | 'back') =>
        drawValveTag({ ...tag, form, side }, plexFonts)
          .shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []))
          .join(' ');
      expect(words('front')).toBe('F1 main fuel tank valve');
      expect(words('back')).toBe('Lets main fuel out of the main tank. Parked: shut');
    }
  });

  it('fits its words inside at 8 points or more, or refuses', () => {
    const some = fc.array(fc.constantFrom('valve', 'main', 'superheater', 'of', 'left-hand'), {
      minLength: 1,
      maxLength: 12,
    });
    let drawn = 0;
    fc.assert(
      fc.property(
        some,
        some,
        fc.constantFrom(...forms),
        fc.constantFrom(...sides),
        (valve, does, form, side) => {
          const input = { ...tag, valve: valve.join(' '), does: does.join(' '), form, side };
          try {
            const drawing = drawValveTag(input, plexFonts);
            drawn += 1;
            expect(drawingFaults(drawing)).toEqual([]);
            for (const shape of drawing.shapes)
              if (shape.kind === 'text') expect(shape.sizePt).toBeGreaterThanOrEqual(8);
          } catch (error) {
            expect(error).toBeInstanceOf(RangeError);
          }
        },
      ),
      { numRuns: 100 },
    );
    expect(drawn).toBeGreaterThan(50);
  });
});
