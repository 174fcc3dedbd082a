import { describe, expect, it } from 'vitest';
import { unitsOf, withChanges } from '../../../src/compare/units';
import { checkLaidOut } from '../../../src/layout/check';
import { layoutPages } from '../../../src/layout/flow/layout-pages';
import type { Page } from '../../../src/layout/frame';
import { pointsPerMm } from '../../../src/layout/sheet';
import type { FlowOptions } from '../../../src/layout/types';
import type { Block, ChangeMark } from '../../../src/markup/block';
import {
  caution,
  definitions,
  figure,
  group,
  heading,
  paragraph,
  step,
  steps,
  table,
  words,
} from '../../helpers/blocks';
import { squareFonts } from '../../helpers/squareMetrics';
import { evenTheme, laidOutCleanly, squareOptions, squareSheet, textsOf } from '../../helpers/squarePage';

const marginPt = 20 * pointsPerMm;

/** A page with an outer margin, on which marks can stand. */
function options(lines: number, more: Partial<FlowOptions> = {}): FlowOptions {
  const sheet = squareSheet(40, lines);
  const margins = { top: 0, right: marginPt, bottom: 0, left: 0 };
  return squareOptions(40, lines, { sheet: { ...sheet, widthPt: 400 + marginPt, margins }, ...more });
}

const changed: ChangeMark = { changed: true, goneAfter: false };
const goneAfter: ChangeMark = { changed: false, goneAfter: true };

/** The blocks with the marks of their units, in order; `undefined` for none. */
const marked = (blocks: readonly Block[], ...changes: (ChangeMark | undefined)[]) =>
  withChanges(blocks, changes);

interface Rect {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Every rectangle in the strip of the marks, from the top down. */
function marksOn(page: Page | undefined): Rect[] {
  const [left, , right] = page?.changeStrip ?? [0, 0, 0, 0];
  return (page?.items ?? [])
    .flatMap((item) => (item.kind === 'shape' && item.shape.kind === 'rect' ? [item] : []))
    .filter(
      ({ tag, shape }) => tag === undefined && shape.kind === 'rect' && shape.x >= left && shape.x < right,
    )
    .flatMap(({ shape }) => (shape.kind === 'rect' ? [shape] : []))
    .sort((a, b) => a.y - b.y);
}

describe('bars beside what changed', () => {
  it('stand in the outer margin, as tall as the lines they are of, and are artifacts', () => {
    const blocks = marked([paragraph('one'), paragraph(words(20)), paragraph('three')], undefined, changed);
    const { pages } = laidOutCleanly(blocks, options(20));
    const [bar, ...others] = marksOn(pages[0]);
    const lines = new Set(textsOf(pages[0]).map(({ y }) => y)).size;
    expect(others).toEqual([]);
    expect(bar?.y).toBeCloseTo(12);
    expect(bar?.height).toBeCloseTo(12 * (lines - 2));
    expect(bar?.x).toBeGreaterThan(400);
    expect(bar?.width).toBe(evenTheme.line.heavy);
  });

  it('are one bar where nothing unmarked stands between, and two where something does', () => {
    const blocks = [paragraph('one'), paragraph('two'), paragraph('three'), paragraph('four')];
    const { pages } = laidOutCleanly(marked(blocks, changed, changed, undefined, changed), options(20));
    expect(marksOn(pages[0]).map(({ y, height }) => [y, height])).toEqual([
      [0, 24],
      [36, 12],
    ]);
  });

  it('go on on the next page with what goes on there', () => {
    const { pages } = laidOutCleanly(marked([paragraph(words(60))], changed), options(6));
    expect(pages.length).toBeGreaterThan(1);
    for (const page of pages) {
      expect(marksOn(page)).toHaveLength(1);
      expect(marksOn(page)[0]?.height).toBeCloseTo(12 * new Set(textsOf(page).map(({ y }) => y)).size);
    }
  });

  it('change sides on the backs of sheets printed on both sides', () => {
    const blocks = marked([paragraph(words(60))], changed);
    const { pages } = laidOutCleanly(blocks, options(6, { bothSides: true }));
    expect(marksOn(pages[0])[0]?.x).toBeGreaterThan(400);
    expect(marksOn(pages[1])[0]?.x).toBeLessThan(marginPt);
    expect(marksOn(pages[1])[0]?.x).toBeGreaterThan(0);
  });

  it('a short bar with a stroke towards the text stands where something is gone', () => {
    const blocks = marked([paragraph('one'), paragraph('two')], goneAfter);
    const { pages } = laidOutCleanly(blocks, options(20));
    const [bar, stroke] = marksOn(pages[0]);
    expect((bar?.y ?? 0) + (bar?.height ?? 0) / 2).toBeCloseTo(12);
    expect((stroke?.y ?? 0) + (stroke?.height ?? 0) / 2).toBeCloseTo(12);
    expect((stroke?.x ?? 0) + (stroke?.width ?? 0)).toBeCloseTo(bar?.x ?? 0);
    expect(bar?.height).toBeLessThan(13);
  });

  it('stand beside every kind of thing, and the checks of the paper find them in their place', () => {
    const blocks = [
      heading(1, 'chapter'),
      paragraph('text'),
      steps([step('first', { cautions: [caution('warning', 'hot')] }), step('second', { critical: true })]),
      table({ head: ['one', 'two'], rows: [['a', 'b']] }),
      figure(60, 30, 'a drawing'),
      caution('danger', 'steam'),
      definitions([['word', 'meaning']]),
      group([paragraph('boxed')], 'boxed'),
      group([definitions([['left', 'one']]), definitions([['right', 'two']])], 'columns'),
    ];
    const all = unitsOf(blocks);
    for (const [index, unit] of all.entries()) {
      const own = marked(blocks, ...all.map((_, at) => (at === index ? changed : undefined)));
      const paper = options(80);
      const laidOut = laidOutCleanly(own, paper);
      const bars = marksOn(laidOut.pages[0]);
      expect(bars, `${unit.kind} ${unit.says}`).toHaveLength(1);
      expect(bars[0]?.height, `${unit.kind} ${unit.says}`).toBeGreaterThan(9);
      const leastPt = { text: 0, 'text-italic': 0, 'text-bold': 0, narrow: 0, 'narrow-bold': 0 };
      expect(checkLaidOut(own, laidOut, { fonts: squareFonts, theme: evenTheme, leastPt })).toEqual([]);
    }
  });

  it('are refused where the theme leaves no room for them', () => {
    const blocks = marked([paragraph('one')], changed);
    const refused = layoutPages(blocks, squareOptions(40, 6));
    expect(refused.ok ? [] : refused.problems.map(({ code }) => code)).toEqual(['layout-no-outer-margin']);
    expect(layoutPages([paragraph('one')], squareOptions(40, 6)).ok).toBe(true);
  });
});
