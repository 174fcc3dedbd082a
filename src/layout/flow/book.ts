/**
 * A paper that flows over pages, laid out chapter by chapter, in rounds: text may name page numbers, which are known only once the
 * pages are filled. All of it, or some of its chapters, if the others are laid out elsewhere: chapters that begin on new pages need of
 * each other nothing but page numbers.
 */
import type { Diagnostic } from '../../diagnostic/diagnostic';
import type { Block } from '../../markup/block';
import { collectBlocks } from '../blocks/collect';
import { Reuse } from '../blocks/reuse';
import type { Destination, OutlineEntry, Page, StructureElement } from '../frame';
import { RememberedWords } from '../inline/plain';
import { Labels } from '../labels';
import type { Look } from '../look';
import { anyChange, changesOn, type PageChanges, refuseNarrowMargin } from '../pages/change-bars';
import { paginateChapters } from '../pages/chapters';
import { outlineOf } from '../pages/outline';
import { destinationsOf, labelsOf, placeBody } from '../pages/place-body';
import type { Piece } from '../pieces';
import { Problems } from '../problems';
import type { Setting } from '../setting';
import { StructureBuilder } from '../structure';
import { type Survey, survey } from '../survey';
import type { FlowOptions } from '../types';
import { type Body, bodyBox, marginsOn } from './body';
import type { FilledBox } from './fill';
import { finishPages } from './finish-pages';
import { flowLook } from './flow-look';
import { lengthOf, partedAt } from './parting';

/** Chapters from the first of these to the one before the second. */
export type Stretch = readonly [from: number, to: number];

/** A stretch of chapters on pages, in one round. */
export interface FilledStretch {
  readonly boxes: readonly (readonly FilledBox[])[];
  /** Named places in it; pages are counted from the first of the stretch. */
  readonly destinations: readonly Destination[];
  readonly problems: readonly Diagnostic[];
  /** The page numbers that were printed, and those that were asked for. */
  readonly labels: Labels;
  readonly changes: readonly PageChanges[];
  readonly body: Body;
  readonly setting: Setting;
}

/** The share of a book that the first of two lays out: the other begins later, having had other things to do. */
const firstShare = 0.47;

/** What is known of the whole book once every stretch of it is filled. */
export interface WholeBook {
  readonly destinations: readonly Destination[];
  readonly pageCount: number;
}

/** The finished pages of a stretch, with its own structure tree, whose element 0 stands for the document. */
export interface LaidStretch {
  readonly pages: readonly Page[];
  readonly structure: readonly StructureElement[];
}

/** A book in the making. What one round made and the next makes again in the same way is kept. */
export class Book {
  readonly outline: readonly OutlineEntry[];
  private readonly survey: Survey;
  private readonly problems = new Problems();
  private readonly chapters: readonly (readonly Block[])[];
  private readonly look: Look;
  private readonly reuse = new Reuse();
  private readonly words = new RememberedWords();

  constructor(
    private readonly blocks: readonly Block[],
    private readonly options: FlowOptions,
  ) {
    this.look = flowLook(options.theme, options.fonts);
    this.survey = survey(blocks, this.problems);
    this.outline = outlineOf(this.survey.headings);
    this.chapters = chaptersOf(blocks);
  }

  /** All of its chapters. */
  get whole(): Stretch {
    return [0, this.chapters.length];
  }

  /**
   * The two stretches that two can lay out at once; nothing for a book whose chapters do not begin on new pages, or that has only one.
   */
  get parts(): readonly [Stretch, Stretch] | undefined {
    if (!this.options.chaptersOnNewPage || this.chapters.length < 2) return undefined;
    const middle = partedAt(this.chapters.map(lengthOf), firstShare);
    return [
      [0, middle],
      [middle, this.chapters.length],
    ];
  }

  /** One round: a stretch of chapters shared out over pages, with the page numbers `known` so far. */
  fill([from, to]: Stretch, known: ReadonlyMap<string, string>): FilledStretch {
    const { look, problems, survey: found, reuse, words, options } = this;
    const { chaptersOnNewPage } = options;
    const labels = new Labels(known, found.ids, problems);
    const structure = new StructureBuilder();
    const open = { look, structure, problems, labels, survey: found, reuse, words, chaptersOnNewPage };
    const body = bodyBox(options, { ...open, roomPt: 0 }, this.blocks);
    const setting = { ...open, roomPt: body.heightPt };
    const pieces = collected(this.chapters.slice(from, to), body.widthPt, setting);
    const boxes = paginateChapters(chaptersOnNewPage ? pieces : [pieces.flat()], setting);
    const changes = boxes.map(changesOn);
    if (changes.some(anyChange)) refuseNarrowMargin(options, body.running.origin, problems);
    const destinations = destinationsOf(boxes, body.top);
    return { boxes, destinations, problems: problems.told(), labels, changes, body, setting };
  }

  /** Finishes the pages of a stretch that has been filled, `before` of the book's pages standing before it. */
  finish(
    { boxes, changes, body, setting }: FilledStretch,
    { destinations, pageCount }: WholeBook,
    before: number,
  ): LaidStretch {
    const { options } = this;
    const leftOf = (page: number) => marginsOn(before + page, options).left;
    const bodies = placeBody(boxes, leftOf, body.top, setting.structure);
    const found = { destinations, pageCount, before, changes };
    const pages = finishPages(bodies, found, body, options, setting);
    return { pages, structure: setting.structure.finish() };
  }
}

/** The printed numbers of the pages that named places stand on. */
export function pageNumbers({ destinations }: Pick<WholeBook, 'destinations'>): Map<string, string> {
  return labelsOf(destinations, (page) => String(page + 1));
}

/** Each level 1 heading opens a section of the structure tree. */
function collected(chapters: readonly (readonly Block[])[], widthPt: number, setting: Setting): Piece[][] {
  const place = { x: 0, widthPt, tag: 0, depth: 0, keptAbovePt: 0 };
  return chapters.map((chapter) => {
    const opens = chapter[0]?.kind === 'heading' && chapter[0].level === 1;
    const tag = opens ? setting.structure.add('Sect', 0) : 0;
    return [...collectBlocks(chapter, { ...place, tag }, setting)];
  });
}

function chaptersOf(blocks: readonly Block[]): Block[][] {
  const chapters: Block[][] = [[]];
  for (const block of blocks) {
    if (block.kind === 'heading' && block.level === 1) chapters.push([]);
    chapters[chapters.length - 1]?.push(block);
  }
  return chapters.filter((chapter) => chapter.length > 0);
}
