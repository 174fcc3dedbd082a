/**
 * Blocks: the content of one paper, in order, with no coordinates.
 *
 * Made from the HTML subset by `parse.ts`; laid out on sheets by `layout/`, or written as a page for a screen.
 * Blocks say what they need (`breakable`, `keepWithNext`); the page breaker never asks what they are.
 */
import type { Drawing } from '../drawing/drawing';
import type { SignalWord } from '../language/signal';

/** Where a block came from: the template and the place in it. */
export interface BlockOrigin {
  readonly template: string;
  readonly line: number;
  readonly column: number;
}

/** A stretch of text in one style. Text is final: what is here is printed, letter for letter. */
export interface TextRun {
  readonly kind: 'text';
  readonly text: string;
  readonly strong: boolean;
  readonly emphasis: boolean;
  /** Id of the block this text leads to, if it is a link. */
  readonly link?: string;
}

/** A forced line end inside a paragraph. */
export interface LineBreak {
  readonly kind: 'break';
}

/** The printed page number of the block with this id; known only after layout. */
export interface PageReference {
  readonly kind: 'page-of';
  readonly target: string;
}

/** The small pieces a line of text is made of. */
export type Inline = TextRun | LineBreak | PageReference;

export type { SignalWord };

/** How something stands to the issue of its paper before this one; shown as a bar beside it. */
export interface ChangeMark {
  /** It reads otherwise than before, or was not there. */
  readonly changed: boolean;
  /** Something that stood after it is gone. */
  readonly goneAfter: boolean;
}

/** Whatever can have a bar beside it. */
export interface Markable {
  /** Left out where nothing is to be marked; no template makes it. */
  readonly change?: ChangeMark;
}

/** Something to be filled in, on a screen or by pencil. */
export interface Field {
  readonly kind: 'line' | 'tick' | 'lines';
  /** Its name in the file, unique in a paper: words joined by `-`. */
  readonly name: string;
  /** What belongs in it, for those who point at it or hear it. */
  readonly title: string;
}

/** A field in a cell of a table. */
export interface CellField extends Field {
  /** How many letters a line of it has room for at least. */
  readonly letters: number;
  /** How many lines it has room for. */
  readonly lines: number;
}

interface BlockBase extends Markable {
  readonly origin: BlockOrigin;
  /** Target for links, contents and bookmarks. Unique in a paper. */
  readonly id?: string;
}

/** A heading; `level` 1 starts a chapter. */
export interface HeadingBlock extends BlockBase {
  readonly kind: 'heading';
  readonly level: 1 | 2 | 3 | 4;
  readonly content: readonly Inline[];
}

/** A paragraph. `lead` is a larger opening paragraph, `note` small print. */
export interface ParagraphBlock extends BlockBase {
  readonly kind: 'paragraph';
  readonly style: 'body' | 'lead' | 'note';
  readonly content: readonly Inline[];
  /** It stays with what follows it. */
  readonly keep?: boolean;
  /** On a card or a sheet it is printed only where some step has the mark of a caution said above it, or where none has. */
  readonly marks?: 'some' | 'none';
}

/** A plain list, bulleted or numbered. */
export interface ListBlock extends BlockBase {
  readonly kind: 'list';
  readonly ordered: boolean;
  readonly items: readonly (readonly Block[])[];
}

/** A procedure: numbered steps to be done in order, each with what to see when it is done. */
export interface StepsBlock extends BlockBase {
  readonly kind: 'steps';
  /** `number`: steps are numbered from `start`; `tick`: each has a box to tick as well. */
  readonly mark: 'number' | 'tick';
  /** A result stands at the end of its action’s line where it fits, whatever the look of the paper. */
  readonly led?: boolean;
  readonly start: number;
  readonly items: readonly StepItem[];
}

/** One step. */
export interface StepItem extends Markable {
  readonly origin: BlockOrigin;
  /** What a reference leads to it by. */
  readonly id?: string;
  /** Cautions that stand before the action and stay on its page. */
  readonly cautions: readonly CautionBlock[];
  readonly action: readonly Inline[];
  /** The state or value to see; empty if the action is its own proof. */
  readonly result: readonly Inline[];
  /** Extra words under the step (who, where, why); empty if none. */
  readonly remark: readonly Inline[];
  /** A step whose omission nothing later would show. */
  readonly critical: boolean;
}

