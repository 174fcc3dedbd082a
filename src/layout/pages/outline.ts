/** Bookmarks from the headings of a paper. */
import type { OutlineEntry } from '../frame';
import type { SurveyedHeading } from '../survey';

type Draft = { title: string; destination: string; children: Draft[] };

/** Headings of levels 1 to 3, each under the nearest one above it of a lower level. */
export function outlineOf(headings: readonly SurveyedHeading[]): readonly OutlineEntry[] {
  const top: Draft[] = [];
  const open: { level: number; entry: Draft }[] = [];
  for (const { block, name, title } of headings) {
    if (block.level > 3) continue;
    const entry: Draft = { title, destination: name, children: [] };
    while ((open[open.length - 1]?.level ?? 0) >= block.level) open.pop();
    const siblings = open[open.length - 1]?.entry.children ?? top;
    siblings.push(entry);
    open.push({ level: block.level, entry });
  }
  return top;
}
