/**
 * The key of a plumbing diagram: the lines and symbols that occur in it, in rows.
 */

import type { FontSet } from '../../font/metrics';
import { fluids } from '../../spec/schema/fittings';
import { inks } from '../carScale';
import type { Shape } from '../drawing';
import { circle, polyline, stroke, text } from '../shapes';
import { gaugeRadiusPt } from './extents';
import { pipe } from './pipeLines';
import type { Box, PlumbingInput, SymbolKind } from './plumbing';
import { symbol } from './symbols';

/** The key, from its own top. */
export interface Key {
  readonly shapes: (top: number) => readonly Shape[];
  readonly heightPt: number;
}

interface Entry {
  readonly words: string;
  readonly sampleWidthPt: number;
  draw(middle: { readonly x: number; readonly y: number }): readonly Shape[];
}

const sizePt = 8.5;
const rowPt = 24;
const gapPt = 10;

/** What the key says of symbols that are not named beside themselves. */
const symbolWords = {
  'check-valve': 'key-check-valve',
  automatic: 'key-automatic',
  'relief-valve': 'key-relief-valve',
  pump: 'key-pump',
  strainer: 'key-strainer',
} as const satisfies Partial<Record<SymbolKind, string>>;

/** The key's shapes and height for a drawing so wide. */
export function keyOf(input: PlumbingInput, fonts: FontSet, widthPt: number): Key {
  const widthOf = ({ words, sampleWidthPt }: Entry): number =>
    sampleWidthPt + 5 + fonts.narrow.widthOf(words, sizePt);
  const rows: Entry[][] = [[]];
  let x = 0;
  for (const entry of entriesOf(input)) {
    if (x > 0 && x + widthOf(entry) > widthPt - 2) {
      rows.push([]);
      x = 0;
    }
    rows.at(-1)?.push(entry);
    x += widthOf(entry) + gapPt;
  }
  const shapes = (top: number): readonly Shape[] => [
    polyline(
      [
        { x: 0, y: top },
        { x: widthPt, y: top },
      ],
      stroke(0.5, inks.soft),
    ),
    ...rows.flatMap((row, index) => rowShapes(row, top + rowPt * (index + 0.5) + 2, widthOf)),
  ];
  return { shapes, heightPt: rows.length * rowPt + 4 };
}

function rowShapes(row: readonly Entry[], y: number, widthOf: (entry: Entry) => number): readonly Shape[] {
  let x = 1;
  return row.flatMap((entry) => {
    const left = x;
    x += widthOf(entry) + gapPt;
    return [
      ...entry.draw({ x: left + entry.sampleWidthPt / 2, y }),
      text({ x: left + entry.sampleWidthPt + 5, y: y + sizePt * 0.34 }, entry.words, {
        face: 'narrow',
        sizePt,
        colour: inks.line,
      }),
    ];
  });
}

function entriesOf({ parts, pipes, shut, say, fluidWords }: PlumbingInput): readonly Entry[] {
  const lines = fluids
    .filter((fluid) => pipes.some(({ carries }) => carries === fluid))
    .map(
      (fluid): Entry => ({
        words: fluidWords[fluid],
        sampleWidthPt: 28,
        draw: ({ x, y }) =>
          pipe(
            [
              { x: x - 14, y },
              { x: x + 14, y },
            ],
            fluid,
          ),
      }),
    );
  const valves = parts.filter((part) => part.symbol === 'valve');
  const states = [
    { words: say('key-shut', {}), isShut: true },
    { words: say('key-open', {}), isShut: false },
  ].filter(({ isShut }) => valves.some(({ id }) => shut.has(id) === isShut));
  const valveEntries = states.map(({ words, isShut }) => symbolEntry('valve', words, isShut));
  const others = Object.entries(symbolWords).flatMap(([kind, words]) =>
    parts
      .filter(({ symbol: own }) => own === kind)
      .slice(0, 1)
      .map(({ symbol: own }) => symbolEntry(own, say(words, {}), false)),
  );
  const gauge: Entry = {
    words: say('key-gauge', {}),
    sampleWidthPt: 2 * gaugeRadiusPt,
    draw: (middle) => [circle(middle, gaugeRadiusPt, { fill: inks.paper, stroke: stroke(0.9, inks.line) })],
  };
  return [
    ...lines,
    ...valveEntries,
    ...others,
    ...(parts.some(({ gauges }) => gauges.length > 0) ? [gauge] : []),
  ];
}

function symbolEntry(kind: SymbolKind, words: string, shut: boolean): Entry {
  return {
    words,
    sampleWidthPt: 21,
    draw: ({ x: middle, y }) => {
      // what works a valve stands to its left
      const x = middle + 1.5;
      const [halfWidth, halfHeight] = kind === 'pump' ? [8.5, 8.5] : [6, 9];
      const frame: Box = {
        left: x - halfWidth,
        top: y - halfHeight,
        right: x + halfWidth,
        bottom: y + halfHeight,
      };
      return symbol(kind, frame, shut);
    },
  };
}
