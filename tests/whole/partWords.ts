/** What a paper says of parts: its words, and those for parts that its car has not got. */
import type { ReadyCar } from '../../src/kettlebook';
import type { SetPaper } from '../../src/paper/paper';
import { duties } from '../../src/procedure/duties';

/** The words of a paper in the order they were placed, with white space made even. */
export function wordsOfPaper({ laidOut }: Pick<SetPaper, 'laidOut'>): string {
  return laidOut.pages
    .flatMap(({ items }) => items.flatMap((item) => (item.kind === 'text' ? [item.text] : [])))
    .join(' ')
    .replace(/[\s\u00a0]+/g, ' ');
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

/** Where a text speaks of a kind of part that the car has not got and does not itself speak of. */
export function strangeTerms(words: string, { car }: ReadyCar, spec: string): readonly string[] {
  const own = ownWords(spec);
  return terms.flatMap(([duty, term]) => {
    const found = term.exec(words);
    if ((duties[duty]?.parts(car).length ?? 0) > 0 || found === null || term.test(own)) return [];
    return [`${duty}: …${words.slice(Math.max(0, found.index - 60), found.index + 40)}…`];
  });
}
