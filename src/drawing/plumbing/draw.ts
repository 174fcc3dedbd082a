/**
 * A plumbing diagram: parts as symbols, pipes told apart by their lines, the flow from top to bottom, a key below.
 */
import type { FontSet } from '../../font/metrics';
import { inks } from '../carScale';
import type { Drawing, Shape } from '../drawing';
import { circle, polygon, polyline, stroke, text } from '../shapes';
import { fitsCircle, gaugeRadiusPt, gaugeSizePt, labelLeadingPt, labelSizePt } from './extents';
import { keyOf } from './key';
import { layOutPlumbing } from './layOut';
import { halo, pipe } from './pipeLines';
import type { Arrow, PlacedPart, PlumbingInput, Run } from './plumbing';
import { symbol } from './symbols';

/** Draws the diagram. */
export function drawPlumbing(input: PlumbingInput, fonts: FontSet): Drawing {
  const layout = layOutPlumbing(input, fonts);
  const key = keyOf(input, fonts, layout.widthPt);
  const keyTop = layout.heightPt + 8;
  return {
    name: input.name,
    widthPt: layout.widthPt,
    heightPt: keyTop + key.heightPt,
    alt: altWords(input),
    shapes: [
      ...pipesOf(layout.runs),
      ...layout.dots.map((dot) => circle(dot, 2.3, { fill: inks.line })),
      ...layout.parts.flatMap((placed) => partShapes(placed, input.shut, fonts)),
      ...layout.arrows.map(arrowHead),
      ...key.shapes(keyTop),
    ],
  };
}

/** Level pipes lie under the upright ones, which break them where they cross and are not joined. */
function pipesOf(runs: readonly Run[]): readonly Shape[] {
  const isLevel = ({ a, b }: Run): boolean => a.y === b.y;
  const level = runs.filter(isLevel);
  const upright = runs.filter((run) => !isLevel(run));
  const crossed = upright.flatMap((run) => {
    const [top, bottom] = [Math.min(run.a.y, run.b.y), Math.max(run.a.y, run.b.y)];
    return level
      .filter(
        ({ net, a, b }) =>
          net !== run.net &&
          a.y > top &&
          a.y < bottom &&
          run.a.x > Math.min(a.x, b.x) &&
          run.a.x < Math.max(a.x, b.x),
      )
      .map(({ a }) =>
        halo(
          [
            { x: run.a.x, y: a.y - 3 },
            { x: run.a.x, y: a.y + 3 },
          ],
          run.carries,
        ),
      );
  });
  return [
    ...level.flatMap(({ a, b, carries }) => pipe([a, b], carries)),
    ...crossed,
    ...upright.flatMap(({ a, b, carries }) => pipe([a, b], carries)),
  ];
}

function arrowHead({ tip: { x, y }, up }: Arrow): Shape {
  const back = up ? y + 7 : y - 7;
  return polygon(
    [
      { x, y },
      { x: x - 3.2, y: back },
      { x: x + 3.2, y: back },
    ],
    { fill: inks.line, stroke: stroke(0.8, inks.paper) },
  );
}

function partShapes(placed: PlacedPart, shut: ReadonlySet<string>, fonts: FontSet): readonly Shape[] {
  const { part, symbol: frame, label, lines, gauges } = placed;
  const y = (frame.top + frame.bottom) / 2;
  const stalk = gauges.at(-1);
  return [
    ...(stalk ? [polyline([stalk.centre, { x: frame.left, y }], stroke(0.9, inks.line))] : []),
    ...gauges.flatMap(({ tag, centre }) => [
      circle(centre, gaugeRadiusPt, { fill: inks.paper, stroke: stroke(0.9, inks.line) }),
      ...(fitsCircle(tag, fonts)
        ? [
            text({ x: centre.x, y: centre.y + 2.9 }, tag, {
              face: 'narrow-bold',
              sizePt: gaugeSizePt,
              colour: inks.line,
              anchor: 'middle',
            }),
          ]
        : []),
    ]),
    ...symbol(part.symbol, frame, shut.has(part.id)),
    ...lines.flatMap((line, index) => {
      const at = { x: label.left, y: label.top + labelLeadingPt * (index + 0.5) + labelSizePt * 0.34 };
      return labelLine(line, index === 0 ? part.tag : '', at, fonts);
    }),
  ];
}

/** A line of a label; the tag that begins it stands in bold. */
function labelLine(
  line: string,
  tag: string,
  { x, y }: { readonly x: number; readonly y: number },
  fonts: FontSet,
): readonly Shape[] {
  const look = { sizePt: labelSizePt, colour: inks.line } as const;
  const rest = line.slice(tag.length);
  const start = x + fonts['narrow-bold'].widthOf(tag, labelSizePt);
  return [
    ...(tag === '' ? [] : [text({ x, y }, tag, { ...look, face: 'narrow-bold' })]),
    ...(rest.trim() === '' ? [] : [text({ x: start, y }, rest, { ...look, face: 'narrow' })]),
  ];
}

/** Every pipe in words, valves with their state, and the gauges. */
function altWords({ shows, parts, pipes, shut, say, fluidWords }: PlumbingInput): string {
  const known = new Map(parts.map((part) => [part.id, part]));
  const nameOf = (id: string): string => {
    const { tag = '', name = id } = known.get(id) ?? {};
    return tag === '' ? name : `${tag} ${name}`;
  };
  const carried = [...new Set(pipes.map(({ carries }) => carries))].map((fluid) => {
    const list = pipes
      .filter(({ carries }) => carries === fluid)
      .map(({ from, to }) => say('pipe-from-to', { from: nameOf(from), to: nameOf(to) }));
    return `${fluidWords[fluid]}: ${list.join(', ')}`;
  });
  const valves = parts.filter(({ symbol: kind }) => kind === 'valve');
  const stand = (isShut: boolean): string => {
    const tags = valves.filter(({ id }) => shut.has(id) === isShut).map(({ id }) => nameOf(id));
    const list = tags.join(', ');
    if (tags.length === 0) return '';
    return ` ${isShut ? say('valves-shut', { list }) : say('valves-open', { list })}`;
  };
  const gauges = parts.flatMap(({ gauges: tags, id }) =>
    tags.map((tag) => say('gauge-on', { gauge: tag, part: nameOf(id) })),
  );
  const read = gauges.length === 0 ? '' : ` ${say('gauges-listed', { list: gauges.join(', ') })}`;
  const list = carried.join('. ');
  return `${say('pipes-picture', { shows, list })}${stand(true)}${stand(false)}${read}`;
}
