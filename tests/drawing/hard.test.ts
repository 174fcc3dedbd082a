/** What a keeper may well write, and what is hard to draw: names of 60 letters, 120 valves at one place. */
import { describe, expect, it } from 'vitest';
import type { Drawing } from '../../src/drawing/drawing';
import { drawGauges } from '../../src/drawing/gauges';
import { drawPlan } from '../../src/drawing/plan';
import { drawPlumbing } from '../../src/drawing/plumbing/draw';
import { layOutPlumbing } from '../../src/drawing/plumbing/layOut';
import type { PlumbingInput, PlumbingPipe } from '../../src/drawing/plumbing/plumbing';
import { drawSide } from '../../src/drawing/side';
import { drawTimeBars } from '../../src/drawing/timeBars';
import { wrapLine } from '../../src/drawing/wrapLine';
import { layoutPages } from '../../src/layout/flow/layout-pages';
import { origin } from '../helpers/blocks';
import { drawingFaults } from '../helpers/drawingFaults';
import { english } from '../helpers/english';
import { plexFonts } from '../helpers/fonts';
import { inventedTourer } from '../helpers/inventedTourer';
import { letterPage } from '../helpers/letterPage';
import { plumbingFaults } from '../helpers/plumbingFaults';

const { say } = english.messages;
const oneWord = 'righthandpilotfuelstopvalvebehindtheleftfrontdoorsillofthecar'.slice(0, 60);
const manyWords = 'right-hand pilot fuel stop valve behind the left front door';
const names = [
  ['one word', oneWord],
  ['many words', manyWords],
  ['sixty wide letters', 'W'.repeat(60)],
] as const;

/** The words of a drawing from the top down, without spaces; the driver's seat lies under leaders. */
const letters = ({ shapes }: Drawing) =>
  shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text.replaceAll(' ', '')] : [])).join('');
const faults = (drawing: Drawing) =>
  drawingFaults({
    ...drawing,
    shapes: drawing.shapes.filter((shape) => shape.kind !== 'text' || shape.text !== 'driver'),
  });

/** A plumbing diagram of valves by name, from a tank to the ground: one after the other, or side by side. */
function valves(count: number, name: string, side: 'chain' | 'manifold'): PlumbingInput {
  const ids = Array.from({ length: count }, (_, index) => `valve-${index}`);
  const through = (ends: readonly string[]): PlumbingPipe[] =>
    ends.slice(1).map((to, index) => ({ from: ends[index] ?? '', to, carries: 'water' }));
  return {
    name: 'pipes',
    shows: 'The pipes',
    shut: new Set(),
    say,
    fluidWords: english.words.fluids,
    parts: [
      { id: 'tank', symbol: 'tank', tag: 'T1', name: 'tank', gauges: [] },
      ...ids.map((id, index) => ({ id, symbol: 'valve' as const, tag: `V${index + 1}`, name, gauges: [] })),
      { id: 'ground', symbol: 'ground', tag: '', name: 'ground', gauges: [] },
    ],
    pipes:
      side === 'chain'
        ? through(['tank', ...ids, 'ground'])
        : ids.flatMap((id) => through(['tank', id, 'ground'])),
  };
}

/** What becomes of a drawing on a letter page. */
function onPage(drawing: Drawing): readonly string[] {
  const laid = layoutPages([{ kind: 'figure', origin: origin(), drawing, caption: [] }], letterPage);
  return laid.ok ? [`${laid.value.pages.length} page`] : laid.problems.map(({ code }) => code);
}

