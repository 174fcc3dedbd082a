import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawDipstick, headLines, stripWidthPt, widthOfStrip } from '../../src/drawing/dipstick';
import { type DipstickInput, depthY } from '../../src/drawing/dipstickInput';
import type { Shape } from '../../src/drawing/drawing';
import { rulerAcross, rulerUpright } from '../../src/drawing/ruler';
import { drawStripSheet, stripsOnSheets } from '../../src/drawing/stripSheet';
import { drawTagSheet, tagGrid } from '../../src/drawing/tagSheet';
import { drawValveTag, type TagType, tagSizes, type ValveTagInput } from '../../src/drawing/valveTag';
import { drawingFaults } from '../helpers/drawingFaults';
import { english } from '../helpers/english';
import { plexFonts } from '../helpers/fonts';

const strip: DipstickInput = {
  say: english.messages.say,
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
  secondDepths: {
    unit: 'mm',
    marks: [20, 40, 60, 80, 100].map((depthMm) => ({ depthMm, words: `${depthMm}` })),
  },
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

/** All level lines, by their ends across. */
const levelLines = (input: DipstickInput) =>
  drawDipstick(input, plexFonts).shapes.flatMap((shape) => {
    if (shape.kind !== 'path') return [];
    const [from, to] = shape.pieces;
    return from && to && 'x' in from && 'x' in to && from.y === to.y
      ? [{ from: from.x, to: to.x, y: from.y }]
      : [];
  });

/** Level lines that begin at one of the edges and are no longer than a mark, by height. */
const levels = (input: DipstickInput, edge = 0) =>
  levelLines(input).flatMap(({ from, to, y }) => (from === edge && Math.abs(to - edge) < 20 ? [y] : []));

const wordsOn = (input: DipstickInput) =>
  drawDipstick(input, plexFonts).shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []));

