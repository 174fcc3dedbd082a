/**
 * A drawing: plain shapes in a frame of its own, in points, y downwards.
 *
 * It is finished (every coordinate decided) and knows nothing of cars or of PDF. `svg.ts` writes it as SVG;
 * layout places it on a page as vectors.
 */
import type { Face } from '../font/metrics';

/** A colour as six hexadecimal digits with a `#`, as SVG writes it. */
export type Colour = `#${string}`;

/** How a line is drawn. Dashes are lengths on and off, in points. */
export interface Stroke {
  readonly colour: Colour;
  readonly widthPt: number;
  readonly dashPt?: readonly number[];
  readonly cap?: 'butt' | 'round';
}

/** Paint of a closed shape; leave either out for none. */
export interface Paint {
  readonly fill?: Colour;
  readonly stroke?: Stroke;
}

/** One piece of a path, with absolute coordinates in points. */
export type PathPiece =
  | { readonly op: 'move' | 'line'; readonly x: number; readonly y: number }
  | {
      readonly op: 'curve';
      readonly x1: number;
      readonly y1: number;
      readonly x2: number;
      readonly y2: number;
      readonly x: number;
      readonly y: number;
    }
  | { readonly op: 'close' };

/** One shape of a drawing. A text's `x`, `y` are its anchor on the baseline. */
export type Shape =
  | { readonly kind: 'path'; readonly pieces: readonly PathPiece[]; readonly paint: Paint }
  | {
      readonly kind: 'rect';
      readonly x: number;
      readonly y: number;
      readonly width: number;
      readonly height: number;
      readonly radius?: number;
      readonly paint: Paint;
    }
  | {
      readonly kind: 'circle';
      readonly cx: number;
      readonly cy: number;
      readonly r: number;
      readonly paint: Paint;
    }
  | {
      readonly kind: 'text';
      readonly x: number;
      readonly y: number;
      readonly text: string;
      readonly face: Face;
      readonly sizePt: number;
      readonly colour: Colour;
      readonly anchor: 'start' | 'middle' | 'end';
      /** Degrees clockwise about the anchor. */
      readonly turn?: number;
    };

/** A finished drawing. */
export interface Drawing {
  readonly name: string;
  readonly widthPt: number;
  readonly heightPt: number;
  readonly shapes: readonly Shape[];
  /** What the drawing shows, in words, for those who cannot see it. */
  readonly alt: string;
}
