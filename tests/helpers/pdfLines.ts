/**
 * Straight lines of a PDF page as they come out on paper, knowing nothing of the writer: the content's own moves are followed.
 */
import { operations, type PdfFile } from './pdfFile';

/** A straight stroke or edge, in points from the top left corner of the page. */
export interface FoundLine {
  readonly from: readonly [x: number, y: number];
  readonly to: readonly [x: number, y: number];
}

type Matrix = readonly [number, number, number, number, number, number];

const times = ([a, b, c, d, e, f]: Matrix, [A, B, C, D, E, F]: Matrix): Matrix => [
  a * A + b * C,
  a * B + b * D,
  c * A + d * C,
  c * B + d * D,
  e * A + f * C + E,
  e * B + f * D + F,
];

/** Every straight piece of every path of a page, in the order written. */
export function linesOf(file: PdfFile, pageIndex: number): readonly FoundLine[] {
  const page = file.dict(file.pages[pageIndex]);
  const height = Number(file.list(page.MediaBox)[3]);
  const stack: Matrix[] = [];
  let matrix: Matrix = [1, 0, 0, 1, 0, 0];
  let at: readonly [number, number] = [0, 0];
  const found: FoundLine[] = [];
  const placed = (x: number, y: number): readonly [number, number] => {
    const [a, b, c, d, e, f] = matrix;
    return [a * x + c * y + e, height - (b * x + d * y + f)];
  };
  for (const { operator, operands } of operations(file.stream(page.Contents))) {
    const numbers = operands.map(Number);
    const [x = 0, y = 0, c = 0, d = 0, e = 0, f = 0] = numbers;
    if (operator === 'q') stack.push(matrix);
    else if (operator === 'Q') matrix = stack.pop() ?? matrix;
    else if (operator === 'cm') matrix = times([x, y, c, d, e, f], matrix);
    else if (operator === 'm') at = placed(x, y);
    else if (operator === 'l') {
      const to = placed(x, y);
      found.push({ from: at, to });
      at = to;
    }
  }
  return found;
}
