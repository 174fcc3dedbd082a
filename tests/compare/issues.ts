/** The demo runabout in two issues, laid side by side. */
import { changesOf } from '../../src/compare/changes';
import { compareIssues } from '../../src/compare/compare';
import type { Change, Comparison } from '../../src/compare/comparison';
import type { Diagnostic } from '../../src/diagnostic/diagnostic';
import { worldOf } from '../../src/kettlebook';
import { carFrom, demo, goodOf, specText, workshop } from '../whole/made';

/** Words of the spec and what stands in their place in the newer issue. */
export type Edit = readonly [from: string, to: string];

/** The letter and the date of the next issue. */
export const nextIssue: readonly Edit[] = [
  ['letter: B\n  date: 2026-02-07', 'letter: C\n  date: 2026-04-11'],
];

/** The spec with some words changed; each must stand in it once. */
export function edited(text: string, edits: readonly Edit[]): string {
  return edits.reduce((now, [from, to]) => {
    const times = now.split(from).length - 1;
    if (times !== 1) throw new Error(`“${from}” stands ${times} times in the spec`);
    return now.replace(from, () => to);
  }, text);
}

/** What changed from the demo runabout to another spec of it, without its papers. */
export async function changesTo(text: string): Promise<readonly Change[]> {
  const shop = await workshop();
  const [before, after] = [await demo('thimble'), goodOf(await carFrom(text))];
  return changesOf(worldOf(before, shop), worldOf(after, shop));
}

/** What changed from the demo runabout to itself, edited, without its papers. */
export function changed(edits: readonly Edit[]): Promise<readonly Change[]> {
  return changesTo(edited(specText('thimble'), [...nextIssue, ...edits]));
}

/** Compare the demo runabout with itself, edited. */
export async function compared(
  edits: readonly Edit[],
  issue: readonly Edit[] = nextIssue,
): Promise<{ readonly comparison: Comparison; readonly remarks: readonly Diagnostic[] }> {
  const text = specText('thimble');
  const shop = await workshop();
  const [before, after] = [await demo('thimble'), goodOf(await carFrom(edited(text, [...issue, ...edits])))];
  const outcome = compareIssues(worldOf(before, shop), worldOf(after, shop), {
    before: shop.papers,
    after: shop.papers,
  });
  return { comparison: goodOf(outcome), remarks: outcome.ok ? outcome.remarks : [] };
}
