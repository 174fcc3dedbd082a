/**
 * What collecting needs to know and to fill: the look, the tree, the problems, the page numbers; and where a block stands.
 */
import type { Reuse } from './blocks/reuse';
import type { StructureIndex } from './frame';
import type { RememberedWords } from './inline/plain';
import type { Labels } from './labels';
import type { Look } from './look';
import type { Problems } from './problems';
import type { StructureBuilder } from './structure';
import type { Survey } from './survey';

/** Shared by all blocks of one run of layout. */
export interface Setting {
  readonly look: Look;
  readonly structure: StructureBuilder;
  readonly problems: Problems;
  readonly labels: Labels;
  readonly survey: Survey;
  readonly reuse: Reuse;
  readonly words: RememberedWords;
  /** Height of an empty page's body, in points. */
  readonly roomPt: number;
  readonly chaptersOnNewPage: boolean;
}

/** The column a block is set in. `x` counts from the left edge of the body. */
export interface Place {
  readonly x: number;
  readonly widthPt: number;
  /** Element of the structure tree that the block goes under. */
  readonly tag: StructureIndex;
  /** How many lists the block stands in. */
  readonly depth: number;
  /** Height of what stands above and must stay on the same page: headings. */
  readonly keptAbovePt: number;
}

/** The same column, narrowed by `indentPt` from the left. */
export function indented(place: Place, indentPt: number): Place {
  return { ...place, x: place.x + indentPt, widthPt: place.widthPt - indentPt, keptAbovePt: 0 };
}
