/** Safety signs on a screen: the drawing, its number, and what it means here. */
import type { Drawing } from '../../drawing/drawing';
import { toSvg } from '../../drawing/svg';
import type { SignsBlock } from '../../markup/block';
import { classOf, shownChange } from '../change';
import { element, Html } from '../element';
import { words } from '../inline';
import type { Writing } from '../writing';

/** A list of signs with their words. */
export function writeSigns(block: SignsBlock, writing: Writing): Html {
  const items = block.items.map(({ sign, content, change }) => {
    const { names, before, after } = shownChange(change, writing);
    const said = element('div', {}, ...before, words(content, writing), ...after);
    return element('li', { class: classOf(...names) }, signPicture(sign, writing), said);
  });
  return element('ul', { id: block.id, class: 'signs', role: 'list' }, ...items);
}

/** One sign above its number, which the sign's own words hold already. */
export function signPicture(sign: Drawing, { fonts }: Writing): Html {
  const number = element('span', { class: 'number', 'aria-hidden': 'true' }, sign.name);
  return element('span', { class: 'sign' }, Html.sound(toSvg(sign, fonts)), number);
}
