/** Which units of a paper read otherwise than before, and after which of them something is gone. */
import type { ChangeMark } from '../markup/block';
import { bestPairs, commonPairs } from './alignment';
import type { Unit } from './units';

/** Two units that share at least this much of their words are one unit, worded otherwise. */
const leastShared = 0.5;

/** For each unit of `is`, the unit of `was` that it is; undefined for one that is new. In the order of both. */
export function partnersOf(was: readonly Unit[], is: readonly Unit[]): readonly (number | undefined)[] {
  const key = ({ kind, section, says }: Unit) => [kind, section, says].join('\u0000');
  const same = commonPairs(was.map(key), is.map(key));
  const partners: (number | undefined)[] = is.map(() => undefined);
  const bags = { was: was.map(() => undefined), is: is.map(() => undefined) };
  const gain = likeness(was, is, bags);
  let [oldFrom, newFrom] = [0, 0];
  for (const [old, now] of [...same, [was.length, is.length] as const]) {
    for (const [one, other] of bestPairs({ was: [oldFrom, old], is: [newFrom, now] }, gain))
      partners[other] = one;
    if (now < is.length) partners[now] = old;
    [oldFrom, newFrom] = [old + 1, now + 1];
  }
  return partners;
}

/** The mark of each unit of `is`; undefined for one that reads as before and has nothing taken out after it. */
export function changeMarks(was: readonly Unit[], is: readonly Unit[]): readonly (ChangeMark | undefined)[] {
  const partners = partnersOf(was, is);
  const kept = new Set(partners);
  const goneAfter = new Set<number>();
  let goneFirst = false;
  let previous = -1;
  let next = 0;
  const pass = (upTo: number) => {
    for (; next < upTo; next += 1) {
      if (kept.has(next)) continue;
      if (previous === -1) goneFirst = true;
      else goneAfter.add(previous);
    }
  };
  partners.forEach((partner, index) => {
    if (partner !== undefined) pass(partner);
    if (partner !== undefined) previous = index;
  });
  pass(was.length);
  return is.map((unit, index) => {
    const partner = partners[index];
    const old = partner === undefined ? undefined : was[partner];
    const changed = old?.says !== unit.says || (goneFirst && index === 0);
    const mark = { changed, goneAfter: goneAfter.has(index) };
    return mark.changed || mark.goneAfter ? mark : undefined;
  });
}

type Bag = ReadonlyMap<string, number>;

/** How alike two units are: 2 if they say the same, the share of words in common if that is enough, or else 0. */
function likeness(
  was: readonly Unit[],
  is: readonly Unit[],
  bags: { readonly was: (Bag | undefined)[]; readonly is: (Bag | undefined)[] },
): (one: number, other: number) => number {
  return (one, other) => {
    const [old, now] = [was[one], is[other]];
    if (old === undefined || now === undefined || old.kind !== now.kind) return 0;
    if (old.says === now.says) return 2;
    bags.was[one] ??= bagOf(old);
    bags.is[other] ??= bagOf(now);
    const share = shared(bags.was[one], bags.is[other]);
    return share >= leastShared ? share : 0;
  };
}

function bagOf({ words }: Unit): Bag {
  const bag = new Map<string, number>();
  for (const word of words.split(/\s+/)) bag.set(word, (bag.get(word) ?? 0) + 1);
  return bag;
}

/** Twice what both have, over what they have together (L. R. Dice, Ecology 26 (1945) 297). */
function shared(one: Bag, other: Bag): number {
  let both = 0;
  for (const [word, times] of one) both += Math.min(times, other.get(word) ?? 0);
  const size = (bag: Bag) => [...bag.values()].reduce((sum, times) => sum + times, 0);
  return (2 * both) / (size(one) + size(other));
}
