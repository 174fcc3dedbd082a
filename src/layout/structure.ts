/**
 * Builds the structure tree of a tagged paper, in reading order, as blocks are collected.
 */
import type { StructureElement, StructureIndex, StructureType } from './frame';

/** What an element may say besides its type. */
export type StructureDetail = Omit<StructureElement, 'type' | 'parent'>;

/** A structure tree in the making. Element 0 is the document. */
export class StructureBuilder {
  private readonly elements: StructureElement[] = [{ type: 'Document' }];

  /** Adds an element under `parent` and gives its index. */
  add(type: StructureType, parent: StructureIndex, detail: StructureDetail = {}): StructureIndex {
    this.elements.push({ type, parent, ...detail });
    return this.elements.length - 1;
  }

  /** Says where a figure came to stand. */
  setBox(index: StructureIndex, box: readonly [number, number, number, number]): void {
    const element = this.elements[index];
    if (element !== undefined) this.elements[index] = { ...element, box };
  }

  /** The finished tree. */
  finish(): readonly StructureElement[] {
    return this.elements;
  }
}
