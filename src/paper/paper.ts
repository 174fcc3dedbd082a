/** What a paper is, and the one way from its content to bytes. */

import type { CarFigures } from '../calc/figures/carFigures';
import type { Liquids } from '../calc/fuel/liquids';
import type { Car } from '../car/car';
import { bad, type Diagnostic, good, type Outcome } from '../diagnostic/diagnostic';
import type { Drawing } from '../drawing/drawing';
import type { Face, FontSet } from '../font/metrics';
import type { ScreenLook } from '../html/look';
import { writeScreenPage } from '../html/page';
import type { Language } from '../language/language';
import type { Words } from '../language/languageForm';
import type { LaidOut } from '../layout/frame';
import { bookwise, type Turning } from '../layout/impose';
import type { Theme } from '../layout/theme';
import type { Block } from '../markup/block';
import { parseMarkup } from '../markup/parse';
import type { Templates } from '../markup/template/compile';
import { writePdf } from '../pdf/write';
import type { FrontMatter } from '../procedure/frontMatter';
import type { Library } from '../procedure/library';
import type { Procedures } from '../procedure/procedure';
import type { GlossaryEntry, SignsAndCauses } from '../procedure/reference';
import type { ShownProof } from '../proof/shown';
import { fillTemplate, unsaidIn } from './fill';
import type { Guide } from './guide/guide';
import { leftOut } from './kept';
import type { Phrases } from './phrase';
import type { Plans } from './plans';
import { onSheets } from './sheets';
import type { Signs } from './signs';
import type { Since } from './since';
import { lackingTexts } from './whole';

const utf8 = new TextEncoder();

/** Everything a paper can be made from. */
export interface World {
  readonly car: Car;
  readonly procedures: Procedures;
  readonly proof: ShownProof;
  readonly front: FrontMatter;
  readonly guide: Guide;
  readonly language: Language;
  readonly figures: CarFigures;
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
  /** Lay the blocks out. */
  layOut(blocks: readonly Block[], world: World, fingerprint: string): Outcome<LaidOut>;
}

/** A finished paper. */
export interface MadePaper {
  readonly name: string;
  readonly title: string;
  readonly fileName: string;
  readonly fingerprint: string;
  readonly bytes: Uint8Array;
  /** The same as one page for a screen; left out if somebody else writes it. */
  readonly screen?: { readonly fileName: string; readonly bytes: Uint8Array };
  /** The same put together on the paper in the printer, if that holds more than one page of it: a card. */
  readonly sheets?: PrintedSheets;
  /** The edge its sheets are turned on, where it is to be printed on both sides. */
  readonly turning?: Turning | 'none';
  /** It is printed light on dark, which takes much ink. */
  readonly lightOnDark: boolean;
  readonly laidOut: LaidOut;
  readonly blocks: readonly Block[];
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
export type SetPaper = Omit<MadePaper, 'bytes' | 'sheets' | 'screen' | 'turning'>;

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
  const drawings = new Map(drawn.map((drawing) => [drawing.name, drawing]));
  const blocks = parseMarkup(html, paper.template, { drawings, signs: world.signs, origins });
  if (!blocks.ok) return blocks;
  const gone = leftOut(context, blocks.value, paper.template);
  if (gone.length > 0) return bad(gone);
  return good({ fingerprint: mark, blocks: blocks.value }, [...filled.remarks, ...blocks.remarks]);
}

/** A way to fill in and read a paper. */
export type Fill = (paper: Paper, world: World) => Outcome<FilledPaper>;

/** What the page for a screen is written from. Plain data, so that one thread can hand it to another. */
export interface ScreenDraft extends FilledPaper {
  readonly name: string;
  readonly title: string;
  readonly lightOnDark: boolean;
}

/** Takes the draft of a page for a screen away, to have it written elsewhere; false if it does not. */
export type TakeDraft = (draft: ScreenDraft) => boolean;

/** Fill in, read and lay out a paper. */
export function setPaper(paper: Paper, world: World, fill: Fill = fillPaper): Outcome<SetPaper> {
  const filled = fill(paper, world);
  return filled.ok ? layOutFilled(paper, world, filled.value, filled.remarks) : filled;
}

