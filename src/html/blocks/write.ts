/** From any block to HTML. */
import type { Block } from '../../markup/block';
import { element, Html } from '../element';
import type { Writing } from '../writing';
import { writeCaution } from './caution';
import { writeContents } from './contents';
import { writeFigure } from './figure';
import { writeSigns } from './signs';
import { writeSteps } from './steps';
import { writeTable } from './table';
import { writeDefinitions, writeHeading, writeList, writeParagraph, writeRule } from './text';

/** Writes one block, with everything in it. */
export function writeBlock(block: Block, writing: Writing): Html {
  switch (block.kind) {
    case 'heading':
      return writeHeading(block, writing);
    case 'paragraph':
      // on a screen every caution stands at its step, and none has a mark
      return block.marks === 'some' ? Html.sound('') : writeParagraph(block, writing);
    case 'list':
      return writeList(block, writing);
    case 'steps':
      return writeSteps(block, writing);
    case 'table':
      return writeTable(block, writing);
    case 'figure':
      return writeFigure(block, writing);
    case 'caution':
      return writeCaution(block, writing);
    case 'signs':
      return writeSigns(block, writing);
    case 'definitions':
      return writeDefinitions(block, writing);
    case 'contents':
      return writeContents(block, writing);
    case 'rule':
      return writeRule(block, writing);
    case 'group':
      return element(
        'div',
        { id: block.id, class: block.style === 'plain' ? 'keep' : block.style },
        writing.blocks(block.blocks),
      );
    case 'page-break':
      return element('div', { id: block.id, class: 'page-break' });
  }
}
