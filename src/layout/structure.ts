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

  /** How many elements there are. */
  get count(): number {
    return this.elements.length;
  }

  /** The elements added since there were `count` of them. */
  since(count: number): readonly StructureElement[] {
    return this.elements.slice(count);
  }

  /** Adds elements that stood at the same place of the same tree before. */
  addAll(elements: readonly StructureElement[]): void {
    for (const element of elements) this.elements.push(element);
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
