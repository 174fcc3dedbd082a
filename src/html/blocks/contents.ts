/** Contents: the headings of the paper as nested lists of links. */
import type { ContentsBlock } from '../../markup/block';
import { element, type Html } from '../element';
import { addressOf } from '../inline';
import type { NamedHeading, Writing } from '../writing';

/** A heading and those below it. */
interface Entry {
  readonly heading: NamedHeading;
  readonly below: readonly Entry[];
}

/** A table of contents. The first of a paper is the one that the bar at the foot of the page leads to. */
export function writeContents(block: ContentsBlock, writing: Writing): Html {
  const name = block.id ?? writing.fresh('contents').replace(/-1$/, '');
  const title = `${name}-title`;
  const listed = writing.headings.filter(({ block: heading }) => heading.level <= block.depth);
  const label = element('p', { class: 'nav-title', id: title }, writing.look.words.contents);
  const lists = listed.length > 0 ? [entryList(nested(listed))] : [];
  const kind = name === writing.contentsName ? 'contents main' : 'contents';
  return element('nav', { id: name, class: kind, 'aria-labelledby': title, tabindex: -1 }, label, ...lists);
}

function entryList(entries: readonly Entry[]): Html {
  const items = entries.map(({ heading, below }) => {
    const link = element('a', { href: addressOf(heading.name) }, heading.title);
    return element('li', {}, link, ...(below.length > 0 ? [entryList(below)] : []));
  });
  return element('ol', { role: 'list' }, ...items);
}

/** Each heading with the deeper ones that follow it. */
function nested(headings: readonly NamedHeading[]): Entry[] {
  const entries: Entry[] = [];
  let at = 0;
  while (at < headings.length) {
    const heading = headings[at];
    if (heading === undefined) break;
    let end = at + 1;
    while ((headings[end]?.block.level ?? 0) > heading.block.level) end += 1;
    entries.push({ heading, below: nested(headings.slice(at + 1, end)) });
    at = end;
  }
  return entries;
}
