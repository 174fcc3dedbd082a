/** The column of a dipstick strip for words: the names of the lines across it, and the letters of those it is joined at. */
import type { FontSet } from '../font/metrics';
import { inks } from './carScale';
import { clearMiddle, type Stretch } from './clearPlace';
import { type DipstickInput, depthY, isOnPiece, linesAcross, stripEndsPt } from './dipstickInput';
import type { Shape } from './drawing';
import { text } from './shapes';
import { wrapLine } from './wrapLine';

const smallPt = 8;
const leadingPt = 8.5;
/** Letters go below the line they stand on by this. */
const descentPt = 1.8;

/** How far the letters of a join reach from its line. */
const joinLettersPt = 8.5;

/** Widths of the column: with every name on one row, and so that its longest word still stands whole. */
export function namesRoom(
  { levels }: Pick<DipstickInput, 'levels'>,
  fonts: FontSet,
): { readonly onOneRow: number; readonly least: number } {
  const widest = (words: readonly string[]) =>
    Math.max(0, ...words.map((each) => fonts.narrow.widthOf(each, smallPt)));
  const names = levels.map(({ words }) => words);
  return { onOneRow: widest(names), least: widest(names.flatMap((words) => words.split(' '))) };
}

/**
 * Names of the levels, each below its line where there is room, else as near as can be to it; over and under a line that pieces are joined
 * at its letter, so that it can be read on either piece.
 */
export function drawNames(
  input: DipstickInput,
  column: { readonly left: number; readonly right: number },
  fonts: FontSet,
): readonly Shape[] {
  const x = (column.left + column.right) / 2;
  const onPiece = ({ depthMm }: { readonly depthMm: number }) => isOnPiece(input, depthMm);
  const joins = input.joins
    .filter(onPiece)
    .map(({ depthMm, words }) => ({ y: depthY(input, depthMm), words }));
  const taken: Stretch[] = joins.map(({ y }) => ({ top: y - joinLettersPt, bottom: y + joinLettersPt }));
  const room = { top: stripEndsPt.head + 1, bottom: depthY(input, input.fromMm) - 1.5 };
  const up = fonts.narrow.capHeight * smallPt;
  // from the foot upwards, so that names that have to make way for each other keep the order of their lines
  const levels = input.levels.filter(onPiece).toSorted((one, other) => one.depthMm - other.depthMm);
  const names = levels.flatMap(({ depthMm, words }) => {
    const rows = wrapLine(words, fonts.narrow, smallPt, column.right - column.left + 0.01);
    const half = (up + descentPt + (rows.length - 1) * leadingPt) / 2;
    const below = depthY(input, depthMm) + half + 2;
    const middleY = clearMiddle(below, half, { lines: linesAcross(input), taken, room });
    taken.push({ top: middleY - half, bottom: middleY + half });
    return rows.map((row, index) =>
      text({ x, y: middleY - half + up + index * leadingPt }, row, {
        face: 'narrow',
        sizePt: smallPt,
        colour: inks.line,
        anchor: 'middle',
      }),
    );
  });
  const look = { face: 'narrow-bold', sizePt: smallPt, colour: inks.line, anchor: 'middle' } as const;
  const letters = joins.flatMap(({ y, words }) => [
    text({ x, y: y - 2.5 }, words, look),
    text({ x, y: y + 2.5 + fonts['narrow-bold'].capHeight * smallPt }, words, look),
  ]);
  return [...letters, ...names];
}
