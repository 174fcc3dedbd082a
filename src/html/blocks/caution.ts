/**
 * Cautions, laid out as ANSI Z535.6 has it: signal word in its panel with the alert symbol, then hazard, consequence
 * and avoidance. Word, symbol and frame carry the meaning; the colour only helps.
 */
import type { CautionBlock } from '../../markup/block';
import { classOf, shownChange } from '../change';
import { element, type Html } from '../element';
import { words } from '../inline';
import type { Writing } from '../writing';
import { signPicture } from './signs';

/** A caution as a note with a name; a brief one has its words beside the panel where there is room. */
export function writeCaution(block: CautionBlock, writing: Writing): Html {
  const { word, symbol } = writing.look.signals[block.signal];
  const name = writing.fresh('caution');
  const parts = (['hazard', 'consequence', 'avoidance'] as const)
    .filter((part) => block[part].length > 0)
    .map((part) => element('p', { class: part }, words(block[part], writing)));
  const label = element('span', { id: name }, word);
  const panel = element(
    'p',
    { class: 'signal' },
    ...(symbol ? [alertSymbol(writing.look.words.alert)] : []),
    label,
  );
  const { names, before, after } = shownChange(block.change, writing);
  const signs = (block.signs ?? []).map((sign) => signPicture(sign, writing));
  const row = signs.length > 0 ? [element('p', { class: 'sign-row' }, ...signs)] : [];
  const kind = block.brief === true ? 'caution brief' : 'caution';
  return element(
    'div',
    {
      id: block.id,
      class: classOf(kind, `is-${block.signal}`, ...names),
      role: 'note',
      'aria-labelledby': name,
    },
    ...before,
    panel,
    ...row,
    ...parts,
    ...after,
  );
}

/** The triangle with its mark, in the colours of the panel it stands on. */
function alertSymbol(said: string): Html {
  const triangle = element('path', { class: 'triangle', d: 'M16 1 31.6 28H.4Z' });
  const mark = element('path', { class: 'mark', d: 'M14.2 10h3.6l-.6 9.4h-2.4Z' });
  const dot = element('circle', { class: 'mark', cx: 16, cy: 23.2, r: 1.9 });
  return element(
    'svg',
    { class: 'alert', viewBox: '0 0 32 29', role: 'img', 'aria-label': said },
    triangle,
    mark,
    dot,
  );
}
