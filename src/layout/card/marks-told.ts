/**
 * Paragraphs that tell what the mark of a caution said above means: they are printed where a step has one, others where none has.
 * Whether one has is known only when the faces are filled.
 */
import type { Block } from '../../markup/block';
import type { FilledBox } from '../flow/fill';

/** Whether any paragraph waits for that. */
export function waitsForMarks(blocks: readonly Block[]): boolean {
  return blocks.some((block) => {
    if (block.kind === 'group') return waitsForMarks(block.blocks);
    return block.kind === 'paragraph' && block.marks !== undefined;
  });
}

/** The blocks that are printed where steps have marks, or where they have none. */
export function forMarks(blocks: readonly Block[], marks: 'some' | 'none'): readonly Block[] {
  return blocks.flatMap((block): readonly Block[] => {
    if (block.kind === 'group') return [{ ...block, blocks: forMarks(block.blocks, marks) }];
    return block.kind === 'paragraph' && (block.marks ?? marks) !== marks ? [] : [block];
  });
}

/** Whether a step on these faces has such a mark. */
export function hasMarks(faces: readonly (readonly FilledBox[])[]): boolean {
  return faces.some((boxes) => boxes.some(({ box }) => box.layers.some(({ tied }) => tied?.kind === 'mark')));
}
