/**
 * Breaking a label's line where it is too wide.
 */
import type { FontMetrics } from '../font/metrics';

/** `line` as lines no wider than `widthPt`; a single word that is wider stays whole. */
export function wrapLine(
  line: string,
  metrics: FontMetrics,
  sizePt: number,
  widthPt: number,
): readonly string[] {
  const lines: string[] = [];
  let current = '';
  for (const word of line.split(' ')) {
    const longer = current === '' ? word : `${current} ${word}`;
    if (current !== '' && metrics.widthOf(longer, sizePt) > widthPt) {
      lines.push(current);
      current = word;
    } else {
      current = longer;
    }
  }
  return [...lines, current];
}
