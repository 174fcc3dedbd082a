/**
 * Callouts as plan and side view have them: a numbered circle, what is there beside it, a leader to the point.
 */
import type { FontSet } from '../font/metrics';
import type { Callout } from './callouts';
import { inks } from './carScale';
import type { Shape } from './drawing';
import { circle, polyline, stroke, text } from './shapes';

/** Type of the labels. */
export const calloutSizePt = 9;
/** From baseline to baseline. */
export const calloutLeadingPt = 10.5;
const balloon = { r: 6.75, sizePt: 8.5 };
/** From a label's edge to its words: the circle and a space. */
export const calloutIndentPt = 2 * balloon.r + 4;

/** The leader and the dot at its end. */
export function leaderShapes({ leader, anchor }: Callout): readonly Shape[] {
  return [
    polyline(leader, stroke(2.2, inks.paper)),
    polyline(leader, stroke(0.5, inks.line)),
    circle(anchor, 2.3, { fill: inks.line, stroke: stroke(0.8, inks.paper) }),
  ];
}

/** The label; `numbers` are those of the points, in the order in which they were placed. A line joins those of one leader. */
export function labelShapes(callout: Callout, numbers: readonly number[]): readonly Shape[] {
  const out = callout.side === 'left' ? -1 : 1;
  const lines = callout.lines.flatMap((line, index): readonly Shape[] => {
    const middle = callout.top + calloutLeadingPt * (index + 0.5);
    const words = text(
      { x: callout.x + out * calloutIndentPt, y: middle + calloutSizePt * 0.34 },
      line.text,
      {
        face: line.face,
        sizePt: calloutSizePt,
        colour: inks.line,
        anchor: out < 0 ? 'end' : 'start',
      },
    );
    if (line.given > 0 || !line.first) return [words];
    const centre = { x: callout.x + out * balloon.r, y: middle };
    const number = text(
      { x: centre.x, y: centre.y + balloon.sizePt * 0.35 },
      String(numbers[line.member] ?? ''),
      {
        face: 'narrow-bold',
        sizePt: balloon.sizePt,
        colour: inks.line,
        anchor: 'middle',
      },
    );
    return [circle(centre, balloon.r, { fill: inks.paper, stroke: stroke(0.75, inks.line) }), number, words];
  });
  return [...joined(callout, callout.x + out * balloon.r), ...lines];
}

/** Down through the circles of a label that names several points, which have one leader. */
function joined({ lines, top }: Callout, x: number): readonly Shape[] {
  const middles = lines.flatMap(({ given, first }, index) =>
    given === 0 && first ? [top + calloutLeadingPt * (index + 0.5)] : [],
  );
  if (middles.length < 2) return [];
  const ends = [Math.min(...middles), Math.max(...middles)].map((y) => ({ x, y }));
  return [polyline(ends, stroke(1.2, inks.line))];
}

/** How the labels are placed. */
export function calloutStyle(fonts: FontSet) {
  return { fonts, sizePt: calloutSizePt, leadingPt: calloutLeadingPt, gapPt: 3.5, sharePt: 1.5 } as const;
}
