/** Words for the fixed choices of a spec, in the language of the papers: read from `shared/words/`. */
import { z } from 'zod';
import { bad, good, type Outcome } from '../diagnostic/diagnostic';
import { signalWords } from '../procedure/signal';
import { problemsOf } from '../spec/problems';
import { fluids } from '../spec/schema/fittings';
import { terrains } from '../spec/schema/running';
import { readSource } from '../spec/source';

const word = z.string().min(1);
const wordsFor = <const T extends readonly [string, ...string[]]>(keys: T) => z.record(z.enum(keys), word);

const wordsForm = z.strictObject({
  fluids: wordsFor(fluids),
  contents: wordsFor(['water', 'cylinder-oil']),
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
  'range-of': wordsFor(['water', 'fuel']),
  'done-by': wordsFor(['keeper', 'trade', 'inspector']),
  carried: wordsFor(['spare', 'tool', 'consumable']),
  'steam-at': wordsFor(['blown-down', 'least-to-move', 'working', 'cuts-out', 'safety', 'allowed']),
});

/** The word list of one language. */
export type Words = z.output<typeof wordsForm>;

/** Read a word list. A missing word is an error at its place. */
export function readWords(text: string, file: string): Outcome<Words> {
  const source = readSource(text, file);
  if (!source.ok) return source;
  const parsed = wordsForm.safeParse(source.value.data);
  return parsed.success ? good(parsed.data) : bad(problemsOf(parsed.error.issues, source.value, wordsForm));
}
