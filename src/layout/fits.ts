/**
 * The one comparison of lengths in layout. Sums of fractional heights differ in their last digits, so a
 * block that fills a page exactly must still count as fitting.
 */

/** Slack in points; far below what can be seen or printed. */
export const tolerancePt = 0.001;

/** True if something `needPt` long stands within `roomPt`. */
export function fits(needPt: number, roomPt: number): boolean {
  return needPt <= roomPt + tolerancePt;
}
