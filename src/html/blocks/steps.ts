/**
 * Steps. The number of a step is its box to tick: one large target at the edge, so that a thumb in a glove finds it and a
 * thumb that scrolls does not. Every step can be ticked, whether or not the printed paper has boxes.
 */
import type { StepItem, StepsBlock } from '../../markup/block';
import { classOf, shownChange } from '../change';
import { element, Html } from '../element';
import { words } from '../inline';
import type { Writing } from '../writing';
import { writeCaution } from './caution';

/** A procedure, and the line under it that counts its ticks and clears them; that line needs the script. */
export function writeSteps(block: StepsBlock, writing: Writing): Html {
  const list = block.id ?? writing.fresh('steps');
  const items = block.items.map((item, index) => writeStep(item, block.start + index, writing));
  const { clearList } = writing.look.words;
  const foot = element(
    'p',
    { class: 'list-foot', 'data-list': list, hidden: true },
    element('span', { class: 'count' }),
    ' ',
    element('button', { type: 'button', class: 'plain' }, clearList),
  );
  const start = block.start === 1 ? undefined : block.start;
  const written = element('ol', { id: list, class: `steps by-${block.mark}`, role: 'list', start }, ...items);
  return Html.sound(`${written.text}\n${foot.text}`);
}

function writeStep(item: StepItem, value: number, writing: Writing): Html {
  const box = writing.fresh('step');
  const cautions = item.cautions.map((caution) => writeCaution(caution, writing));
  const row = element(
    'div',
    { class: 'row' },
    tickBox(item, box, value, writing),
    stepWords(item, box, writing),
  );
  const { names, before, after } = shownChange(item.change, writing);
  const name = classOf(item.critical ? 'critical' : undefined, ...names);
  return element('li', { id: item.id, class: name }, ...cautions, ...before, row, ...after);
}

function tickBox(item: StepItem, box: string, value: number, { look }: Writing): Html {
  const described = [
    ...(item.critical ? [`${box}-flag`] : []),
    ...(item.result.length > 0 ? [`${box}-result`] : []),
  ];
  const input = element('input', {
    type: 'checkbox',
    id: box,
    'data-step': value,
    autocomplete: 'off',
    'aria-labelledby': `${box}-number ${box}-action`,
    'aria-describedby': described.length > 0 ? described.join(' ') : undefined,
  });
  const number = element(
    'span',
    { id: `${box}-number`, class: 'number' },
    element('span', { class: 'heard' }, `${look.words.step} `),
    String(value),
  );
  return element('label', { class: 'tick' }, input, element('span', { class: 'box' }, number, check));
}

const check = Html.sound(
  '<svg class="check" viewBox="0 0 24 24" aria-hidden="true"><path d="M3.5 12.5 9.5 18.5 20.5 5.5"/></svg>',
);

function stepWords(item: StepItem, box: string, writing: Writing): Html {
  const { critical, result } = writing.look.words;
  const heard = element('span', { class: 'lookfor' }, `${result} `);
  return element(
    'div',
    { class: 'what' },
    ...(item.critical ? [element('p', { id: `${box}-flag`, class: 'flag' }, critical)] : []),
    element('p', { id: `${box}-action`, class: 'action' }, words(item.action, writing)),
    ...(item.result.length > 0
      ? [element('p', { id: `${box}-result`, class: 'result' }, heard, words(item.result, writing))]
      : []),
    ...(item.remark.length > 0 ? [element('p', { class: 'remark' }, words(item.remark, writing))] : []),
  );
}
