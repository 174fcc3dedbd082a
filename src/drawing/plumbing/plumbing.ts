/**
 * What a plumbing diagram is drawn from, and what laying it out yields.
 */

import type { Fluid } from '../../car/plant';
import type { Say } from '../../language/messages';
import type { Point } from '../shapes';

/** The symbols a part can be drawn with. */
export const symbolKinds = [
  'tank',
  'boiler',
  'engine',
  'burner',
  'coil',
  'exchanger',
  'pump',
  'valve',
  'check-valve',
  'automatic',
  'relief-valve',
  'strainer',
  'joint',
  'muffler',
  'glass',
  'dial',
  'plain',
  'open-air',
  'ground',
] as const;

/** The symbol of a part. */
export type SymbolKind = (typeof symbolKinds)[number];

/** One part. */
export interface PlumbingPart {
  readonly id: string;
  readonly symbol: SymbolKind;
  /** Empty if it has none. */
  readonly tag: string;
  readonly name: string;
  /** Tags of the gauges that read it and are not in a pipe themselves, or their names. */
  readonly gauges: readonly string[];
}

/** One length of pipe, in the direction of flow. */
export interface PlumbingPipe {
  readonly from: string;
  readonly to: string;
  readonly carries: Fluid;
}

/** One diagram. */
export interface PlumbingInput {
  /** The drawing's name. */
  readonly name: string;
  /** What it shows, for those who cannot see it, such as `The fuel of Marigold`. */
  readonly shows: string;
  readonly parts: readonly PlumbingPart[];
  readonly pipes: readonly PlumbingPipe[];
  /** Valves that are shut; all others are drawn open. */
  readonly shut: ReadonlySet<string>;
  /** The words of the drawing. */
  readonly say: Say;
  readonly fluidWords: Readonly<Record<Fluid, string>>;
  /** Width of the drawing; 480 pt fits a letter and an A4 page. */
  readonly widthPt?: number;
}

/** A part, or a bend of a pipe that passes its layer. Parts that stand outside the car occur once for each pipe. */
export interface Item {
  readonly key: string;
  readonly part?: PlumbingPart;
  /** For a bend: whether its pipe goes up, against the layers. */
  readonly up: boolean;
}

/** A pipe as a chain through the layers. */
export interface Chain {
  readonly pipe: PlumbingPipe;
  readonly from: Item;
  readonly to: Item;
  /** From the upper layer to the lower. */
  readonly bends: readonly Item[];
  readonly up: boolean;
}

/** Parts and bends by layer, from the first to the last in the direction of flow. */
export interface Layered {
  readonly layers: readonly (readonly Item[])[];
  readonly chains: readonly Chain[];
}

/** A rectangle. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** A part in its place. */
export interface PlacedPart {
  readonly part: PlumbingPart;
  readonly symbol: Box;
  readonly label: Box;
  readonly lines: readonly string[];
  readonly gauges: readonly { readonly tag: string; readonly centre: Point; readonly box: Box }[];
}

/** A straight length of pipe. Those of one `net` are joined. */
export interface Run {
  readonly net: string;
  readonly carries: Fluid;
  readonly a: Point;
  readonly b: Point;
}

/** The head of an arrow: its tip, and whether it points up. */
export interface Arrow {
  readonly tip: Point;
  readonly up: boolean;
}

/** A diagram with every coordinate decided, less its key. */
export interface PlumbingLayout {
  readonly widthPt: number;
  readonly heightPt: number;
  readonly parts: readonly PlacedPart[];
  readonly runs: readonly Run[];
  readonly dots: readonly Point[];
  readonly arrows: readonly Arrow[];
}
