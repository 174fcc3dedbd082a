/**
 * What one round of layout hands to the next: blocks that print no page number come out the same, with the same
 * elements of the structure tree, and need not be made again.
 */
import type { Block } from '../../markup/block';
import type { StructureElement } from '../frame';
import type { Piece } from '../pieces';
import type { Place, Setting } from '../setting';

interface Made {
  readonly pieces: readonly Piece[];
  readonly start: number;
  readonly elements: readonly StructureElement[];
  readonly keptAbovePt: number;
}

/** Pieces made in earlier rounds, by block. */
export class Reuse {
  private readonly made = new Map<Block, Made>();

  /** The block's pieces: those of an earlier round if they still hold, or else what `make` gives. */
  pieces(block: Block, place: Place, setting: Setting, make: () => readonly Piece[]): readonly Piece[] {
    const { structure, labels } = setting;
    const known = this.made.get(block);
    const start = structure.count;
    if (known?.start === start && known.keptAbovePt === place.keptAbovePt) {
      structure.addAll(known.elements);
      return known.pieces;
    }
    const asked = labels.timesAsked;
    const pieces = make();
    if (labels.timesAsked === asked) {
      const elements = structure.since(start);
      this.made.set(block, { pieces, start, elements, keptAbovePt: place.keptAbovePt });
    }
    return pieces;
  }
}
