/**
 * The layout of a plumbing diagram: layers from top to bottom in the direction of flow, labels right of their
 * symbols, pipes upright within layers and level between them. Nothing can overlap, since each layer keeps its parts,
 * labels and passing pipes apart, and level pipes run only between layers.
 */
import type { FontSet } from '../../font/metrics';
import type { Point } from '../shapes';
import { type Channel, routeChannel } from './channel';
import { type Columns, columns } from './columns';
import {
  extentOf,
  gaugeRadiusPt,
  gaugeStepPt,
  labelGapPt,
  labelLeadingPt,
  labelLines,
  labelWidth,
  symbolSize,
} from './extents';
import { layered } from './layers';
import { linksOf, ordered } from './order';
import type { Arrow, Box, Item, PlacedPart, PlumbingInput, PlumbingLayout, Run } from './plumbing';
import { type Joint, type JointNet, jointsOf, netsOf, pipesAt, portsOf } from './ports';

/** Labels with room to spare are no wider than this. */
const widestLabelPt = 110;
/** Widest labels that are tried, from the easiest to read to the narrowest. */
const labelWidths = [widestLabelPt, 96, 84, 74, 66, 58, 52, 46, 40, 34];
const gapPt = 7;
const noExtent = { left: 0, right: 0 };
const margin = 1;
/** Between level pipes; above the first; below the last, with room for an arrow. */
const track = { stepPt: 6, abovePt: 4, belowPt: 9.5 };

/** A layer's top and bottom. */
interface Band {
  readonly top: number;
  readonly bottom: number;
}

/** Lays the diagram out. It is wider than asked if even the narrowest labels do not fit. */
export function layOutPlumbing(input: PlumbingInput, fonts: FontSet): PlumbingLayout {
  const { layers, chains } = ordered(layered(input));
  const levelOf = new Map(layers.flatMap((layer, level) => layer.map((item) => [item, level] as const)));
  const joints = jointsOf(chains, levelOf);
  const pipes = pipesAt(joints);
  const halfOf = (item: Item): number => (item.part ? symbolSize(item.part, pipes.get(item) ?? 0)[0] / 2 : 0);
  const wanted = (input.widthPt ?? 480) - 2 * margin;
  const links = chains.flatMap(linksOf);
  const items = layers.flat();
  const fit = widest(wanted, (mostPt) => {
    const extents = new Map(
      items.map((item) => [item, extentOf(item, pipes.get(item) ?? 0, fonts, mostPt)] as const),
    );
    return columns(layers, links, (item) => extents.get(item) ?? noExtent, gapPt);
  });
  const shift = margin + Math.max(0, (wanted - fit.placed.widthPt) / 2);
  const at = new Map([...fit.placed.at].map(([item, x]) => [item, x + shift]));
  const ports = portsOf(joints, at, halfOf);
  const channels = Array.from({ length: layers.length + 1 }, (_, number) => {
    const nets = netsOf(
      joints.filter(({ channel }) => channel === number),
      ports,
    );
    return { nets, routed: routeChannel(nets.map(({ net }) => net)) };
  });
  const widthPt = Math.max(input.widthPt ?? 480, fit.placed.widthPt + 2 * margin);
  const rightOf = (item: Item): number => (at.get(item) ?? 0) + halfOf(item) + labelGapPt;
  const labels = new Map(
    layers.flatMap((layer) =>
      layer.flatMap((item, index) => {
        if (!item.part) return [];
        const next = layer[index + 1];
        const end = next
          ? (at.get(next) ?? 0) - extentOf(next, pipes.get(next) ?? 0, fonts, fit.mostPt).left - gapPt
          : widthPt - margin;
        const room = Math.max(fit.mostPt, Math.min(end - rightOf(item), widestLabelPt));
        return [[item, labelLines(item.part, fonts, room)] as const];
      }),
    ),
  );
  const heightOf = (item: Item): number =>
    item.part
      ? Math.max(
          symbolSize(item.part, 0)[1],
          (labels.get(item)?.length ?? 0) * labelLeadingPt,
          item.part.gauges.length > 0 ? 18 : 0,
        )
      : 0;
  const bands = stack(
    layers.map((layer) => Math.max(0, ...layer.map(heightOf))),
    channels.map(({ routed }) => routed),
  );
  const placed = new Map(
    layers.flatMap((layer, level) =>
      layer.flatMap((item) => {
        const band = bands.layers[level] ?? { top: 0, bottom: 0 };
        return item.part
          ? [
              [
                item,
                placePart(
                  item.part,
                  at.get(item) ?? 0,
                  band,
                  pipes.get(item) ?? 0,
                  labels.get(item) ?? [],
                  fonts,
                ),
              ] as const,
            ]
          : [];
      }),
    ),
  );
  const drawn = channels.map(({ nets, routed }, number) =>
    drawChannel(nets, routed, bands.channels[number] ?? { top: 0, bottom: 0 }, placed),
  );
  const through = passing(joints, layers, bands.layers, at);
  return {
    widthPt,
    heightPt: bands.heightPt,
    parts: [...placed.values()],
    runs: [...drawn.flatMap(({ runs }) => runs), ...through.runs],
    dots: drawn.flatMap(({ dots }) => dots),
    arrows: [...drawn.flatMap(({ arrows }) => arrows), ...through.arrows],
  };
}