function layOutFilled(
  paper: Paper,
  world: World,
  { fingerprint: mark, blocks }: FilledPaper,
  before: readonly Diagnostic[],
): Outcome<SetPaper> {
  const laidOut = paper.layOut(blocks, world, mark);
  if (!laidOut.ok) return bad(laidOut.problems.map((problem) => inPaper(problem, paper)));
  const remarks = [...before, ...laidOut.remarks];
  return good(
    {
      name: paper.name,
      title: paper.title,
      fileName: `${paper.name}.pdf`,
      lightOnDark: paper.lightOnDark ?? false,
      fingerprint: mark,
      laidOut: laidOut.value,
      blocks,
      remarks,
    },
    remarks,
  );
}

/** Make a paper: pages, their PDF, and the page for a screen unless `take` has it written elsewhere. */
export async function makePaper(
  paper: Paper,
  world: World,
  fill: Fill = fillPaper,
  take: TakeDraft = () => false,
): Promise<Outcome<MadePaper>> {
  const filled = fill(paper, world);
  if (!filled.ok) return filled;
  const { name, title, lightOnDark = false } = paper;
  const draft: ScreenDraft = { ...filled.value, name, title, lightOnDark };
  // offered before the pages are laid out, so that both go on at once
  const isTaken = take(draft);
  const set = layOutFilled(paper, world, filled.value, filled.remarks);
  if (!set.ok) return set;
  const { spec } = world.car;
  const { laidOut, fingerprint: mark } = set.value;
  const facts = {
    title: `${spec.car.name}: ${paper.title}`,
    language: spec.print.language,
    author: spec.keeper.name,
    subject: world.language.messages.say('subject', {
      title: paper.title,
      letter: spec.issue.letter,
      date: spec.issue.date,
      mark,
    }),
    creationDate: new Date(`${spec.issue.date}T00:00:00Z`),
    fontFiles: world.fontFiles,
  };
  const together = onSheets(laidOut, world);
  const faces = together === undefined ? facesTurn(laidOut) : undefined;
  const edge = paper.turning === undefined ? faces : paper.turning(world);
  const bytes = await writePdf(laidOut, edge === undefined ? facts : { ...facts, duplex: edge });
  const made = {
    ...set.value,
    bytes,
    ...(edge === undefined ? {} : { turning: edge }),
    ...(isTaken ? {} : { screen: screenFile(draft, world) }),
  };
  const [side] = together?.pages ?? [];
  if (together === undefined || side === undefined) return good(made, set.remarks);
  const turning = bookwise(side);
  const sheets = {
    fileName: `${paper.name}-sheets.pdf`,
    bytes: await writePdf(together, { ...facts, duplex: turning }),
    laidOut: together,
    turning,
  };
  return good({ ...made, sheets }, set.remarks);
}

/** The edge on which a sheet is turned that has a face on each side; nothing for a single face. */
function facesTurn({ pages: [front, back] }: LaidOut): Turning | undefined {
  return front === undefined || back === undefined ? undefined : bookwise(front);
}

/** The same blocks as a page for a screen. */
export function screenFile(
  { name, title, fingerprint: mark, blocks, lightOnDark }: ScreenDraft,
  { car, screen, fonts }: Pick<World, 'car' | 'screen' | 'fonts'>,
): { readonly fileName: string; readonly bytes: Uint8Array } {
  const page = writeScreenPage(blocks, {
    title,
    language: car.spec.print.language,
    car: car.spec.car.name,
    issue: car.spec.issue.letter,
    date: car.spec.issue.date,
    fingerprint: mark,
    invented: car.spec.car.invented ?? false,
    look: screen,
    fonts,
    dark: lightOnDark,
  });
  return { fileName: `${name}.html`, bytes: utf8.encode(page) };
}

function inPaper(problem: Diagnostic, paper: Paper): Diagnostic {
  return { ...problem, notes: [...(problem.notes ?? []), `This is in the paper \`${paper.name}\`.`] };
}
