/** Headings, paragraphs, lists, definitions and lines across. */
import type {
  Block,
  DefinitionsBlock,
  HeadingBlock,
  ListBlock,
  ParagraphBlock,
  RuleBlock,
} from '../../markup/block';
import { element, type Html } from '../element';
import { words } from '../inline';
import type { Writing } from '../writing';

/** A heading, one level down: the title of the paper is the only `h1` of its page. */
export function writeHeading(block: HeadingBlock, writing: Writing): Html {
  const id = writing.nameOf.get(block) ?? block.id;
  return element(`h${block.level + 1}`, { id, tabindex: -1 }, words(block.content, writing));
}

/** A paragraph. */
export function writeParagraph(block: ParagraphBlock, writing: Writing): Html {
  const style = block.style === 'body' ? undefined : block.style;
  return element('p', { id: block.id, class: style }, words(block.content, writing));
}

/** A list, with bullets or numbers. */
export function writeList(block: ListBlock, writing: Writing): Html {
  const items = block.items.map((item) => element('li', {}, listItem(item, writing)));
  return element(block.ordered ? 'ol' : 'ul', { id: block.id }, ...items);
}

/** A single plain paragraph is the item itself; anything else stands in it as blocks. */
function listItem(item: readonly Block[], writing: Writing): Html {
  const [only] = item;
  const isWords =
    item.length === 1 && only?.kind === 'paragraph' && only.style === 'body' && only.id === undefined;
  return isWords ? words(only.content, writing) : writing.blocks(item);
}

/** Words and their meanings. */
export function writeDefinitions(block: DefinitionsBlock, writing: Writing): Html {
  const items = block.items.map(({ term, meaning }) =>
    element('div', {}, element('dt', {}, words(term, writing)), element('dd', {}, words(meaning, writing))),
  );
  return element('dl', { id: block.id }, ...items);
}

/** A line across, or lines to write on once the page is printed. */
export function writeRule({ id, lines }: RuleBlock, { look }: Writing): Html {
  if (lines === 0) return element('hr', { id });
  const ruled = Array.from({ length: lines }, () => element('span', { class: 'line' }));
  return element('div', { id, class: 'write', role: 'img', 'aria-label': look.words.write }, ...ruled);
}