/** The widest labels with which the columns fit, or the narrowest. */
function widest(
  wantedPt: number,
  place: (mostPt: number) => Columns,
): { readonly mostPt: number; readonly placed: Columns } {
  let narrowest: { readonly mostPt: number; readonly placed: Columns } | undefined;
  for (const mostPt of labelWidths) {
    const placed = place(mostPt);
    if (placed.widthPt <= wantedPt) return { mostPt, placed };
    if (narrowest === undefined || placed.widthPt < narrowest.placed.widthPt) narrowest = { mostPt, placed };
  }
  return narrowest ?? { mostPt: 0, placed: place(0) };
}

/** Layers and channels one under the other. */
function stack(
  heights: readonly number[],
  channels: readonly Channel[],
): { readonly layers: readonly Band[]; readonly channels: readonly Band[]; readonly heightPt: number } {
  let y = margin;
  const bands: { layers: Band[]; channels: Band[] } = { layers: [], channels: [] };
  for (const [index, { nets, tracks }] of channels.entries()) {
    const edge = index === 0 || index === channels.length - 1;
    const height =
      nets.length === 0 && edge ? 0 : track.abovePt + Math.max(0, tracks - 1) * track.stepPt + track.belowPt;
    bands.channels.push({ top: y, bottom: y + height });
    y += height;
    if (index === channels.length - 1) break;
    bands.layers.push({ top: y, bottom: y + (heights[index] ?? 0) });
    y += heights[index] ?? 0;
  }
  return { ...bands, heightPt: y + margin };
}

function placePart(
  part: PlacedPart['part'],
  x: number,
  band: Band,
  pipes: number,
  lines: readonly string[],
  fonts: FontSet,
): PlacedPart {
  const [width, height] = symbolSize(part, pipes);
  const y = (band.top + band.bottom) / 2;
  const symbol = { left: x - width / 2, top: y - height / 2, right: x + width / 2, bottom: y + height / 2 };
  const left = symbol.right + labelGapPt;
  const half = (lines.length * labelLeadingPt) / 2;
  return {
    part,
    symbol,
    lines,
    label: { left, top: y - half, right: left + labelWidth(lines, fonts), bottom: y + half },
    gauges: part.gauges.map((tag, index) => {
      const centre = { x: symbol.left - gaugeStepPt * (index + 0.5) - 1, y };
      return { tag, centre, box: around(centre, gaugeRadiusPt) };
    }),
  };
}

