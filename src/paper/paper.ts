/** What a paper is, and the way from its content to pages. */

import type { CarFigures } from '../calc/figures/carFigures';
import type { Liquids } from '../calc/fuel/liquids';
import type { Car } from '../car/car';
import { bad, type Diagnostic, good, type Outcome } from '../diagnostic/diagnostic';
import type { Drawing } from '../drawing/drawing';
import type { Face, FontSet } from '../font/metrics';
import type { ScreenLook } from '../html/look';
import type { Language } from '../language/language';
import type { Words } from '../language/languageForm';
import type { LaidOut, Page } from '../layout/frame';
import type { Turning } from '../layout/impose';
import type { Theme } from '../layout/theme';
import type { FlowOptions } from '../layout/types';
import { withApostrophes } from '../markup/apostrophes';
import type { Block } from '../markup/block';
import { parseMarkup } from '../markup/parse';
import { withUnitOnce } from '../markup/spans';
import type { Templates } from '../markup/template/compile';
import type { FrontMatter } from '../procedure/frontMatter';
import type { Library } from '../procedure/library';
import type { GlossaryEntry, SignsAndCauses } from '../procedure/reference';
import type { ShownProof } from '../proof/shown';
import { fillTemplate, unsaidIn } from './fill';
import type { Guide } from './guide/guide';
import type { Partner } from './inTwo';
import { leftOut } from './kept';
import type { Phrases } from './phrase';
import type { Plans } from './plans';
import type { Signs } from './signs';
import type { Since } from './since';
import { lackingTexts } from './whole';

/** What is known of a car and what all cars share before its figures are worked out. */
export interface ProvenWorld {
  readonly car: Car;
  readonly proof: ShownProof;
  readonly front: FrontMatter;
  readonly language: Language;
  readonly library: Library;
  readonly liquids: Liquids;
  readonly plans: Plans;
  readonly words: Words;
  readonly glossary: readonly GlossaryEntry[];
  readonly faults: readonly SignsAndCauses[];
  readonly phrases: Phrases;
  /** Safety signs by their numbers, with what they say in the language of the papers. */
  readonly signs: ReadonlyMap<string, Drawing>;
  /** What each sign means. */
  readonly signWords: Signs;
  /** Pictures of the keeper’s own, which every template may show. */
  readonly pictures: readonly Drawing[];
  readonly theme: Theme;
  readonly screen: ScreenLook;
  readonly fonts: FontSet;
  readonly fontFiles: Readonly<Record<Face, Uint8Array>>;
  readonly templates: Templates;
  /** Text of every template, for the fingerprint. */
  readonly templateText: string;
}

/** Everything a paper can be made from. */
export interface World extends ProvenWorld {
  readonly guide: Guide;
  readonly figures: CarFigures;
  /** What the issue before was made from, if papers are to mark what reads otherwise. */
  readonly earlier?: World;
  /** What changed since the issue before, told in the paper itself. */
  readonly since?: Since;
}

/** One paper that can be made for a car. */
export interface Paper {
  /** Its name on the command line and of its file, such as `owners-manual`. */
  readonly name: string;
  readonly title: string;
  /** What it is for, in a few words. */
  readonly what: string;
  readonly template: string;
  /** A museum or a club made it up: it is said in whatever language its template is written in. */
  readonly own?: boolean;
  /** It marks what reads otherwise than in the issue before. */
  readonly marksChanges?: boolean;
  /** It is printed light on dark, which takes much ink. */
  readonly lightOnDark?: boolean;
  /** What the template is filled in with, less the fingerprint. Plain data. */
  context(world: World): Readonly<Record<string, unknown>>;
  /** What the template may show. */
  drawings(world: World): readonly Drawing[];
  /** The same of what is cut out, and must carry the fingerprint, `mark`; left out where there is nothing of the kind. */
  cutOut?(world: World, mark: string): readonly Drawing[];
  /** What makes it impossible to draw, such as a name too long for what it goes on; left out if nothing can. */
  problems?(world: World): readonly Diagnostic[];
  /** Smallest legible size of each face where the paper is read, in points. */
  leastPt(world: World): Readonly<Record<Face, number>>;
  /** The same of what is looked up with it in the hand; left out where the whole paper is read so. */
  lookUpPt?(world: World): Readonly<Record<Face, number>>;
  /**
   * The edge its sheets are turned on, where it is to be printed on both sides; `none` where nothing may stand on their
   * backs. Undefined, that is the printer's choice. A paper that leaves it out is one of faces: two of them that fill
   * sheets of the printer are front and back.
   */
  turning?(world: World): Turning | 'none' | undefined;
  /** How the chapters of a book flow over its pages; left out by what is no book. */
  flow?(world: ProvenWorld, fingerprint: string): Outcome<FlowOptions>;
  /** Lay the blocks out. */
  layOut(blocks: readonly Block[], world: World, fingerprint: string): Outcome<LaidOut>;
}

