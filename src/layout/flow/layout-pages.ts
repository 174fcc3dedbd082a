/** Papers that flow over pages: blocks in, finished pages out. */
import type { Outcome } from '../../diagnostic/diagnostic';
import type { Block, BlockOrigin } from '../../markup/block';
import type { LaidOut } from '../frame';
import { settle } from '../pages/settle';
import { originOf } from '../survey';
import type { FlowOptions } from '../types';
import { Book, pageNumbers } from './book';

/** Lays out a paper on as many pages as it needs. */
export function layoutPages(blocks: readonly Block[], options: FlowOptions): Outcome<LaidOut> {
  return layoutWhole(new Book(blocks, options), originOf(blocks));
}

/** Lays out all of a book, some of whose chapters may have been filled before. */
export function layoutWhole(book: Book, origin: BlockOrigin): Outcome<LaidOut> {
  return settle((known) => {
    const filled = book.fill(book.whole, known);
    const { destinations, boxes, labels, problems } = filled;
    const found = { destinations, pageCount: boxes.length };
    const numbers = pageNumbers(found);
    const finish = (): LaidOut => ({
      ...book.finish(filled, found, 0),
      destinations,
      outline: book.outline,
    });
    return { finish, problems, labels: numbers, settled: labels.agreesWith(numbers) };
  }, origin);
}
