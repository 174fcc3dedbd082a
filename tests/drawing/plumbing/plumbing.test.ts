import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawPlumbing } from '../../../src/drawing/plumbing/draw';
import { layOutPlumbing } from '../../../src/drawing/plumbing/layOut';
import {
  type PlumbingInput,
  type PlumbingPart,
  type PlumbingPipe,
  symbolKinds,
} from '../../../src/drawing/plumbing/plumbing';
import { toSvg } from '../../../src/drawing/svg';
import { fluids } from '../../../src/spec/schema/fittings';
import { english } from '../../helpers/english';
import { plexFonts } from '../../helpers/fonts';
import { plumbingFaults } from '../../helpers/plumbingFaults';

const part = (
  id: string,
  symbol: PlumbingPart['symbol'],
  tag = '',
  gauges: readonly string[] = [],
): PlumbingPart => ({
  id,
  symbol,
  tag,
  name: id.replaceAll('-', ' '),
  gauges,
});
const diagram = (
  parts: readonly PlumbingPart[],
  pipes: readonly PlumbingPipe[],
  shut: readonly string[] = [],
): PlumbingInput => ({
  name: 'pipes',
  shows: 'The pipes',
  parts,
  pipes,
  shut: new Set(shut),
  say: english.messages.say,
  fluidWords: english.words.fluids,
});
const line = (carries: PlumbingPipe['carries'], ...through: string[]): PlumbingPipe[] =>
  through.slice(1).map((to, index) => ({ from: through[index] ?? '', to, carries }));

const water = diagram(
  [
    part('tank', 'tank', 'T1', ['G2']),
    part('tank-valve', 'valve', 'W1'),
    part('pump', 'pump'),
    part('check', 'check-valve'),
    part('bypass', 'valve', 'W2'),
    part('boiler', 'boiler', '', ['G1']),
    part('drain', 'valve', 'W3'),
    part('ground', 'ground'),
  ],
  [
    ...line('water', 'tank', 'tank-valve', 'pump', 'check', 'boiler', 'drain', 'ground'),
    ...line('water', 'pump', 'bypass', 'tank'),
  ],
  ['W1', 'bypass'],
);

