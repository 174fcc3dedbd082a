/** How wide a text is at least (no word broken) and at most (no line broken). */
import type { FontSet } from '../../font/metrics';
import { breakOffsets } from './opportunities';
import { plainExtent, tokensOf } from './plain';
import { type Cut, isPlain, type Token } from './tokens';

/** Least and natural width in points. */
export interface Extent {
  readonly minPt: number;
  readonly maxPt: number;
}

/** Measures text set at `sizePt`. */
export function extentOf(cut: Cut, sizePt: number, fonts: FontSet): Extent {
  if (!isPlain(cut)) return extentOfTokens(cut, sizePt, fonts);
  return plainExtent(cut) ?? extentOfTokens(tokensOf(cut), sizePt, fonts);
}

/** Natural widths of the lines between forced line ends, of text set at the size it was cut for. */
export function forcedLinesPt(cut: Cut): readonly number[] {
  if (isPlain(cut)) return [];
  const lines: number[] = [];
  let linePt = 0;
  for (const { widthPt, spacesPt, end } of cut) {
    linePt += widthPt;
    if (end === 'must-break') {
      lines.push(linePt);
      linePt = 0;
    } else linePt += spacesPt;
  }
  return [...lines, linePt];
}

function extentOfTokens(tokens: readonly Token[], sizePt: number, fonts: FontSet): Extent {
  let minPt = 0;
  let maxPt = 0;
  let linePt = 0;
  let wordPt = 0;
  for (const token of tokens) {
    const parts = partWidths(token, sizePt, fonts);
    parts.forEach((part, index) => {
      wordPt = index === 0 ? wordPt + part : part;
      minPt = Math.max(minPt, wordPt);
    });
    maxPt = Math.max(maxPt, linePt + token.widthPt);
    linePt += token.widthPt + token.spacesPt;
    if (token.end !== 'joined') wordPt = 0;
    if (token.end === 'must-break') linePt = 0;
  }
  return { minPt, maxPt };
}

/** Widths of the parts that a token can be broken into. */
function partWidths(token: Token, sizePt: number, fonts: FontSet): readonly number[] {
  const offsets = breakOffsets(token.text);
  if (offsets.length === 0) return [token.widthPt];
  const ends = [...offsets, token.text.length];
  return ends.map((end, index) =>
    fonts[token.face].widthOf(token.text.slice(ends[index - 1] ?? 0, end), sizePt),
  );
}
