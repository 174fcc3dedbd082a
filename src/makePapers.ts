/** From a car that papers may be made for to papers. */
import { fillSince } from './compare/fillSince';
import { bad, type Diagnostic, good, hasErrors, type Outcome } from './diagnostic/diagnostic';
import { lookInWords } from './html/look';
import type { PartFound } from './layout/flow/together';
import { themeInWords } from './layout/theme';
import { fillTemplate, unsaidIn } from './paper/fill';
import { type WrittenPart, writeSecondPart } from './paper/inTwo';
import { makePaper, screenFile } from './paper/make';
import {
  type MadePaper,
  type Paper,
  type ProvenWorld,
  type ScreenDraft,
  type SetPaper,
  setPaper,
  type TakeDraft,
  type World,
} from './paper/paper';
import { phrasesFor } from './paper/phrase';
import { drawnSigns } from './paper/signs';
import type { ProvenCar, ReadyCar } from './readCar';
import type { Workshop } from './workshop';

/** The issue of a car before the one that papers are made for, as it was read. */
export interface EarlierIssue {
  readonly ready: ReadyCar;
  readonly workshop: Workshop;
}

/** Make papers one after the other; `each` is called with every finished one, so that no more than one is held. */
export async function makePapers(
  ready: ReadyCar,
  papers: Iterable<Paper>,
  workshop: Workshop,
  each: (paper: MadePaper) => Promise<void> | void,
  earlier?: EarlierIssue,
): Promise<Outcome<readonly MadePaper['name'][]>> {
  const problems: Diagnostic[] = [];
  const made: string[] = [];
  for await (const [paper, outcome] of oneByOne(ready, papers, workshop, earlier)) {
    problems.push(...(outcome.ok ? outcome.remarks : outcome.problems));
    if (!outcome.ok) continue;
    made.push(paper.name);
    await each(outcome.value);
  }
  return hasErrors(problems) ? bad(problems) : good(made, problems);
}

/**
 * Make papers one after the other, each when it is asked for, good or not. The page for a screen of a paper is left out where
 * `take` has taken its draft, to have it written elsewhere.
 */
export async function* oneByOne(
  ready: ReadyCar,
  papers: Iterable<Paper>,
  workshop: Workshop,
  earlier?: EarlierIssue,
  take?: TakeDraft,
): AsyncGenerator<readonly [Paper, Outcome<MadePaper>]> {
  const world = worldOf(ready, workshop, earlier);
  for (const paper of papers) yield [paper, await makePaper(paper, world, fillSince, take)];
}

/** The page for a screen of a paper that is made elsewhere, from its draft. */
export function writeScreen(
  draft: ScreenDraft,
  proven: ProvenCar,
  workshop: Workshop,
): ReturnType<typeof screenFile> {
  return screenFile(draft, provenWorldOf(proven, workshop));
}

/**
 * The second part of a book whose first is made elsewhere, from its draft. Yields what each round found and is given what the other
 * found in the same; ends with the part, or with nothing if the other makes all of it.
 */
export function* secondPart(
  draft: ScreenDraft,
  proven: ProvenCar,
  workshop: Workshop,
): Generator<PartFound, WrittenPart | undefined, PartFound> {
  const world = provenWorldOf(proven, workshop);
  const paper = proven.papers.find(({ name }) => name === draft.name);
  const flow = paper?.flow?.(world, draft.fingerprint);
  if (flow?.ok !== true) throw new Error(`\`${draft.name}\` is no book`);
  return yield* writeSecondPart(draft.blocks, flow.value, world.fontFiles);
}

/** What the language of a car’s papers does not say of each of these papers: texts of the library, in English. */
export function unsaidOf(
  ready: ReadyCar,
  papers: readonly Paper[],
  workshop: Workshop,
): Outcome<readonly UnsaidPaper[]> {
  const world = worldOf(ready, workshop);
  const unsaid: UnsaidPaper[] = [];
  for (const paper of papers) {
    const filled = fillTemplate(paper, world);
    if (!filled.ok) return filled;
    unsaid.push({ paper, texts: unsaidIn(paper, world, filled.value) });
  }
  return good(unsaid);
}

/** A paper with the texts of the library that it would print and its language does not say. */
export interface UnsaidPaper {
  readonly paper: Paper;
  readonly texts: readonly string[];
}

/** A paper up to its pages, for checks and for looking at. */
export function setOnePaper(
  ready: ReadyCar,
  paper: Paper,
  workshop: Workshop,
  earlier?: EarlierIssue,
): Outcome<SetPaper> {
  return setPaper(paper, worldOf(ready, workshop, earlier), fillSince);
}

/** Everything the papers of a car are made from. */
export function worldOf(ready: ReadyCar, workshop: Workshop, earlier?: EarlierIssue): World {
  return {
    ...provenWorldOf(ready, workshop),
    figures: ready.figures,
    guide: ready.guide,
    ...(earlier === undefined ? {} : { earlier: worldOf(earlier.ready, earlier.workshop) }),
  };
}

/** The same of a car whose figures are not worked out yet. */
function provenWorldOf(proven: ProvenCar, workshop: Workshop): ProvenWorld {
  const { car, language } = proven;
  return {
    ...workshop,
    ...proven,
    theme: themeInWords(workshop.theme, language.furniture),
    screen: lookInWords(workshop.screen, language.furniture),
    phrases: phrasesFor(car.spec, language),
    signs: drawnSigns(workshop.signWords, language),
  };
}
