/**
 * What stands around the text of a page: its head and foot, the panel that tells of ticks, and the bar within reach of
 * the thumb. Panel and bar are of use with the script alone, which shows them.
 */
import { type Content, element, type Html } from './element';
import { addressOf } from './inline';
import type { ScreenPageOptions } from './page';
import type { Writing } from './writing';

/** Head of the page: which car, which paper, which issue. */
export function masthead(options: ScreenPageOptions): Html {
  const { words } = options.look;
  return element(
    'header',
    { class: 'masthead' },
    element(
      'h1',
      { id: '_title', tabindex: -1 },
      element('span', { class: 'car' }, options.car),
      ' ',
      element('span', { class: 'paper' }, options.title),
    ),
    element('p', { class: 'made' }, issueOf(options), ' ', fingerprintOf(options)),
    ...(options.invented ? [element('p', { class: 'invented' }, words.invented)] : []),
  );
}

/** Foot of the page: the same again, and what its marks mean. */
export function pageFoot(options: ScreenPageOptions, writing: Writing): Html {
  const { words } = options.look;
  const hasCritical = writing.hasCritical;
  return element(
    'footer',
    { class: 'foot', 'aria-labelledby': '_foot' },
    element('h2', { id: '_foot' }, words.foot),
    element(
      'p',
      {},
      `${options.car}: ${options.title}. `,
      issueOf(options),
      '. ',
      fingerprintOf(options),
      '.',
    ),
    ...(hasCritical ? [element('p', {}, words.criticalMeans)] : []),
    ...(options.invented ? [element('p', {}, words.inventedWhole)] : []),
    ...(writing.stepCount > 0 ? [element('noscript', {}, element('p', {}, words.noScript))] : []),
    element('p', {}, element('a', { href: '#_title' }, words.top)),
  );
}

/** Says, above the text, that ticks are from another day, so that nobody takes yesterday's for today's. */
export function oldTicks({ look, stepCount }: Writing): Html[] {
  if (stepCount === 0) return [];
  const { words } = look;
  return [
    element(
      'section',
      {
        id: '_old',
        class: 'old',
        'aria-label': words.oldTicks,
        tabindex: -1,
        hidden: true,
        'data-old': words.tickedOld,
      },
      element('p', { class: 'state' }),
      element('p', { class: 'buttons' }, element('button', { type: 'button' }, words.clearAll)),
    ),
  ];
}

/**
 * How many steps are ticked, since when, and the button that clears them. It stands under the text, so that nothing
 * moves under a thumb when the first step is ticked.
 */
export function ticksPanel({ look, stepCount }: Writing): Html[] {
  if (stepCount === 0) return [];
  const { words } = look;
  const said: Readonly<Record<string, string>> = {
    'data-none': words.tickedNone,
    'data-some': words.tickedSome,
    'data-list-some': words.listSome,
    'data-cleared': words.saidCleared,
    'data-put-back': words.saidPutBack,
    'data-done': words.saidDone,
  };
  const clear = element('button', { type: 'button', class: 'clear' }, words.clearAll);
  const back = element('button', { type: 'button', class: 'back', hidden: true }, words.putBack);
  return [
    element(
      'section',
      { id: '_ticks', class: 'ticks', 'aria-label': words.ticks, tabindex: -1, hidden: true, ...said },
      element('p', { class: 'state' }),
      element('p', { class: 'kept', hidden: true }, words.notKept),
      element('p', { class: 'buttons' }, clear, ' ', back),
      element('p', { class: 'heard', role: 'status' }),
    ),
  ];
}

/** Says that what is written stays on this device, with the button that clears it. */
export function fieldsPanel({ look, hasFields }: Writing): Html[] {
  if (!hasFields) return [];
  const { words } = look;
  const clear = element('button', { type: 'button', class: 'clear' }, words.clearFields);
  const back = element('button', { type: 'button', class: 'back', hidden: true }, words.putFieldsBack);
  return [
    element(
      'section',
      { id: '_fields', class: 'ticks', 'aria-label': words.fields, hidden: true },
      element('p', { class: 'state' }, words.fieldsKept),
      element('p', { class: 'kept', hidden: true }, words.fieldsNotKept),
      element('p', { class: 'buttons' }, clear, ' ', back),
    ),
  ];
}

/** The bar at the foot of the screen: contents, how far one has come, the next step. */
export function footBar({ look, stepCount, contentsName }: Writing): Html[] {
  if (stepCount === 0 && contentsName === undefined) return [];
  const { words } = look;
  const contents: readonly Content[] =
    contentsName === undefined
      ? []
      : [element('a', { class: 'to-contents', href: addressOf(contentsName) }, words.contents)];
  const steps: readonly Content[] =
    stepCount === 0
      ? []
      : [
          element('a', { class: 'so-far', href: '#_ticks', 'data-old': words.tickedOldShort }),
          element('button', { type: 'button', class: 'next' }, words.next),
        ];
  return [
    element(
      'section',
      { id: '_bar', class: 'bar', 'aria-label': words.bar, hidden: true },
      ...contents,
      ...steps,
    ),
  ];
}

function issueOf({ issue, date, look }: ScreenPageOptions): Html {
  const isDay = /^\d{4}-\d{2}-\d{2}$/.test(date);
  const when = isDay ? element('time', { datetime: date }, date) : date;
  return element('span', {}, ...filledIn(look.words.issue, { issue, date: when }));
}

function fingerprintOf({ fingerprint, look }: ScreenPageOptions): Html {
  const code = element('span', { class: 'code' }, fingerprint);
  return element('span', {}, ...filledIn(look.words.fingerprint, { fingerprint: code }));
}

/** Words with what stands for each `{name}` in them; a name without a value stays as it is. */
function filledIn(words: string, values: Readonly<Record<string, Content>>): Content[] {
  return words.split(/(\{\w+\})/).map((part) => values[part.slice(1, -1)] ?? part);
}
