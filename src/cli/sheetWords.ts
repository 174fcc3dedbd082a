/** The size of a paper in words, for the list at the end. */
import type { Page } from '../layout/frame';
import { sheetSizes } from '../layout/sheet';

const pointsPerInch = 72;
const pointsPerMm = 72 / 25.4;

/** The name of the sheet and its measures, such as `letter, 8.5 × 11 in`. */
export function sheetWords({
  pages,
}: {
  readonly pages: readonly Pick<Page, 'widthPt' | 'heightPt'>[];
}): string {
  const [page] = pages;
  if (page === undefined) return '';
  const near = (a: number, b: number) => Math.abs(a - b) < 0.5;
  const named = sheetSizes.find(
    (size) => near(size.widthPt, page.widthPt) && near(size.heightPt, page.heightPt),
  );
  const inches = [page.widthPt, page.heightPt].map((side) => side / pointsPerInch);
  const [width = 0, height = 0] = inches;
  const wholeEighths = inches.every((side) => near(side * 8 * 9, Math.round(side * 8) * 9));
  const measures = wholeEighths
    ? `${width} × ${height} in`
    : `${Math.round(page.widthPt / pointsPerMm)} × ${Math.round(page.heightPt / pointsPerMm)} mm`;
  return named === undefined ? measures : `${named.name}, ${measures}`;
}
