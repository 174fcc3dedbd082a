/** Whether the marks of the chapters stand clear of the text, and their words within them. */
import type { Diagnostic } from '../diagnostic/diagnostic';
import type { SpotOf } from './legibility';
import { pointsPerMm } from './sheet';
import type { SilentTheme } from './theme';

/** Least space between a mark and the text, in millimetres. */
const leastGapMm = 2;
/** Least width of a mark, in sizes of its type. */
const leastWidthEm = 1.2;

/** What is wrong with a theme's marks, if it shows them. The outer margin is the right one of the theme. */
export function tabProblems({ tabs, type, page }: SilentTheme, spotOf: SpotOf): Diagnostic[] {
  if (!tabs.show) return [];
  const needMm = tabs.clearMm + tabs.widthMm + leastGapMm;
  const leastMm = (leastWidthEm * type.running.size) / pointsPerMm;
  const told = (message: string, found: number, expected: string): Diagnostic => ({
    code: 'theme-tabs',
    severity: 'error',
    message,
    at: spotOf(['tabs', 'widthMm']),
    found: `${found} mm`,
    expected,
    mend: 'change the width of the marks or of the margin, or do not show them',
  });
  return [
    ...(needMm > page.marginsMm.right
      ? [
          told(
            'the marks of the chapters do not stand clear of the text',
            tabs.widthMm,
            `at most ${(page.marginsMm.right - tabs.clearMm - leastGapMm).toFixed(2)} mm in a right margin of ${page.marginsMm.right} mm`,
          ),
        ]
      : []),
    ...(tabs.widthMm < leastMm
      ? [
          told(
            'the marks of the chapters are too narrow for their words',
            tabs.widthMm,
            `at least ${leastMm.toFixed(2)} mm for type of ${type.running.size} pt`,
          ),
        ]
      : []),
  ];
}