/** What is known of a paper as soon as it has been filled in. */
export interface PaperFacts {
  readonly name: string;
  readonly title: string;
  readonly fileName: string;
  readonly fingerprint: string;
  readonly lightOnDark: boolean;
  readonly blocks: readonly Block[];
}

/** A finished paper. */
export interface MadePaper extends PaperFacts {
  readonly bytes: Uint8Array;
  /** The same as one page for a screen; left out if somebody else writes it. */
  readonly screen?: { readonly fileName: string; readonly bytes: Uint8Array };
  /** The same put together on the paper in the printer, if that holds more than one page of it: a card. */
  readonly sheets?: PrintedSheets;
  /** The edge its sheets are turned on, where it is to be printed on both sides. */
  readonly turning?: Turning | 'none';
  /** Every page of it, with its measures. */
  readonly pages: readonly Pick<Page, 'widthPt' | 'heightPt'>[];
  /** The same as they were laid out; undefined if that was done in two places. */
  readonly laidOut: LaidOut | undefined;
  readonly remarks: readonly Diagnostic[];
}

/** Cards several to a sheet, ready to be printed on both sides and cut. */
export interface PrintedSheets {
  readonly fileName: string;
  readonly bytes: Uint8Array;
  readonly laidOut: LaidOut;
  /** The edge the sheets are turned on between their sides. */
  readonly turning: Turning;
}

/** A paper up to its pages, before it is written as PDF. */
export interface SetPaper extends PaperFacts {
  readonly laidOut: LaidOut;
  readonly remarks: readonly Diagnostic[];
}

/** A paper filled in and read, before it is laid out. */
export interface FilledPaper {
  readonly fingerprint: string;
  readonly blocks: readonly Block[];
}

/** Fill in the template of a paper and read its blocks. `printed` stands in place of the fingerprint, for comparing content. */
export function fillPaper(paper: Paper, world: World, printed?: string): Outcome<FilledPaper> {
  const filled = fillTemplate(paper, world, printed);
  if (!filled.ok) return filled;
  const { context, fingerprint: mark, html, origins, drawn } = filled.value;
  const lacking = lackingTexts(paper, world.language, unsaidIn(paper, world, filled.value));
  if (lacking.length > 0) return bad(lacking);
  const drawings = new Map(drawn.map((drawing) => [drawing.name, asPrinted(drawing)]));
  const blocks = parseMarkup(html, paper.template, { drawings, signs: world.signs, origins });
  if (!blocks.ok) return blocks;
  const gone = leftOut(context, blocks.value, paper.template);
  if (gone.length > 0) return bad(gone);
  return good({ fingerprint: mark, blocks: blocks.value }, [...filled.remarks, ...blocks.remarks]);
}

/** A drawing with its words as they are printed. */
function asPrinted({ alt, shapes, ...frame }: Drawing): Drawing {
  return {
    ...frame,
    alt: withUnitOnce(withApostrophes(alt)),
    shapes: shapes.map((shape) =>
      shape.kind === 'text' ? { ...shape, text: withUnitOnce(withApostrophes(shape.text)) } : shape,
    ),
  };
}

/** A way to fill in and read a paper. */
export type Fill = (paper: Paper, world: World) => Outcome<FilledPaper>;

/** What the page for a screen is written from. Plain data, so that one thread can hand it to another. */
export interface ScreenDraft extends FilledPaper {
  readonly name: string;
  readonly title: string;
  readonly lightOnDark: boolean;
}

/** Takes the draft of a page for a screen away, to have it written elsewhere; nothing if it does not. */
export type TakeDraft = (draft: ScreenDraft) => Help | undefined;

/** The help of whoever has taken a draft. */
export interface Help {
  /** It may make part of the pages too. */
  readonly partner?: Partner;
}

/** Fill in, read and lay out a paper. */
export function setPaper(paper: Paper, world: World, fill: Fill = fillPaper): Outcome<SetPaper> {
  const filled = fill(paper, world);
  if (!filled.ok) return filled;
  const { blocks, fingerprint: mark } = filled.value;
  const laidOut = paper.layOut(blocks, world, mark);
  if (!laidOut.ok) return inPaper(paper, laidOut.problems);
  const remarks = [...filled.remarks, ...laidOut.remarks];
  return good({ ...factsOf(paper, filled.value), laidOut: laidOut.value, remarks }, remarks);
}

/** What is known of a paper that has been filled in. */
export function factsOf(
  { name, title, lightOnDark = false }: Paper,
  { fingerprint: mark, blocks }: FilledPaper,
): PaperFacts {
  return { name, title, fileName: `${name}.pdf`, lightOnDark, fingerprint: mark, blocks };
}

/** What is wrong with the pages of a paper, with its name. */
export function inPaper({ name }: Paper, problems: readonly Diagnostic[]): Outcome<never> {
  return bad(
    problems.map((problem) => ({
      ...problem,
      notes: [...(problem.notes ?? []), `This is in the paper \`${name}\`.`],
    })),
  );
}
