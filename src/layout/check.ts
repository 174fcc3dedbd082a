/**
 * Checks a finished paper against the blocks it was made from: nothing lost, nothing out of place, nothing too small.
 *
 * It shares as little as it can with the layout it checks. A paper with a problem found here must not be printed.
 */
import type { Diagnostic } from '../diagnostic/diagnostic';
import type { Face, FontSet } from '../font/metrics';
import type { Block } from '../markup/block';
import { expectedWords, type WordFacts } from './check/expected';
import { foundWords } from './check/found';
import { outside, overlaps } from './check/geometry';
import { cautionsParted, headingsLast, headsNotRepeated, wordsLost } from './check/keeping';
import { withoutSaidAbove } from './check/said-above';
import type { LaidOut, OutlineEntry } from './frame';
import { Problems } from './problems';
import { survey } from './survey';
import type { Theme } from './theme';

/** What a paper was laid out with. */
export interface CheckOptions {
  readonly fonts: FontSet;
  readonly theme: Theme;
  /** Smallest legible size of each face, in points; running heads and feet are not held to it. */
  readonly leastPt: Readonly<Record<Face, number>>;
}

/** Everything wrong with a finished paper; empty if nothing is. */
export function checkLaidOut(
  blocks: readonly Block[],
  laidOut: LaidOut,
  options: CheckOptions,
): Diagnostic[] {
  const { headings, ids } = survey(blocks, new Problems());
  const pages = new Map(laidOut.destinations.map(({ name, page }) => [name, page]));
  const labelOf = (name: string) => String((pages.get(name) ?? -1) + 1);
  const facts: WordFacts = { headings, theme: options.theme, labelOf };
  const found = foundWords(laidOut);
  const { expected, saidAbove } = withoutSaidAbove(expectedWords(blocks, facts), found);
  const lost = wordsLost(expected, found);
  const kept = [
    ...headingsLast(blocks, expected, found, facts),
    ...cautionsParted(expected, found, saidAbove),
    ...headsNotRepeated(expected, found, laidOut, facts),
  ];
  return [
    ...lost,
    ...(lost.length === 0 ? kept : []),
    ...outside(laidOut, options.fonts),
    ...overlaps(laidOut, options.fonts),
    ...tooSmall(laidOut, options.leastPt),
    ...leadingNowhere(laidOut, ids),
  ];
}

function tooSmall(laidOut: LaidOut, leastPt: CheckOptions['leastPt']): Diagnostic[] {
  return laidOut.pages.flatMap((page): Diagnostic[] => {
    const small = page.items.find(
      (item) => item.kind === 'text' && item.tag !== undefined && item.sizePt < leastPt[item.face] - 0.001,
    );
    if (small?.kind !== 'text') return [];
    return [
      {
        code: 'check-type-too-small',
        severity: 'error',
        message: `type on page ${page.label} is smaller than the smallest legible size`,
        found: `\`${small.text.trim()}\` at ${small.sizePt.toFixed(2)} pt`,
        expected: `at least ${leastPt[small.face].toFixed(2)} pt in the face ${small.face}`,
        mend: 'use a larger sheet, or allow more faces',
      },
    ];
  });
}

/** Links, bookmarks and ids that have no place on any page. */
function leadingNowhere(laidOut: LaidOut, ids: ReadonlySet<string>): Diagnostic[] {
  const places = new Set(laidOut.destinations.map(({ name }) => name));
  const links = laidOut.pages.flatMap(({ items }) =>
    items.flatMap((item) => (item.kind === 'link' ? [item.target] : [])),
  );
  const wanted = new Set([...ids, ...links, ...outlineTargets(laidOut.outline)]);
  return [...wanted]
    .filter((name) => !places.has(name))
    .map((name) => ({
      code: 'check-no-destination',
      severity: 'error',
      message: `\`${name}\` has no place on any page`,
      found: name,
      mend: 'give the thing meant this id, or take the link out',
    }));
}

function outlineTargets(entries: readonly OutlineEntry[]): string[] {
  return entries.flatMap(({ destination, children }) => [destination, ...outlineTargets(children)]);
}