/** A table. Rows never break inside; heads repeat on every page. Its own mark is that of its caption. */
export interface TableBlock extends BlockBase {
  readonly kind: 'table';
  readonly caption: readonly Inline[];
  readonly columns: readonly TableColumn[];
  readonly head: readonly TableRow[];
  readonly body: readonly TableRow[];
  readonly style: 'ruled' | 'plain' | 'large';
  /** Shade every second row, so that the eye keeps the line. */
  readonly striped: boolean;
  /** Lines around every empty cell: it is written in. */
  readonly boxes?: boolean;
}

/** How one column is set. `weight` shares out spare width; 0 keeps the column at its natural width. */
export interface TableColumn {
  readonly align: 'left' | 'right' | 'centre';
  readonly weight: number;
}

/** One row of a table. The cells' spans add up to the number of columns. */
export interface TableRow extends Markable {
  /** Target for links, as a block's. */
  readonly id?: string;
  readonly cells: readonly TableCell[];
}

/** One cell. A head cell says what it heads. */
export interface TableCell {
  readonly content: readonly Inline[];
  readonly span: number;
  readonly head: 'none' | 'column' | 'row';
  /** The cell is filled in; it has no words then. */
  readonly field?: CellField;
  /** It counts the places of a list: another number in it is no change of what it says. */
  readonly counts?: boolean;
}

/** A drawing with its caption. */
export interface FigureBlock extends BlockBase {
  readonly kind: 'figure';
  /** Measured with, or cut out: printed at its own size or not at all. */
  readonly trueSize?: boolean;
  readonly drawing: Drawing;
  readonly caption: readonly Inline[];
}

/** A caution: hazard, what happens, how to avoid it. */
export interface CautionBlock extends BlockBase {
  readonly kind: 'caution';
  readonly signal: SignalWord;
  /** Safety signs that say the same at a glance; left out if there are none. */
  readonly signs?: readonly Drawing[];
  /** Said in one line beside its signal word, because the whole stands elsewhere; then only `hazard` has words. */
  readonly brief?: boolean;
  /** What it says, by a name: cautions with the same one say the same in other words. */
  readonly says?: string;
  readonly hazard: readonly Inline[];
  readonly consequence: readonly Inline[];
  readonly avoidance: readonly Inline[];
}

/** Safety signs, each with what it means here. */
export interface SignsBlock extends BlockBase {
  readonly kind: 'signs';
  readonly items: readonly SignItem[];
}

/** One sign with its words. The name of its drawing is its number. */
export interface SignItem extends Markable {
  readonly sign: Drawing;
  readonly content: readonly Inline[];
}

/** Words and their meanings. */
export interface DefinitionsBlock extends BlockBase {
  readonly kind: 'definitions';
  readonly items: readonly DefinitionItem[];
}

/** One word and its meaning. */
export interface DefinitionItem extends Markable {
  readonly term: readonly Inline[];
  readonly meaning: readonly Inline[];
}

/** A list of the paper's headings with their page numbers, down to `depth`. */
export interface ContentsBlock extends BlockBase {
  readonly kind: 'contents';
  readonly depth: 1 | 2 | 3;
}

/**
 * Blocks that belong together: kept on one page if they fit on one, or set in columns where there is room for two. What is
 * looked up on a card is read with the card in the hand, wherever the card is read else.
 */
export interface GroupBlock extends BlockBase {
  readonly kind: 'group';
  readonly style: 'plain' | 'boxed' | 'columns' | 'look-up' | 'close';
  readonly blocks: readonly Block[];
}

/** What follows starts on a new page, or (on cards) a new face. */
export interface PageBreakBlock extends BlockBase {
  readonly kind: 'page-break';
  /**
   * Set if it starts there only where less than this share of a page is left, or too little for all that comes before the
   * next break (`whole`); where there is more, a line is drawn.
   */
  readonly unlessLeft?: 'half' | 'third' | 'whole';
}

/** A line across, or room to write: `lines` ruled lines for a pencil. */
export interface RuleBlock extends BlockBase {
  readonly kind: 'rule';
  readonly lines: number;
  /** As many more lines as are left room for on the page. */
  readonly fill?: boolean;
  /** The lines are filled in as one field. */
  readonly field?: Field;
}

/** One piece of a paper's content. */
export type Block =
  | HeadingBlock
  | ParagraphBlock
  | ListBlock
  | StepsBlock
  | TableBlock
  | FigureBlock
  | CautionBlock
  | SignsBlock
  | DefinitionsBlock
  | ContentsBlock
  | GroupBlock
  | PageBreakBlock
  | RuleBlock;