describe.each(names)('a name of 60 letters in %s', (_, name) => {
  const squeezed = name.replaceAll(' ', '');
  const item = { tag: 'W1', name };

  it('is whole in the plan and inside it', () => {
    const places = [
      { id: 'a', number: 1, name, backM: 1, rightM: -0.5, items: [item] },
      { id: 'b', number: 2, name, backM: 1.1, rightM: 0.5, items: [item] },
    ];
    const drawing = drawPlan({ ...inventedTourer, places }, plexFonts);
    expect(faults(drawing)).toEqual([]);
    expect(letters(drawing).split(squeezed)).toHaveLength(3);
  });

  it('is whole among the gauges, and beside bars', () => {
    const gauge = { tag: 'G1', name, kind: 'glass', says: [name] } as const;
    const inEnglish = { say, decimal: '.' };
    const gauges = drawGauges({ name: 'gauges', of: 'x', gauges: [gauge, gauge], ...inEnglish }, plexFonts);
    expect(faults(gauges)).toEqual([]);
    expect(letters(gauges)).toContain(squeezed);
    const bars = drawTimeBars(
      {
        name: 'bars',
        alt: 'bars',
        lanes: [{ name, bars: [{ from: 0, to: 9, kind: 'plain' }] }],
        counts: 'minutes',
        minute: String,
        key: [{ of: 'plain', says: 'busy' }],
      },
      plexFonts,
    );
    expect(faults(bars)).toEqual([]);
    expect(letters(bars)).toContain(squeezed);
  });

  it.each(['chain', 'manifold'] as const)('is whole in a diagram of pipes, in a %s', (side) => {
    const input = valves(3, name, side);
    expect(plumbingFaults(layOutPlumbing(input, plexFonts))).toEqual([]);
    const drawing = drawPlumbing(input, plexFonts);
    expect(faults(drawing)).toEqual([]);
    expect(letters(drawing)).toContain(squeezed);
  });
});

describe('120 valves', () => {
  const items = Array.from({ length: 120 }, (_, index) => ({ tag: `V${index + 1}`, name: 'valve' }));

  it('at one place are all named there, in the plan and in the side view, on one page', () => {
    const plan = drawPlan(
      { ...inventedTourer, places: [{ id: 'a', number: 1, name: 'dash', backM: 1, rightM: 0, items }] },
      plexFonts,
    );
    const side = drawSide(
      { ...inventedTourer, heightM: 2, places: [{ number: 1, backM: 1, upM: 1, height: '40 in', items }] },
      plexFonts,
    );
    for (const drawing of [plan, side]) {
      expect(faults(drawing)).toEqual([]);
      const said = letters(drawing);
      for (const { tag } of items) expect(said).toContain(tag);
      expect(onPage(drawing)).toEqual(['1 page']);
    }
  });

  it('at as many places in one spot are drawn without words over others; the drawing that is too tall is refused', () => {
    const places = items.map((item, index) => ({
      id: `p${index}`,
      number: index + 1,
      name: 'dash',
      backM: 1,
      rightM: 0,
      items: [item],
    }));
    const drawing = drawPlan({ ...inventedTourer, places }, plexFonts);
    expect(faults(drawing)).toEqual([]);
    expect(onPage(drawing)).toEqual(['layout-figure-small']);
  });

  it.each(['chain', 'manifold'] as const)('in a %s are drawn without words over others', (side) => {
    const input = valves(120, 'valve', side);
    expect(plumbingFaults(layOutPlumbing(input, plexFonts))).toEqual([]);
    expect(onPage(drawPlumbing(input, plexFonts))).toEqual(['layout-figure-small']);
  });
});

describe('a line of a label', () => {
  const width = (words: string) => plexFonts.narrow.widthOf(words, 9);

  it('is broken between letters only in words wider than may be', () => {
    const lines = wrapLine(`a ${oneWord} b`, plexFonts.narrow, 9, 60, 80);
    expect(lines[0]).toBe('a');
    expect(lines.join('').replaceAll(' ', '')).toBe(`a${oneWord}b`);
    for (const line of lines) expect(width(line)).toBeLessThanOrEqual(80);
    expect(wrapLine(`a ${oneWord}`, plexFonts.narrow, 9, 60)).toEqual(['a', oneWord]);
  });
});
