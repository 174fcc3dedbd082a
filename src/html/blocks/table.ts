/** Tables: a caption, heads that say what they head, and a frame that scrolls where the screen is narrower. */
import { plainText } from '../../layout/survey';
import type { Inline, TableBlock, TableCell, TableColumn, TableRow } from '../../markup/block';
import { classOf, type ShownChange, shownChange } from '../change';
import { element, type Html } from '../element';
import { words } from '../inline';
import type { Writing } from '../writing';
import { writeField } from './field';

/** A cell with more letters than this is a sentence: its column wants room. */
const sentence = 32;

/** A table in its frame. */
export function writeTable(block: TableBlock, writing: Writing): Html {
  const name = writing.fresh('table');
  const labels = stackLabels(block);
  const stacks = labels.length > 0;
  const write = (list: readonly TableRow[], own: readonly string[]): Html[] =>
    list.map((row) => writeRow(row, { columns: block.columns, labels: own, stacks }, writing));
  const hasCaption = block.caption.length > 0;
  const caption = hasCaption ? [writeCaption(block, name, writing)] : [];
  const rowgroup = roleIf(stacks, 'rowgroup');
  const head = block.head.length > 0 ? [element('thead', rowgroup, ...write(block.head, []))] : [];
  const body = element('tbody', rowgroup, ...write(block.body, labels));
  const marks = [...(block.striped ? ['striped'] : []), ...(block.boxes === true ? ['boxes'] : [])];
  const classes = [block.style, ...marks, ...(stacks ? ['stacks'] : [])];
  const attributes = { id: block.id, class: classes.join(' '), ...roleIf(stacks, 'table') };
  const table = element('table', attributes, ...caption, ...head, body);
  const said = hasCaption ? { 'aria-labelledby': name } : { 'aria-label': writing.look.words.table };
  return element('div', { class: 'frame', role: 'group', tabindex: 0, ...said }, table);
}

function writeCaption(block: TableBlock, id: string, writing: Writing): Html {
  const { names, before, after } = shownChange(block.change, writing);
  const attributes = { id, class: classOf(...names) };
  return element('caption', attributes, ...before, words(block.caption, writing), ...after);
}

/**
 * The heads of a table whose rows stand one under the other on a narrow screen, each cell with its head before it; none
 * if it stays a table. Sentences in three columns or more cannot be read on a phone any other way; figures can.
 */
function stackLabels({ columns, head, body }: TableBlock): readonly string[] {
  const [labels] = head;
  if (head.length !== 1 || labels === undefined || columns.length < 3) return [];
  const isWhole = ({ cells }: TableRow) =>
    cells.length === columns.length || cells[0]?.span === columns.length;
  if (labels.cells.length !== columns.length || !body.every(isWhole)) return [];
  const hasSentence = body.some(({ cells }) => cells.some(isSentence));
  return hasSentence ? labels.cells.map(({ content }) => plainText(content)) : [];
}

const isSentence = ({ content }: TableCell): boolean => plainText(content).length > sentence;

/** Roles that a browser forgets once the parts of a table are not set as one, where that may happen. */
const roleIf = (stacks: boolean, role: string) => (stacks ? { role } : {});

/** What a row must know of its table. */
interface Place {
  readonly columns: readonly TableColumn[];
  /** What stands before each cell on a narrow screen; none in the head. */
  readonly labels: readonly string[];
  readonly stacks: boolean;
}

function writeRow(row: TableRow, place: Place, writing: Writing): Html {
  let at = 0;
  const change = shownChange(row.change, writing);
  const cells = namesAsLinks(row.cells, writing).map((cell, index) => {
    const heard = {
      before: index === 0 ? change.before : [],
      after: index === row.cells.length - 1 ? change.after : [],
    };
    const written = writeCell(cell, heard, at, place, writing);
    at += cell.span;
    return written;
  });
  const attributes = { id: row.id, class: classOf(...change.names), ...roleIf(place.stacks, 'row') };
  return element('tr', attributes, ...cells);
}

/**
 * The cells of a row in which one does nothing but tell the page of what another names, as a list of contents does: on a
 * screen the name itself leads there, and is not said twice.
 */
function namesAsLinks(cells: readonly TableCell[], { titles }: Writing): readonly TableCell[] {
  const targets = new Map(
    cells.flatMap(({ content: [first, ...rest] }) =>
      first?.kind === 'page-of' && rest.length === 0 ? [[titles.get(first.target), first.target]] : [],
    ),
  );
  const named = cells.flatMap(({ content }) => targets.get(plainText(content)) ?? []);
  if (named.length === 0) return cells;
  return cells.map((cell) => {
    const [first] = cell.content;
    if (first?.kind === 'page-of' && named.includes(first.target)) return { ...cell, content: [] };
    const link = targets.get(plainText(cell.content));
    if (link === undefined) return cell;
    const linked = (inline: Inline) => (inline.kind === 'text' ? { ...inline, link } : inline);
    return { ...cell, content: cell.content.map(linked) };
  });
}

/** A head without words heads nothing, so it is written as a plain cell. */
function writeCell(
  cell: TableCell,
  { before, after }: Pick<ShownChange, 'before' | 'after'>,
  at: number,
  place: Place,
  writing: Writing,
): Html {
  const { columns, labels, stacks } = place;
  const isHead = cell.head !== 'none' && plainText(cell.content) !== '';
  const align = columns[at]?.align ?? 'left';
  const classes = [...(align === 'left' ? [] : [`to-${align}`]), ...(isSentence(cell) ? ['wordy'] : [])];
  const attributes = {
    scope: isHead ? (cell.head === 'row' ? 'row' : 'col') : undefined,
    colspan: cell.span === 1 ? undefined : cell.span,
    class: classes.length > 0 ? classes.join(' ') : undefined,
    'data-label': labels[at] === '' || cell.span === columns.length ? undefined : labels[at],
    ...roleIf(stacks, isHead ? `${cell.head}header` : 'cell'),
  };
  const content = cell.field === undefined ? words(cell.content, writing) : writeField(cell.field);
  return element(isHead ? 'th' : 'td', attributes, ...before, content, ...after);
}
