/**
 * Breaking a label's line where it is too wide.
 */
import type { FontMetrics } from '../font/metrics';

/**
 * `line` as lines no wider than `widthPt`. A single word that is wider stays whole, unless it is wider than
 * `mostWordPt`: then it is broken between letters, into pieces no wider than that.
 */
export function wrapLine(
  line: string,
  metrics: FontMetrics,
  sizePt: number,
  widthPt: number,
  mostWordPt = Number.POSITIVE_INFINITY,
): readonly string[] {
  const lines: string[] = [];
  let current = '';
  for (const word of line.split(' ')) {
    const longer = current === '' ? word : `${current} ${word}`;
    if (metrics.widthOf(longer, sizePt) <= widthPt) {
      current = longer;
      continue;
    }
    if (current !== '') lines.push(current);
    const pieces = brokenWord(word, metrics, sizePt, mostWordPt);
    lines.push(...pieces.slice(0, -1));
    current = pieces.at(-1) ?? '';
  }
  return [...lines, current];
}

/** The first of the lines that `wrapLine` makes where words stay whole, for whoever asks line by line: the rest is not looked at. */
export function firstLine(line: string, metrics: FontMetrics, sizePt: number, widthPt: number): string {
  let end = line.indexOf(' ');
  for (let next = end; next >= 0; end = next) {
    next = line.indexOf(' ', end + 1);
    const longer = next < 0 ? line : line.slice(0, next);
    if (metrics.widthOf(longer, sizePt) > widthPt) return line.slice(0, end);
  }
  return line;
}

/** A word in pieces no wider than `mostPt`, each of one letter at least. */
function brokenWord(word: string, metrics: FontMetrics, sizePt: number, mostPt: number): readonly string[] {
  if (metrics.widthOf(word, sizePt) <= mostPt) return [word];
  const pieces: string[] = [];
  let piece = '';
  for (const letter of word) {
    if (piece !== '' && metrics.widthOf(piece + letter, sizePt) > mostPt) {
      pieces.push(piece);
      piece = '';
    }
    piece += letter;
  }
  return [...pieces, piece];
}
