/** What a paper says of parts: its words, and those for parts that its car has not got. */
import type { Car, Part } from '../../src/car/car';
import type { ReadyCar } from '../../src/kettlebook';
import { withApostrophes } from '../../src/markup/apostrophes';
import type { SetPaper } from '../../src/paper/paper';
import { duties } from '../../src/procedure/duties';

/** The words of a paper in the order they were placed, with white space made even. */
export function wordsOfPaper({ laidOut }: Pick<SetPaper, 'laidOut'>): string {
  return laidOut.pages
    .flatMap(({ items }) => items.flatMap((item) => (item.kind === 'text' ? [item.text] : [])))
    .join(' ')
    .replace(/[\s\u00a0]+/g, ' ');
}

/** A text without the places that stand in brackets beside names: `the pilot valve (P1, left step)`, `the torch (tool box)`. */
export function withoutPlaces(text: string, { places }: Car): string {
  return [...places.values()].reduce((left, { name }) => {
    const place = [...withApostrophes(name).replace(/\s/g, '')]
      .map((letter) => letter.replace(/[^\p{L}\p{N}]/u, '\\$&'))
      .join('\\s*');
    return left
      .replace(new RegExp(`,\\s*${place}\\s*\\)`, 'g'), ')')
      .replace(new RegExp(`\\s*\\(\\s*${place}\\s*\\)`, 'g'), '');
  }, withApostrophes(text));
}

/** Words for kinds of part that not every car has, with the duty of such a part. */
const terms = [
  ['pilot', /\bpilots?\b/i],
  ['main-vaporizer', /\bvapori[sz]ers?\b/i],
  ['superheater', /\bsuperheaters?\b/i],
  ['condenser', /\bcondensers?\b/i],
  ['level-glass', /\b(water|gauge) glass/i],
  ['torch', /\b(blow)?torch\b/i],
  ['blower', /\bblowers?\b/i],
  ['igniter', /\bspark plug|\bignition switch/i],
  ['low-water-cut-off', /\blow-water cut-off/i],
  ['temperature-cut-off', /\btemperature cut-off/i],
  ['try-cock', /\btry cocks?\b/i],
  ['pumped-tank', /\bpressure tank/i],
  ['starting-valve', /\bstarting (valve|branch)/i],
  ['charged-tank', /\bair cushion/i],
  ['brake', /\bfoot brake|\bbrake pedal|\bpress the brake/i],
  ['horn', /\bhorn\b/i],
  ['chocks', /\bchocks?\b/i],
  ['reverse', /\breverse lever/i],
  ['steam-automatic', /\bautomatic\b/i],
  ['fuel-electric-pump', /\bmotor fuel pump/i],
] as const;