function around({ x, y }: Point, r: number): Box {
  return { left: x - r, top: y - r, right: x + r, bottom: y + r };
}

interface Drawn {
  readonly runs: readonly Run[];
  readonly dots: readonly Point[];
  readonly arrows: readonly Arrow[];
}

/** The nets of a channel as straight lengths. */
function drawChannel(
  nets: readonly JointNet[],
  { nets: routed }: Channel,
  band: Band,
  placed: ReadonlyMap<Item, PlacedPart>,
): Drawn {
  const all = routed.map(({ net, track: number, lines }, index): Drawn => {
    const items = nets[index]?.items ?? [];
    const y = band.top + track.abovePt + (number ?? 0) * track.stepPt;
    const run = (a: Point, b: Point): Run => ({ net: net.key, carries: net.carries, a, b });
    const uprights = net.ends.flatMap(({ x, side }, end): readonly Run[] => {
      const item = items[end];
      const symbol = item && placed.get(item)?.symbol;
      const line = lines[end] ?? x;
      const reach = side === 'above' ? (symbol?.bottom ?? band.top) : (symbol?.top ?? band.bottom);
      const middle = number === undefined ? (band.top + band.bottom) / 2 : y;
      const aside = band.bottom - track.belowPt + 2.5;
      if (line === x) return [run({ x, y: middle }, { x, y: reach })];
      return [
        run({ x: line, y: middle }, { x: line, y: aside }),
        run({ x: line, y: aside }, { x, y: aside }),
        run({ x, y: aside }, { x, y: reach }),
      ];
    });
    const level =
      number === undefined ? [] : [run({ x: Math.min(...lines), y }, { x: Math.max(...lines), y })];
    const arrows = net.ends.flatMap(({ x, side }, end): readonly Arrow[] => {
      const symbol = items[end] && placed.get(items[end])?.symbol;
      return side === 'below' && symbol ? [{ tip: { x, y: symbol.top }, up: false }] : [];
    });
    return { runs: [...uprights, ...level], dots: number === undefined ? [] : dotsOf(lines, y), arrows };
  });
  return {
    runs: all.flatMap(({ runs }) => runs),
    dots: all.flatMap(({ dots }) => dots),
    arrows: all.flatMap(({ arrows }) => arrows),
  };
}

/** Where three lengths of one net meet. */
function dotsOf(lines: readonly number[], y: number): readonly Point[] {
  const [least, most] = [Math.min(...lines), Math.max(...lines)];
  return [...new Set(lines)].flatMap((x) => {
    const uprights = lines.filter((other) => other === x).length;
    const meeting = uprights + (x > least ? 1 : 0) + (x < most ? 1 : 0);
    return meeting >= 3 ? [{ x, y }] : [];
  });
}

/** Pipes that pass a layer between its parts; those that flow up carry an arrow in every other layer. */
function passing(
  joints: readonly Joint[],
  layers: readonly (readonly Item[])[],
  bands: readonly Band[],
  at: ReadonlyMap<Item, number>,
): Drawn {
  const carries = new Map(
    joints.flatMap(({ chain, a, b }) => [a, b].map(({ item }) => [item, chain.pipe.carries] as const)),
  );
  const bends = layers.flatMap((layer, level) =>
    layer
      .filter(({ part }) => !part)
      .map((item) => ({ item, level, band: bands[level] ?? { top: 0, bottom: 0 } })),
  );
  return {
    runs: bends.map(({ item, band }) => {
      const x = at.get(item) ?? 0;
      const net = item.key;
      return { net, carries: carries.get(item) ?? 'water', a: { x, y: band.top }, b: { x, y: band.bottom } };
    }),
    dots: [],
    arrows: bends.flatMap(({ item, level, band }) =>
      item.up && level % 2 === 0
        ? [{ tip: { x: at.get(item) ?? 0, y: (band.top + band.bottom) / 2 - 4 }, up: true }]
        : [],
    ),
  };
}
