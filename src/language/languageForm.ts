/** The form of the files of a language: `language.yaml`, `words.yaml`, `phrases.yaml`, `messages.yaml`, `furniture.yaml`. */
import * as z from 'zod';
import { key, words } from '../spec/schema/field';
import { fluids } from '../spec/schema/fittings';
import { terrains } from '../spec/schema/running';
import { oilingStates } from '../spec/schema/upkeep';
import { type MessageKey, messageValues } from './messages';
import { signalWords } from './signal';

const word = z.string().min(1).max(200);
const wordsFor = <const T extends readonly [string, ...string[]]>(keys: T) => z.record(z.enum(keys), word);

/** Units that are words, which each language says in its own way. */
const unitWords = ['turns', 'days', 'psi absolute', 'bar absolute'] as const;

/** `language.yaml`: what the language is called, how it writes numbers, and what is whole in it. */
export const languageFileForm = z.strictObject({
  name: word.meta({ description: 'What it is called by those who speak it.', sample: 'English' }),
  papers: z.union([z.literal('all'), z.array(key).min(1)]).meta({
    description: 'The papers that are whole in it, by name; the others are left out. Or `all`.',
    sample: '[card-running]',
  }),
  numbers: z.strictObject({
    decimal: z.string().length(1).meta({ description: 'Between whole and parts.', sample: '.' }),
    thousands: z.string().length(1).meta({ description: 'Between thousands, from 10,000 up.', sample: ',' }),
    units: z
      .record(z.enum(unitWords), z.strictObject({ one: word, many: word }))
      .meta({ description: 'Units that are words.' }),
  }),
});

/** `words.yaml`: words for the fixed choices of a spec. */
export const wordsForm = z.strictObject({
  fluids: wordsFor(fluids),
  contents: wordsFor(['water', 'cylinder-oil']),
  'tank-shape': wordsFor(['rectangular', 'lying-cylinder', 'standing-cylinder', 'lying-oval', 'wedge']),
  'tag-form': wordsFor(['round', 'oblong']),
  reach: wordsFor(['seated', 'standing', 'opened', 'kneeling', 'under']),
  opens: wordsFor([
    'anticlockwise',
    'clockwise',
    'pull',
    'push',
    'up',
    'down',
    'handle-along-pipe',
    'handle-across-pipe',
    'forward',
    'back',
  ]),
  steering: wordsFor(['wheel', 'tiller']),
  parked: wordsFor(['open', 'shut']),
  read: wordsFor(['stick', 'gauge', 'glass', 'not-read']),
  reads: wordsFor(['pressure', 'level', 'temperature', 'flow']),
  drive: wordsFor(['engine', 'hand', 'electric', 'steam']),
  moves: wordsFor(['water', 'fuel', 'air', 'oil']),
  job: wordsFor(['main', 'pilot']),
  boiler: wordsFor(['fire-tube', 'water-tube', 'monotube']),
  action: wordsFor(['single', 'double']),
  exhaust: wordsFor(['open-air', 'feed-heater', 'condenser']),
  'draws-full': wordsFor(['yes', 'no', 'not-known']),
  signals: wordsFor(signalWords),
  terrain: wordsFor(terrains),
  fire: wordsFor(['full', 'low']),
  start: wordsFor(['cold', 'warm']),
  'charge-after': wordsFor(['cold-night', 'in-the-sun', 'up-high']),
  'raising-to': wordsFor(['gauge-alive', 'least-to-move', 'working', 'cuts-out']),
  position: wordsFor(['open', 'shut', 'cracked', 'either']),
  basis: wordsFor(['measured', 'computed', 'estimated', 'unknown']),
  'range-of': wordsFor(['water', 'fuel']),
  'done-by': wordsFor(['keeper', 'trade', 'inspector']),
  'boiler-for': wordsFor(['empty', 'cold', 'steam']),
  oiled: wordsFor(oilingStates),
  carried: wordsFor(['spare', 'tool', 'consumable']),
  strip: wordsFor(['cannot-be-drawn', 'reserve', 'full', 'end']),
  'steam-at': wordsFor(['blown-down', 'least-to-move', 'working', 'cuts-out', 'safety', 'allowed']),
});

/** `phrases.yaml`: what the steps share. */
export const phraseFileForm = z.strictObject({
  phrases: z
    .record(key, words('Words that several steps use, called with `{{> name}}`.', 'Shuts {{part.shuts}}.'))
    .meta({ description: 'Phrases by name.' }),
  ways: z
    .record(
      key,
      z.strictObject({
        open: words('How it is opened.', 'turn anticlockwise'),
        shut: words('How it is shut.', 'turn clockwise'),
        crack: words('How it is cracked.', 'turn anticlockwise a little'),
      }),
    )
    .meta({ description: 'Which way a valve goes, for each word of `opens`.' }),
});

const messageKeys = Object.keys(messageValues) as [MessageKey, ...MessageKey[]];

/** `messages.yaml`: what the program puts together itself. */
export const messageFileForm = z.strictObject({ messages: wordsFor(messageKeys) });

/** `furniture.yaml`: what stands around the text, on paper and on a screen. */
export const furnitureForm = z.strictObject({
  signals: wordsFor(signalWords),
  sheets: z.strictObject({
    continued: word,
    continuesNext: word,
    partEnds: word,
    end: word,
    face: word,
    saidAbove: word,
    sheetSide: word,
    front: word,
    back: word,
  }),
  screen: z.strictObject({
    skip: word,
    contents: word,
    issue: word,
    fingerprint: word,
    invented: word,
    inventedWhole: word,
    alert: word,
    step: word,
    result: word,
    critical: word,
    criticalMeans: word,
    changed: word,
    goneAfter: word,
    table: word,
    drawing: word,
    notToScale: word,
    write: word,
    ticks: word,
    oldTicks: word,
    tickedNone: word,
    tickedSome: word,
    tickedOld: word,
    tickedOldShort: word,
    notKept: word,
    clearAll: word,
    clearList: word,
    putBack: word,
    saidCleared: word,
    saidPutBack: word,
    saidDone: word,
    listSome: word,
    fields: word,
    fieldsKept: word,
    fieldsNotKept: word,
    clearFields: word,
    putFieldsBack: word,
    next: word,
    bar: word,
    noScript: word,
    foot: word,
    top: word,
  }),
});

/** Words for the fixed choices of a spec. */
export type Words = z.output<typeof wordsForm>;

/** Words around the text. */
export type Furniture = z.output<typeof furnitureForm>;

/** Which way valves of each kind of motion go. */
export type Ways = z.output<typeof phraseFileForm>['ways'];
