/**
 * What the papers say in sentences that are put together by the program: each message by key, with the values it holds.
 *
 * The words stand in `languages/<language>/messages.yaml`. A message that is missing, that nobody knows, or that leaves
 * out one of its values is an error at its place.
 */

/** Every message, with the names of its values. */
export const messageValues = {
  // amounts and names
  'on-card': ['card'],
  'filler-at': ['place'],
  'on-face': ['face'],
  'tag-of-driver': ['tag'],
  'tag-of-helper': ['tag'],
  'not-known': [],
  about: ['amount'],
  'burns-on': ['time'],
  part: ['name'],
  'part-with-tag': ['name', 'tag'],
  'list-comma': [],
  'list-last': ['before', 'last'],
  band: ['from', 'to'],
  'never-past': ['value'],
  'depth-and-volume': ['depth', 'volume'],
  // further tanks of one liquid
  'tank-runs': [],
  'tank-open': ['valves'],
  'tank-pumped': ['pumps'],
  'tank-open-and-pumped': ['open', 'pumps'],
  // round the text of a page
  'page-of-pages': ['page', 'pages'],
  'issue-line': ['letter', 'date', 'mark'],
  subject: ['title', 'letter', 'date', 'mark'],
  sign: ['number', 'means', 'shows'],
  // on strips for dipsticks
  'strip-issue': ['letter', 'mark'],
  'strip-piece': ['piece', 'pieces'],
  'strip-goes-on': ['piece'],
  'strip-mark': ['amount', 'depth'],
  'strip-picture': ['tank', 'from', 'to', 'list'],
  'ruler-beside': [],
  // on tags of valves
  'tag-parked': ['position'],
  'tag-issue': ['car', 'letter', 'mark'],
  'tag-picture': ['tag', 'valve', 'does', 'parked', 'issue'],
  'tag-sheet-picture': [],
  // changes of a car to the standard procedures
  'change-added': ['step'],
  'change-replaced': ['steps', 'step'],
  'change-moved': ['steps'],
  'change-left-out': ['steps'],
  // figures
  'table-of-rows': ['rows'],
  'to-measure': ['measure'],
  'within-share': ['doubt', 'share'],
  // leaks
  'leak-pipe': ['from', 'to'],
  'leak-of': ['leak', 'fluid'],
  'leak-let-down': ['tank', 'valve'],
  'leak-let-down-and-shut': ['tank', 'valve'],
  // drawings
  'driver-seat': [],
  front: [],
  'plan-to-scale': [],
  'places-to-scale': [],
  'rest-outline': [],
  'height-up': ['height'],
  'above-ground': ['height'],
  'plan-picture': ['car', 'count', 'list'],
  'stand-front': [],
  'stand-picture': ['car', 'list'],
  'side-picture': ['car', 'count', 'list'],
  'gauges-picture': ['car', 'list'],
  'heights-from': ['from'],
  'level-least-safe': [],
  'level-lowest': [],
  'level-working': [],
  'level-cold': [],
  'level-highest-cold': [],
  'level-highest': [],
  'level-feed-from': [],
  'level-feed-to': [],
  'level-glass-top': [],
  'level-glass-bottom': [],
  'level-cut': [],
  'levels-picture': ['boiler', 'from', 'list'],
  'glass-highest': [],
  'glass-picture': ['glass', 'list'],
  'boiler-start': ['start'],
  'minutes-from-lighting': [],
  'not-reached': ['pressure'],
  'reached-after': ['pressure', 'minutes'],
  'raising-picture': ['car', 'unit', 'list'],
  'minutes-before-moving-off': [],
  'in-good-time': [],
  'flame-or-steam': [],
  'at-the-least': [],
  'start-part': ['part', 'from', 'to', 'least'],
  'start-picture': ['car', 'list'],
  'on-full': ['liquid'],
  'to-run-on': [],
  'reserve-kept-back': [],
  'range-picture': ['car', 'list'],
  'fuel-of': ['car'],
  'water-of': ['car'],
  'steam-of': ['car'],
  'pipes-picture': ['shows', 'list'],
  'pipe-from-to': ['from', 'to'],
  'valves-shut': ['list'],
  'valves-open': ['list'],
  'gauge-on': ['gauge', 'part'],
  'gauges-listed': ['list'],
  'key-shut': [],
  'key-open': [],
  'key-check-valve': [],
  'key-automatic': [],
  'key-relief-valve': [],
  'key-pump': [],
  'key-strainer': [],
  'key-gauge': [],
  // a way
  fuel: [],
  'no-stop': [],
  'stop-once': [],
  'stop-often': ['stops'],
  'leg-climbs': ['country', 'height'],
  'heights-said': [],
  'heights-none': [],
  'heights-smoothed': ['window', 'climb'],
} as const satisfies Readonly<Record<string, readonly string[]>>;

/** The key of a message. */
export type MessageKey = keyof typeof messageValues;

/** The values of a message, by name. */
export type MessageValues<K extends MessageKey> = Readonly<
  Record<(typeof messageValues)[K][number], string | number>
>;

/** The messages of one language. */
export interface Messages {
  /** A message with its values put in. */
  say<K extends MessageKey>(key: K, values: MessageValues<K>): string;
  /** The same in pieces: words as they stand, and the names of values in their places. */
  pieces<K extends MessageKey>(
    key: K,
  ): readonly (string | { readonly value: (typeof messageValues)[K][number] })[];
}

/** Says a message with its values. */
export type Say = Messages['say'];

const value = /\{\{([a-z-]+)\}\}/g;

/** Messages from their texts, which have been found whole. */
export function messagesOf(texts: Readonly<Record<MessageKey, string>>): Messages {
  return {
    say: (key, values) =>
      texts[key].replace(value, (whole, name: string) => {
        const given: string | number | undefined = (values as Readonly<Record<string, string | number>>)[
          name
        ];
        return given === undefined ? whole : String(given);
      }),
    pieces: <K extends MessageKey>(key: K) =>
      texts[key]
        .split(/(\{\{[a-z-]+\}\})/)
        .filter((piece) => piece !== '')
        .map((piece) => {
          const name = /^\{\{([a-z-]+)\}\}$/.exec(piece)?.[1];
          return name === undefined ? piece : { value: name as (typeof messageValues)[K][number] };
        }),
  };
}

/** What is wrong with the values in the text of a message; nothing if all of them, and no others, are there. */
export function faultOfMessage(key: MessageKey, text: string): string | undefined {
  const wanted: readonly string[] = messageValues[key];
  const used = new Set([...text.matchAll(value)].map(([, name = '']) => name));
  const lacking = wanted.filter((name) => !used.has(name));
  const strange = [...used].filter((name) => !wanted.includes(name));
  const shown = (names: readonly string[]) => names.map((name) => `\`{{${name}}}\``).join(', ');
  if (strange.length > 0) return `${shown(strange)} is no value of this message`;
  if (lacking.length > 0) return `the message leaves out ${shown(lacking)}`;
  return /\{\{|\}\}/.test(text.replace(value, '')) ? 'a value is not written as `{{name}}`' : undefined;
}