describe('a dipstick strip', () => {
  it('has its marks at their true distances: four inches are 288 points', () => {
    const [low = 0, middle = 0, high = 0] = levels(strip);
    expect(low - high).toBeCloseTo(288, 9);
    expect(low - middle).toBeCloseTo(144, 9);
    expect(levels(strip, stripWidthPt)).toEqual([depthY(strip, 50)]);
    expect(depthY(strip, 0) - depthY(strip, 100)).toBeCloseTo((100 * 72) / 25.4, 9);
    expect(drawDipstick(strip, plexFonts).widthPt).toBeCloseTo((56 * 72) / 25.4, 9);
  });

  it('says what cannot be drawn, where the reserve begins, how far to fill', () => {
    for (const { words } of strip.levels) expect(wordsOn(strip).join(' ')).toContain(words);
    const crowded = {
      ...strip,
      levels: strip.levels.map((level, index) => ({ ...level, depthMm: 1 + index / 2 })),
    };
    for (const { words } of strip.levels) expect(wordsOn(crowded).join(' ')).toContain(words);
    expect(drawingFaults(drawDipstick(crowded, plexFonts))).toEqual([]);
  });

  it('goes on over several pieces; a figure that an end would cut stands on the other piece', () => {
    const upper = { ...strip, fromMm: 50, joins: [{ depthMm: 60, words: 'A' }], foot: 'goes on' };
    expect(levels(upper)).toHaveLength(2);
    expect(wordsOn(upper).filter((words) => words === 'A')).toHaveLength(2);
    expect(drawDipstick(upper, plexFonts).alt).toContain('10 US gal at 127.0\u00a0mm');
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

  it('breaks no line across, and no word stands on one: a figure moves beside it', () => {
    const atLines = {
      ...strip,
      left: {
        unit: 'US gal',
        marks: [12, 38.5, 41, 140].map((depthMm) => ({ depthMm, words: `${depthMm}` })),
      },
      depths: { unit: 'mm', marks: [12, 40, 70, 141].map((depthMm) => ({ depthMm, words: `${depthMm}` })) },
      joins: [{ depthMm: 71, words: 'A' }],
    };
    const { shapes } = drawDipstick(atLines, plexFonts);
    const lines = [12, 40, 71, 140].map((depthMm) => depthY(atLines, depthMm));
    for (const shape of shapes) {
      if (shape.kind === 'rect') expect(shape.paint.fill).not.toBe('#ffffff');
      if (shape.kind !== 'text') continue;
      const top = shape.y - plexFonts[shape.face].capHeight * shape.sizePt;
      expect(
        lines.filter((y) => y > top - 0.8 && y < shape.y + 0.8),
        shape.text,
      ).toEqual([]);
    }
    const said = wordsOn(atLines);
    for (const { words } of [...atLines.left.marks, ...atLines.depths.marks]) expect(said).toContain(words);
    expect(drawingFaults(drawDipstick(atLines, plexFonts))).toEqual([]);
  });

  it('leaves out no depth beside a line across, and a leader ties a figure to its line', () => {
    const inches = [1, 2, 3, 4].map((inch) => ({ depthMm: inch * 25.4, words: `${inch}` }));
    for (const nearMm of [-1.3, -0.4, 0, 0.4, 1.3]) {
      const crossed = {
        ...strip,
        left: { unit: 'US gal', marks: [] },
        depths: { unit: 'in', marks: inches },
        levels: [{ depthMm: 25.4 + nearMm, words: 'reserve' }],
        joins: [{ depthMm: 76.2 + nearMm, words: 'A' }],
      };
      const { shapes } = drawDipstick(crossed, plexFonts);
      expect(drawingFaults(drawDipstick(crossed, plexFonts)), `${nearMm}`).toEqual([]);
      for (const { depthMm, words } of inches) {
        const figure = shapes.find((shape) => shape.kind === 'text' && shape.text === words);
        const y = depthY(crossed, depthMm);
        const own = levelLines(crossed).filter(
          (each) => Math.abs(each.y - y) < 1e-9 && each.to < each.from && each.from - each.to < 9,
        );
        expect(own, words).toHaveLength(1);
        const [end] = own.map(({ to }) => to);
        if (figure?.kind !== 'text') throw new Error(`there is no ${words}`);
        const middle = figure.y - (plexFonts['narrow-bold'].capHeight * figure.sizePt) / 2;
        const leaders = shapes.flatMap((shape) => {
          if (shape.kind !== 'path') return [];
          const [from, to] = shape.pieces;
          return from && to && 'x' in from && 'x' in to && from.x === end && from.y === y ? [to] : [];
        });
        if (Math.abs(middle - y) < 0.5) {
          expect(leaders).toEqual([]);
          continue;
        }
        expect(Math.abs(middle - y)).toBeLessThan(10);
        expect(leaders.map((to) => to.y)).toEqual([expect.closeTo(middle, 9)]);
        for (const to of leaders) expect(to.x - figure.x).toBeCloseTo(1.2, 9);
      }
    }
  });

  it('keeps a figure at its upper end below the head, where no piece goes on', () => {
    const ending = { ...strip, depths: { unit: 'mm', marks: [{ depthMm: 149.8, words: '149.8' }] } };
    const said = drawDipstick(ending, plexFonts).shapes.find(
      (shape) => shape.kind === 'text' && shape.text === '149.8',
    );
    if (said?.kind !== 'text') throw new Error('the figure is not there');
    const top = said.y - plexFonts[said.face].capHeight * said.sizePt;
    expect(top).toBeGreaterThan(depthY(ending, 150));
    const goesOn = { ...ending, joins: [{ depthMm: 140, words: 'A' }] };
    expect(wordsOn(goesOn)).not.toContain('149.8');
  });

  it('says the depth in two units on the two sides of one line', () => {
    const begins = (depthMm: number) =>
      levelLines(strip)
        .filter(({ from, to, y }) => Math.abs(y - depthY(strip, depthMm)) < 1e-9 && Math.abs(to - from) < 9)
        .map(({ from, to }) => ({ from, way: Math.sign(to - from) }));
    const [inch] = begins(76.2).filter(({ way }) => way < 0);
    const [tens] = begins(60).filter(({ way }) => way > 0);
    expect(inch?.from).toBeGreaterThan(40);
    expect(inch?.from).toBe(tens?.from);
    expect(wordsOn(strip)).toEqual(expect.arrayContaining(['in', 'mm']));
  });

  it('becomes wider where its figures and names need it, on all pieces alike', () => {
    const figures = {
      ...strip,
      left: { unit: 'US gal', marks: [{ depthMm: 120, words: '13 13/16' }] },
      right: { unit: 'imp gal', marks: [{ depthMm: 110, words: '11 15/16' }] },
    };
    const pieces = [
      { ...figures, toMm: 80 },
      { ...figures, fromMm: 60 },
    ];
    const [width = 0, other] = pieces.map((piece) => widthOfStrip(piece, plexFonts));
    expect(width).toBeGreaterThan(stripWidthPt);
    expect(other).toBe(width);
    for (const piece of pieces) expect(drawingFaults(drawDipstick(piece, plexFonts))).toEqual([]);
  });

  it('says the depth as heavily as what is in the tank', () => {
    const looks = drawDipstick(strip, plexFonts).shapes.flatMap((shape) =>
      shape.kind === 'text' && ['10', '15', '4'].includes(shape.text)
        ? [`${shape.face} ${shape.sizePt} ${shape.colour}`]
        : [],
    );
    expect(looks).toHaveLength(3);
    expect(new Set(looks).size).toBe(1);
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

describe('strips on sheets', () => {
  it('stand three beside the ruler on A4 and on letter, fewer where they are wider; none is left out', () => {
    const wide = {
      ...strip,
      left: { unit: 'US gal', marks: [{ depthMm: 120, words: '13 13/16' }] },
      right: { unit: 'imp gal', marks: [{ depthMm: 110, words: '11 15/16' }] },
    };
    // paper less 8 mm on both sides
    for (const paperMm of [210, 215.9]) {
      const widthPt = ((paperMm - 16) * 72) / 25.4;
      const counts = (strips: readonly DipstickInput[]) =>
        stripsOnSheets(strips, widthPt, plexFonts).map((sheet) => sheet.length);
      expect(counts([strip, strip, strip, strip])).toEqual([3, 1]);
      expect(counts([wide, wide, wide])).toEqual([2, 1]);
      for (const strips of stripsOnSheets([strip, strip, strip, wide, wide], widthPt, plexFonts))
        expect(drawStripSheet({ name: 'sheet', strips }, plexFonts).widthPt).toBeLessThanOrEqual(widthPt);
    }
    expect(stripsOnSheets([wide, wide], 50, plexFonts)).toEqual([[wide], [wide]]);
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
  say: english.messages.say,
  name: 'tag',
  form: 'round',
  tag: 'F1',
  valve: 'main fuel tank valve',
  does: 'Lets main fuel out of the main tank.',
  parked: 'Parked: shut',
  issue: 'Marigold, issue C, 7GKX·4MRT',
};
const type: TagType = { tagPt: 17, namePt: 11.7, backPt: 7.6 };
const forms = ['round', 'oblong'] as const;

/** The smallest size whose drawing there is. */
function drawn(input: ValveTagInput) {
  for (const size of tagSizes[input.form]) {
    const drawing = drawValveTag(input, size, type, plexFonts);
    if (drawing !== undefined) return { drawing, size };
  }
  return undefined;
}

const textsOn = (shapes: readonly Shape[]) =>
  shapes.flatMap((shape) => (shape.kind === 'text' ? [shape] : []));

describe('a valve tag', () => {
  it.each(forms)('%s: has its true size, front and back beside each other', (form) => {
    for (const size of tagSizes[form].slice(2)) {
      const drawing = drawValveTag({ ...tag, form }, size, type, plexFonts);
      expect(((drawing?.widthPt ?? 0) * 25.4) / 72).toBeCloseTo(2 * size.widthMm, 9);
      expect(((drawing?.heightPt ?? 0) * 25.4) / 72).toBeCloseTo(size.heightMm, 9);
    }
  });

  it.each(forms)(
    '%s: says on its front which valve it is, on its back what it does and how it is parked',
    (form) => {
      const made = drawn({ ...tag, form });
      const middle = (made?.drawing.widthPt ?? 0) / 2;
      const words = (back: boolean) =>
        textsOn(made?.drawing.shapes ?? [])
          .filter(({ x }) => x > middle === back)
          .map((each) => each.text)
          .join(' ');
      expect(words(false)).toBe('F1 main fuel tank valve');
      expect(words(true)).toBe(
        'F1 Lets main fuel out of the main tank. Parked: shut Marigold, issue C, 7GKX·4MRT',
      );
    },
  );

  it.each(forms)('%s: holes lie on each other when it is folded', (form) => {
    const made = drawn({ ...tag, form });
    const fold = (made?.drawing.widthPt ?? 0) / 2;
    const holes = (made?.drawing.shapes ?? []).flatMap((shape) =>
      shape.kind === 'circle' && shape.r < 20 ? [shape] : [],
    );
    expect(holes).toHaveLength(2);
    const [front, back] = holes;
    expect(fold - (front?.cx ?? 0)).toBeCloseTo((back?.cx ?? 0) - fold, 9);
    expect(front?.cy).toBe(back?.cy);
  });

  it('oblong: has a dashed line at its fold and no full one under it', () => {
    const made = drawn({ ...tag, form: 'oblong' });
    const fold = (made?.drawing.widthPt ?? 0) / 2;
    const down = (made?.drawing.shapes ?? []).flatMap((shape) => {
      if (shape.kind === 'rect') {
        const { x, width, paint } = shape;
        const sides = [x, x + width].filter((side) => Math.abs(side - fold) < 2);
        return paint.stroke === undefined ? [] : sides.map(() => 'full');
      }
      if (shape.kind !== 'path' || shape.paint.stroke === undefined) return [];
      const ends = shape.pieces.flatMap((piece) => ('x' in piece ? [piece] : []));
      const along = ends.slice(1).filter(({ x, y }, index) => {
        const before = ends[index];
        return Math.abs(x - fold) < 2 && before?.x === x && before.y !== y;
      });
      return along.map(() => (shape.paint.stroke?.dashPt === undefined ? 'full' : 'dashed'));
    });
    expect(down).toEqual(['dashed']);
  });

  it('of a valve with a name of sixty letters is good, or there is none', () => {
    const long = 'auxiliary superheater drain valve under the left-hand rear fl';
    expect(long).toHaveLength(61);
    for (const form of forms) {
      const made = drawn({ ...tag, form, valve: long });
      expect(made?.size.widthMm, form).toBeGreaterThanOrEqual(drawn({ ...tag, form })?.size.widthMm ?? 0);
      expect(made && drawingFaults(made.drawing), form).toEqual([]);
    }
    expect(
      drawn({ ...tag, valve: 'Donaudampfschifffahrtsgesellschaftshauptabsperrventilhandrad' }),
    ).toBeUndefined();
  });

  it('fits its words inside its rim in legible type, or there is none', () => {
    const some = fc.array(fc.constantFrom('valve', 'main', 'superheater', 'of', 'left-hand'), {
      minLength: 1,
      maxLength: 12,
    });
    let made = 0;
    fc.assert(
      fc.property(some, some, fc.constantFrom(...forms), (valve, does, form) => {
        const input = { ...tag, valve: valve.join(' '), does: does.join(' '), form };
        const found = drawn(input);
        if (found === undefined) return;
        made += 1;
        const { drawing, size } = found;
        expect(drawingFaults(drawing)).toEqual([]);
        const texts = textsOn(drawing.shapes);
        expect(texts.map((each) => each.text).join(' ')).toBe(
          [input.tag, input.valve, input.tag, input.does, input.parked, input.issue].join(' '),
        );
        const radius = (size.widthMm * 36) / 25.4;
        for (const { x, y, text, face, sizePt } of texts) {
          expect(sizePt).toBeGreaterThanOrEqual(type.backPt - 1e-9);
          if (form !== 'round') continue;
          const centre = x < 2 * radius ? radius : 3 * radius;
          const half = plexFonts[face].widthOf(text, sizePt) / 2;
          for (const corner of [y, y - plexFonts[face].capHeight * sizePt])
            expect(Math.hypot(Math.abs(x - centre) + half, corner - radius)).toBeLessThan(radius);
        }
      }),
      { numRuns: 100 },
    );
    expect(made).toBeGreaterThan(50);
  });
});

describe('a sheet of tags', () => {
  it('has a ruler, and no tag over another', () => {
    const [, size = { widthMm: 0, heightMm: 0 }] = tagSizes.oblong;
    const grid = tagGrid(size, { widthPt: 560, heightPt: 700 });
    expect(grid).toEqual({ columns: 1, rows: 5 });
    const tags = Array.from({ length: 5 }, (_, index) => ({
      ...tag,
      form: 'oblong' as const,
      tag: `F${index}`,
    }));
    const sheet = drawTagSheet({ name: 'sheet', tags, size, type, columns: 1 }, plexFonts);
    expect(drawingFaults(sheet)).toEqual([]);
    expect(sheet.heightPt).toBeLessThanOrEqual(700);
    expect(sheet.alt).toContain('Valve tag F4');
  });
});