/** The text of a spec without its remarks. */
export function ownWords(spec: string): string {
  return spec.replace(/(^|\s)#.*$/gm, '');
}

/** A text without what it says the car has not got: `there is no pilot`. */
function withoutDenials(words: string): string {
  return words.replace(/\bthere is no (pilot|water glass)\b/gi, '');
}

/** Where a text speaks of a kind of part that the car has not got and does not itself speak of, but to say that it has none. */
export function strangeTerms(words: string, { car }: ReadyCar, spec: string): readonly string[] {
  const own = ownWords(spec);
  const said = withoutDenials(words);
  return terms.flatMap(([duty, term]) => {
    const found = term.exec(said);
    if ((duties[duty]?.parts(car).length ?? 0) > 0 || found === null || term.test(own)) return [];
    return [`${duty}: …${said.slice(Math.max(0, found.index - 60), found.index + 40)}…`];
  });
}

type Wanted = (part: Part, ready: ReadyCar) => boolean;

const kinds = (...list: readonly Part['kind'][]): Wanted => {
  const set = new Set(list);
  return ({ kind }) => set.has(kind);
};

/** Parts that have a duty, all of them or the first alone. */
const withDuty =
  (...names: readonly string[]): Wanted =>
  ({ id }, { car }) =>
    names.some((name) => {
      const [duty = '', first] = name.split(' ');
      const parts = duties[duty]?.parts(car) ?? [];
      return (first === undefined ? parts : parts.slice(0, 1)).includes(id);
    });

const seated = (part: Part, { car }: ReadyCar) => car.places.get(part.place ?? '')?.reach === 'seated';
const read =
  (...ways: readonly string[]): Wanted =>
  ({ id }, { car }) =>
    ways.includes(car.spec.tanks[id]?.read ?? '');

/** Valves worked while burners are lit. */
const lightingValve: Wanted = ({ id, kind }, { proof }) =>
  kind === 'valve' &&
  proof.procedures.some(
    ({ phase, steps }) =>
      ['pilot', 'soak', 'main-burner'].includes(phase) &&
      steps.some(({ part, action }) => part === id && action !== 'read'),
  );

/** What stops everything: every valve that shuts a fire, the throttle and what locks it. */
const stopping = withDuty('fuel-valve', 'throttle', 'throttle-lock', 'parking-brake');

/** Which parts of a car have to stand in which paper. */
export const partsOfPapers: Readonly<Record<string, Wanted>> = {
  'owners-manual': ({ kind }) => kind !== 'outside',
  'docent-guide': kinds('valve', 'gauge', 'tank', 'lock', 'device', 'boiler', 'engine', 'burner'),
  'inspection-sheet': kinds('valve', 'gauge', 'tank', 'lock', 'device'),
  'log-sheet': kinds('tank', 'gauge'),
  'card-valve-positions': kinds('valve'),
  'valve-tags': kinds('valve'),
  dipsticks: read('stick'),
  'visiting-driver': (part, ready) =>
    withDuty('level-steaming first')(part, ready) ||
    (seated(part, ready) && kinds('valve', 'gauge', 'lock', 'control')(part, ready)),
  'card-burner-front': (part, ready) => part.kind === 'burner' || lightingValve(part, ready),
  'card-before-the-fire': (part, ready) =>
    kinds('tank', 'burner')(part, ready) ||
    withDuty('fuel-valve', 'throttle', 'throttle-lock', 'level-cold', 'steam-gauge first')(part, ready),
  'card-cold-start': (part, ready) =>
    part.kind === 'burner' ||
    lightingValve(part, ready) ||
    withDuty('throttle', 'throttle-lock', 'drips', 'level-steaming', 'steam-gauge first')(part, ready),
  'card-running': (part, ready) =>
    withDuty(
      'throttle',
      'throttle-lock',
      'drips',
      'level-steaming first',
      'steam-gauge first',
    )(part, ready) ||
    (seated(part, ready) && withDuty('road-bypass', 'main-hand-valve')(part, ready)),
  'card-filling-up': withDuty('water-tank', 'filled-tank'),
  'card-shutting-down': withDuty(
    'throttle',
    'throttle-lock',
    'drips',
    'fuel-valve',
    'blow-down',
    'level-steaming first',
    'steam-gauge first',
  ),
  'card-shut-everything': stopping,
  'card-frost': withDuty(
    'boiler',
    'open-when-drained',
    'water-tank',
    'water-strainer',
    'feed-heater',
    'condenser',
    'muffler',
    'feed-engine-pump',
    'standing-pump',
    'transfer-pump',
    'oil-tank',
    'throttle',
    'steam-gauge first',
  ),
  'card-something-is-wrong': (part, ready) =>
    stopping(part, ready) || withDuty('level-steaming first', 'steam-gauge first')(part, ready),
  'card-for-the-dark': (part, ready) =>
    withDuty('throttle', 'throttle-lock', 'level-steaming first', 'steam-gauge first')(part, ready) ||
    (seated(part, ready) && withDuty('fuel-valve')(part, ready)),
};

/** White space made nothing, so that a name broken over two lines is found. */
const close = (text: string) => text.toLowerCase().replace(/[\s\u00a0]+/g, '');

/** Papers that call parts by their names alone. */
const withoutTags: ReadonlySet<string> = new Set(['card-for-the-dark']);

/** Names and tags of parts that should stand in a paper and do not. */
export function missingParts(words: string, ready: ReadyCar, paper: string): readonly string[] {
  const text = close(words);
  const wanted = partsOfPapers[paper] ?? (() => false);
  return [...ready.car.parts.values()]
    .filter((part) => wanted(part, ready))
    .flatMap(({ name, tag }) => [name, ...(tag === undefined || withoutTags.has(paper) ? [] : [tag])])
    .filter((each) => !text.includes(close(each)));
}
