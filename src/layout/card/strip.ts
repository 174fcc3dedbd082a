/** Strips: what stands above and below the steps on a face, none of it part of the text that is read. */
import type { Inline } from '../../markup/block';
import type { PlacedItem } from '../frame';

/** Items with the height they take, counted from their upper left corner. */
export interface Strip {
  readonly heightPt: number;
  readonly items: readonly PlacedItem[];
}

/** Words of a strip. */
export function words(text: string, strong: boolean): Inline {
  return { kind: 'text', text, strong, emphasis: false };
}
