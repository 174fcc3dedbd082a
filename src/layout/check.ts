/**
 * Checks a finished paper against the blocks it was made from: nothing lost, nothing out of place, nothing too small.
 *
 * It shares as little as it can with the layout it checks. A paper with a problem found here must not be printed.
 */
import type { Diagnostic } from '../diagnostic/diagnostic';
import type { Face, FontSet } from '../font/metrics';
import type { Block } from '../markup/block';
import { forMarks, waitsForMarks } from './card/marks-told';
import { type ExpectedWord, expectedWords, type WordFacts } from './check/expected';
import { type FoundWord, foundWords } from './check/found';
import { outside, overlaps } from './check/geometry';
import { cautionsParted, headingsLast, headsNotRepeated, wordsLost } from './check/keeping';
import { withoutSaidAbove } from './check/said-above';
import type { LaidOut, OutlineEntry, PlacedText } from './frame';
import { Problems } from './problems';
import { survey } from './survey';
import type { Theme } from './theme';

/** What a paper was laid out with. */
export interface CheckOptions {
  readonly fonts: FontSet;
  readonly theme: Theme;
  /** Smallest legible size of each face, in points; running heads and feet are not held to it. */
  readonly leastPt: Readonly<Record<Face, number>>;
  /** The same of what is looked up with the card in the hand; left out where nothing is read from nearer than the rest. */
  readonly lookUpPt?: Readonly<Record<Face, number>> | undefined;
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
  const { expected, saidAbove } = asPrinted(blocks, found, facts);
  const lost = wordsLost(expected, found);
  const kept = [
    ...headingsLast(blocks, expected, found, facts),
    ...cautionsParted(expected, found, saidAbove),
    ...headsNotRepeated(expected, found, laidOut, facts),
    ...readTooSmall(expected, found, options.leastPt),
  ];
  return [
    ...lost,
    ...(lost.length === 0 ? kept : []),
    ...outside(laidOut, options.fonts),
    ...overlaps(laidOut, options.fonts),
    ...tooSmall(laidOut, options.lookUpPt ?? options.leastPt),
    ...leadingNowhere(laidOut, ids),
  ];
}

/**
 * The words that are to be found, with the paragraphs for the marks of cautions said above or those for none: the latter only where no
 * caution is said above.
 */
function asPrinted(blocks: readonly Block[], found: readonly FoundWord[], facts: WordFacts) {
  const told = withoutSaidAbove(expectedWords(forMarks(blocks, 'some'), facts), found);
  if (!waitsForMarks(blocks) || wordsLost(told.expected, found).length === 0) return told;
  const untold = withoutSaidAbove(expectedWords(forMarks(blocks, 'none'), facts), found);
  return untold.saidAbove.length === 0 ? untold : told;
}

function tooSmall(laidOut: LaidOut, leastPt: CheckOptions['leastPt']): Diagnostic[] {
  return laidOut.pages.flatMap((page): Diagnostic[] => {
    const small = page.items.find(
      (item) => item.kind === 'text' && item.tag !== undefined && item.sizePt < leastPt[item.face] - 0.001,
    );
    return small?.kind === 'text' ? [smallType(page.label, small, leastPt)] : [];
  });
}

/** The first word in type that only what is looked up may stand in, though it is read from further away. */
function readTooSmall(
  expected: readonly ExpectedWord[],
  found: readonly FoundWord[],
  leastPt: CheckOptions['leastPt'],
): Diagnostic[] {
  const at = found.findIndex(
    ({ face, sizePt }, index) => expected[index]?.lookUp !== true && sizePt < leastPt[face] - 0.001,
  );
  const word = found[at];
  return word === undefined ? [] : [smallType(String(word.page + 1), { ...word, text: word.word }, leastPt)];
}

function smallType(
  page: string,
  { text, face, sizePt }: Pick<PlacedText, 'text' | 'face' | 'sizePt'>,
  leastPt: CheckOptions['leastPt'],
): Diagnostic {
  return {
    code: 'check-type-too-small',
    severity: 'error',
    message: `type on page ${page} is smaller than the smallest legible size`,
    found: `\`${text.trim()}\` at ${sizePt.toFixed(2)} pt`,
    expected: `at least ${leastPt[face].toFixed(2)} pt in the face ${face}`,
    mend: 'use a larger sheet, or allow more faces',
  };
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
