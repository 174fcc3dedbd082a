/**
 * Finding the unit a keeper meant from the letters written.
 */
import { editDistance } from '../diagnostic/nearest';
import type { Dimension } from './dimension';
import type { Unit } from './unit';
import { units } from './units';

/** One form for all ways to write the same letters: spaces, `per`, capitals and closing dots do not count. */
export function plainSpelling(text: string): string {
  return text
    .normalize('NFC')
    .replace(/[\u00a0\u2007\u202f\s]+/g, ' ')
    .trim()
    .replace(/\s*(?:\/|\bper\b)\s*/gi, '/')
    .replace(/º/g, '°')
    .replace(/° /g, '°')
    .toLowerCase()
    .replace(/\.$/, '');
}

type SpellingMap = ReadonlyMap<string, Unit>;

function spellingsOf(list: readonly Unit[]): SpellingMap {
  const map = new Map<string, Unit>();
  for (const unit of list) {
    for (const word of [unit.name, unit.printed, ...unit.also]) {
      const key = word === undefined ? '' : plainSpelling(word);
      if (key !== '' && !map.has(key)) map.set(key, unit);
    }
  }
  return map;
}

/** `psi` alone prints for gauge pressure but is not read: the keeper must say which it is. */
function withoutBarePressures(map: SpellingMap): SpellingMap {
  return new Map([...map].filter(([word]) => !['psi', 'bar', 'kpa', 'mpa', 'pa', 'atm'].includes(word)));
}

const maps = new Map<Dimension, SpellingMap>();

/** Every spelling that is read for `dimension`. */
export function spellings(dimension: Dimension): SpellingMap {
  const known = maps.get(dimension);
  if (known) return known;
  const all = spellingsOf(units[dimension]);
  const map = dimension === 'gaugePressure' ? withoutBarePressures(all) : all;
  maps.set(dimension, map);
  return map;
}

/** The unit of `dimension` written as `text`, if there is one. */
export function findUnit(dimension: Dimension, text: string): Unit | undefined {
  return spellings(dimension).get(plainSpelling(text));
}

/** No unit is written longer than this, so nothing longer is near one. */
const longestSpelling = 40;

/** The spelling of a unit of `dimension` nearest to `text`, if one is near enough to be meant. */
export function nearestUnit(dimension: Dimension, text: string): Unit | undefined {
  const wanted = plainSpelling(text);
  if (wanted.length > longestSpelling) return undefined;
  let best: { unit: Unit; edits: number } | undefined;
  for (const [word, unit] of spellings(dimension)) {
    const edits = editDistance(wanted, word);
    if (
      edits <= Math.max(1, Math.floor(word.length / 4)) &&
      edits < word.length &&
      (!best || edits < best.edits)
    ) {
      best = { unit, edits };
    }
  }
  return best?.unit;
}
