import { describe, expect, it } from 'vitest';
import { dialEnd, drawGauges, type GaugePicture, isDrawn } from '../../src/drawing/gauges';
import { drawRaisingCurve, minutesTo } from '../../src/drawing/raisingCurve';
import { drawRangePicture } from '../../src/drawing/rangePicture';
import { roundStep, scaleNumber, stepsTo } from '../../src/drawing/scaleSteps';
import { spreadLabels } from '../../src/drawing/spreadLabels';
import { drawingFaults } from '../helpers/drawingFaults';
import { english } from '../helpers/english';
import { plexFonts } from '../helpers/fonts';

const inEnglish = { say: english.messages.say, decimal: english.numbers.decimal };

const steam: GaugePicture = {
  tag: 'G1',
  name: 'steam gauge',
  kind: 'dial',
  scale: { unit: 'psi', from: 450, to: 530, redLine: 600 },
  says: ['450 psi to 530 psi', 'never past 600 psi'],
};

describe('scales', () => {
  it('go by ones, twos and fives', () => {
    expect([7, 12, 60, 0.5].map((most) => roundStep(most, 6))).toEqual([2, 2, 10, 0.1]);
    expect(() => roundStep(0, 6)).toThrow(RangeError);
    expect(() => roundStep(Number.NaN, 6)).toThrow(RangeError);
  });

  it('end at the first step past what they must show, with no more decimals than their step', () => {
    expect(stepsTo(7, 2)).toEqual([0, 2, 4, 6, 8]);
    expect(stepsTo(8, 2).at(-1)).toBe(8);
    expect([scaleNumber(0.30000000000000004, 0.1, ','), scaleNumber(20, 20, '.')]).toEqual(['0,3', '20']);
  });
});

describe('labels beside a scale', () => {
  it('stay in order and apart, near what they name', () => {
    const tops = spreadLabels(
      [
        { middle: 50, heightPt: 20 },
        { middle: 48, heightPt: 20 },
        { middle: 5, heightPt: 10 },
      ],
      { top: 0, bottom: 100, gapPt: 4 },
    );
    expect(tops[2]).toBe(0);
    expect((tops[0] ?? 0) - (tops[1] ?? 0)).toBeGreaterThanOrEqual(24);
  });
});

describe('the gauges', () => {
  it('end well past their red line', () => {
    expect(dialEnd({ unit: 'psi', from: 450, to: 530, redLine: 600 })).toEqual({ most: 800, step: 200 });
  });

  it('have band and red line at their figures: three quarters of a circle for the whole scale', () => {
    const drawing = drawGauges({ name: 'gauges', of: 'Invented', gauges: [steam], ...inEnglish }, plexFonts);
    const band = drawing.shapes.find((shape) => shape.kind === 'path' && shape.paint.stroke?.widthPt === 6.5);
    if (band?.kind !== 'path') throw new Error('no band');
    const middle = { x: 60, y: 49 };
    const angles = band.pieces.flatMap((piece) =>
      'x' in piece ? [(Math.atan2(piece.x - middle.x, middle.y - piece.y) * 180) / Math.PI] : [],
    );
    expect(angles[0]).toBeCloseTo(-135 + (270 * 450) / 800, 6);
    expect(angles.at(-1)).toBeCloseTo(-135 + (270 * 530) / 800, 6);
    expect(drawing.alt).toContain('G1 steam gauge: 450 psi to 530 psi, never past 600 psi');
  });

  it('show every kind, words under each, none over another', () => {
    const kinds = ['dial', 'glass', 'indicator'] as const;
    const gauges = kinds.flatMap((kind, index) => [
      { ...steam, kind, tag: `G${index}` },
      {
        tag: '',
        name: `${kind} of a very long name that must be broken`,
        kind,
        says: ['half a glass on level ground, car running'],
      },
    ]);
    const drawing = drawGauges({ name: 'gauges', of: 'Invented', gauges, ...inEnglish }, plexFonts);
    expect(drawingFaults(drawing)).toEqual([]);
    const words = drawing.shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []));
    for (const tag of ['G0', 'G1', 'G2']) expect(words).toContain(`${tag} steam gauge`);
  });

  it('are left out where a dial has no figures: an empty one says nothing', () => {
    const { scale: _, ...blank } = { ...steam, tag: 'G2', name: 'level gauge' };
    const draw = (gauges: readonly GaugePicture[]) =>
      drawGauges({ name: 'gauges', of: 'Invented', gauges, ...inEnglish }, plexFonts);
    expect(draw([blank, steam])).toEqual(draw([steam]));
    expect(isDrawn(blank)).toBe(false);
    expect(isDrawn({ ...blank, kind: 'indicator' })).toBe(true);
  });
});

describe('the pressure-rise curve', () => {
  const points = [
    { minutes: 0, pressure: 0 },
    { minutes: 4, pressure: 0 },
    { minutes: 8, pressure: 300 },
    { minutes: 10, pressure: 530 },
  ];
  const checks = [
    { pressure: 300, says: '300 psi', due: 'least for moving off' },
    { pressure: 500, says: '500 psi', due: 'working pressure' },
    { pressure: 530, says: '530 psi', due: 'burner goes out by itself' },
  ];

  it('reaches a pressure between its points, or not at all', () => {
    expect(minutesTo(points, 150)).toBeCloseTo(6, 9);
    expect(minutesTo(points, 530)).toBeCloseTo(10, 9);
    expect(minutesTo(points, 600)).toBeUndefined();
  });

  it('marks each check on each curve, and says the times in words', () => {
    const input = {
      name: 'raising',
      of: 'Invented',
      unit: 'psi',
      curves: [{ start: 'cold', points }],
      checks,
      ...inEnglish,
    };
    const drawing = drawRaisingCurve(input, plexFonts);
    expect(drawing.shapes.filter(({ kind }) => kind === 'circle')).toHaveLength(3);
    expect(drawing.alt).toContain('300 psi after about 8 minutes');
    expect(drawingFaults(drawing)).toEqual([]);
  });
});

describe('the range picture', () => {
  const drawing = drawRangePicture(
    {
      name: 'range',
      ...inEnglish,
      of: 'Invented',
      unit: 'mi',
      liquids: [
        {
          liquid: 'water',
          bars: [
            { terrain: 'level', distance: 27, reserve: 3 },
            { terrain: 'hilly', distance: 0, reserve: 2 },
          ],
        },
        { liquid: 'main fuel', bars: [{ terrain: 'level', distance: 140, reserve: 20 }] },
      ],
    },
    plexFonts,
  );

  it('has bars as long as the car goes', () => {
    const bars = drawing.shapes.flatMap((shape) =>
      shape.kind === 'rect' && shape.height === 15 && shape.paint.fill === '#cfcfca' ? [shape.width] : [],
    );
    expect(bars).toHaveLength(3);
    expect((bars[2] ?? 0) / (bars[0] ?? 1)).toBeCloseTo(140 / 27, 9);
    expect(bars[1]).toBe(0);
  });

  it('says the same in words, and nothing lies over anything', () => {
    expect(drawing.alt).toContain('on full water: level 27 mi, hilly 0 mi');
    expect(drawingFaults(drawing)).toEqual([]);
  });
});
