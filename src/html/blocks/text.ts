/** Headings, paragraphs, lists, definitions and lines across. */
import type {
  Block,
  DefinitionsBlock,
  HeadingBlock,
  ListBlock,
  ParagraphBlock,
  RuleBlock,
} from '../../markup/block';
import { classOf, shownChange } from '../change';
import { element, type Html } from '../element';
import { words } from '../inline';
import type { Writing } from '../writing';
import { writeLines } from './field';

/** A heading, one level down: the title of the paper is the only `h1` of its page. */
export function writeHeading(block: HeadingBlock, writing: Writing): Html {
  const id = writing.nameOf.get(block) ?? block.id;
  const { names, before, after } = shownChange(block.change, writing);
  const attributes = { id, class: classOf(...names), tabindex: -1 };
  return element(`h${block.level + 1}`, attributes, ...before, words(block.content, writing), ...after);
}

/** A paragraph. */
export function writeParagraph(block: ParagraphBlock, writing: Writing): Html {
  const style = block.style === 'body' ? undefined : block.style;
  const { names, before, after } = shownChange(block.change, writing);
  const attributes = { id: block.id, class: classOf(style, ...names) };
  return element('p', attributes, ...before, words(block.content, writing), ...after);
}

/** A list, with bullets or numbers. */
export function writeList(block: ListBlock, writing: Writing): Html {
  const items = block.items.map((item) => listItem(item, writing));
  return element(block.ordered ? 'ol' : 'ul', { id: block.id }, ...items);
}

/** A single plain paragraph is the item itself; anything else stands in it as blocks. */
function listItem(item: readonly Block[], writing: Writing): Html {
  const [only] = item;
  const isWords =
    item.length === 1 && only?.kind === 'paragraph' && only.style === 'body' && only.id === undefined;
  if (!isWords) return element('li', {}, writing.blocks(item));
  const { names, before, after } = shownChange(only.change, writing);
  return element('li', { class: classOf(...names) }, ...before, words(only.content, writing), ...after);
}

/** Words and their meanings. */
export function writeDefinitions(block: DefinitionsBlock, writing: Writing): Html {
  const items = block.items.map(({ term, meaning, change }) => {
    const { names, before, after } = shownChange(change, writing);
    return element(
      'div',
      { class: classOf(...names) },
      element('dt', {}, ...before, words(term, writing)),
      element('dd', {}, words(meaning, writing), ...after),
    );
  });
  return element('dl', { id: block.id }, ...items);
}

/** A line across, lines to write on once the page is printed, or a field of several lines. */
export function writeRule({ id, lines, field, change }: RuleBlock, writing: Writing): Html {
  const { look } = writing;
  const names = shownChange(change, writing).names;
  if (field !== undefined)
    return element('div', { id, class: classOf('filled', ...names) }, writeLines(field, lines));
  if (lines === 0) return element('hr', { id, class: classOf(...names) });
  const ruled = Array.from({ length: lines }, () => element('span', { class: 'line' }));
  return element(
    'div',
    { id, class: classOf('write', ...names), role: 'img', 'aria-label': look.words.write },
    ...ruled,
  );
}