describe('a plumbing diagram', () => {
  it('has each part below what flows into it, and pipes that flow back beside them', () => {
    const { parts, arrows } = layOutPlumbing(water, plexFonts);
    const top = (id: string) => parts.find((one) => one.part.id === id)?.symbol.top ?? Number.NaN;
    const order = ['tank', 'tank-valve', 'pump', 'check', 'boiler', 'drain', 'ground'].map(top);
    expect(order).toEqual([...order].sort((a, b) => a - b));
    expect(new Set(order).size).toBe(order.length);
    expect(top('bypass')).toBeGreaterThan(top('pump'));
    expect(arrows.filter(({ up }) => up).length).toBeGreaterThan(0);
    // into every part once for each pipe: tank 1, tank valve, pump, check, bypass, boiler, drain, ground
    expect(arrows.filter(({ up }) => !up)).toHaveLength(8);
  });

  it('runs a chain straight down', () => {
    const { parts } = layOutPlumbing(
      diagram([part('a', 'pump'), part('b', 'valve'), part('c', 'valve')], line('steam', 'a', 'b', 'c')),
      plexFonts,
    );
    expect(new Set(parts.map(({ symbol }) => symbol.left + symbol.right)).size).toBe(1);
  });

  it('shows what is outside the car once for each pipe', () => {
    const { parts } = layOutPlumbing(
      diagram(
        [part('boiler', 'boiler'), part('a', 'valve'), part('b', 'valve'), part('ground', 'ground')],
        [...line('water', 'boiler', 'a', 'ground'), ...line('water', 'boiler', 'b', 'ground')],
      ),
      plexFonts,
    );
    expect(parts.filter((one) => one.part.id === 'ground')).toHaveLength(2);
  });

  it('fills valves that are shut, and no others', () => {
    const [shut, open] = [
      drawPlumbing(water, plexFonts),
      drawPlumbing({ ...water, shut: new Set() }, plexFonts),
    ];
    const filled = (drawing: typeof shut) =>
      drawing.shapes.filter(
        (shape) =>
          shape.kind === 'path' &&
          shape.pieces.length === 4 &&
          shape.paint.fill === '#1a1a1a' &&
          shape.paint.stroke?.colour === '#1a1a1a',
      ).length;
    // two halves of the bypass, two of the shut valve in the key
    expect(filled(shut) - filled(open)).toBe(4);
    expect(shut.alt).toContain('Shut as parked: W2 bypass.');
    expect(shut.alt).toContain('Open as parked: W1 tank valve, W3 drain.');
    expect(shut.alt).toContain('G1 on boiler');
  });

  it('is the same for the same plant, and can be written as SVG', () => {
    expect(toSvg(drawPlumbing(water, plexFonts))).toBe(toSvg(drawPlumbing(water, plexFonts)));
  });

  it('finds faults in a layout that has them', () => {
    const good = layOutPlumbing(water, plexFonts);
    expect(plumbingFaults(good)).toEqual([]);
    const [first, second, ...others] = good.parts;
    if (!first || !second) throw new Error('no parts');
    expect(
      plumbingFaults({ ...good, parts: [first, { ...second, symbol: first.symbol }, ...others] }),
    ).not.toEqual([]);
    expect(plumbingFaults({ ...good, widthPt: 60 })).not.toEqual([]);
    const bent = good.runs.map((run, index) => (index === 0 ? { ...run, a: { x: Number.NaN, y: 1 } } : run));
    expect(plumbingFaults({ ...good, runs: bent })).not.toEqual([]);
  });

  it('tells the name of a gauge without a tag in the label, since it has no room in the circle', () => {
    const gauged = (gauge: string) =>
      toSvg(
        drawPlumbing(
          diagram(
            [part('tank', 'tank', 'T1', [gauge]), part('ground', 'ground')],
            line('water', 'tank', 'ground'),
          ),
          plexFonts,
        ),
      );
    const texts = (svg: string) => [...svg.matchAll(/<text[^>]*>([^<]*)</g)].map(([, words]) => words);
    expect(texts(gauged('G2'))).toContain('G2');
    const named = texts(gauged('tank glass'));
    expect(named).not.toContain('tank glass');
    expect(named.join(' ')).toContain('tank (tank glass)');
  });

  it('never overlaps and never loses a part, whatever the plant', () => {
    const names = [
      'valve',
      'right hand feed pump check valve',
      'x'.repeat(60),
      'water of the left side tank',
    ];
    const plants = fc
      .array(
        fc.record({
          symbol: fc.constantFrom(...symbolKinds),
          tag: fc.constantFrom('', 'V1', 'W12'),
          name: fc.constantFrom(...names),
          gauges: fc.constantFrom([], ['G1'], ['G1', 'G2'], ['steam gauge']),
        }),
        { minLength: 2, maxLength: 22 },
      )
      .chain((drawn) => {
        const parts = drawn.map((one, index) => ({ ...one, id: `part-${index}` }));
        const id = fc.constantFrom(...parts.map((one) => one.id));
        return fc
          .array(fc.record({ from: id, to: id, carries: fc.constantFrom(...fluids) }), { maxLength: 30 })
          .map((pipes) => diagram(parts, pipes, ['part-1']));
      });
    fc.assert(
      fc.property(plants, (input) => {
        const layout = layOutPlumbing(input, plexFonts);
        expect(plumbingFaults(layout)).toEqual([]);
        const drawn = new Set(layout.parts.map((one) => one.part.id));
        const piped = input.pipes.filter(({ from, to }) => from !== to).flatMap(({ from, to }) => [from, to]);
        expect(drawn).toEqual(new Set(piped));
      }),
      { numRuns: 150, endOnFailure: true },
    );
  }, 30_000);
});
