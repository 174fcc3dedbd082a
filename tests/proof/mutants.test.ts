/**
 * The mutation suite: procedures, lines, valves and figures of the demo cars are broken one by one, and the proof has to
 * refuse what is not the same car run in the same way.
 *
 * What passes is named in `docs/proof-survivors.md` with the reason why it does no harm. Run with SURVIVORS=write to make
 * that file anew.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { demoCars } from '../cars/demo';
import { brokenSpecs, refusalOf } from './brokenSpecs';
import { Bench, type Fate, type Mutant } from './mutants';
import { type Reason, reasonFor, reasonForSpec } from './survivors';

interface Tally {
  tried: number;
  same: number;
  refused: number;
  readonly harmless: { readonly what: string; readonly reason: string }[];
  readonly relevant: { readonly what: string; readonly reason: string }[];
}

/** Every broken spec takes a whole proof; in passing one in eight is tried, and all of them when the page is made. */
const all = process.env.SURVIVORS === 'write';

function sampled<T>(list: readonly T[]): readonly T[] {
  return all ? list : list.filter((_, index) => index % 8 === 0);
}

const tallies = new Map<string, Tally>();

function tallyOf(name: string): Tally {
  const tally = tallies.get(name) ?? { tried: 0, same: 0, refused: 0, harmless: [], relevant: [] };
  tallies.set(name, tally);
  return tally;
}

function words(mutant: Mutant): string {
  const instead = mutant.valve === undefined ? '' : `, \`${mutant.valve}\` instead`;
  return `${mutant.kind}: ${mutant.procedure.id}, \`${mutant.step.id}\`${instead}`;
}

function sort(tally: Tally, what: string, reason: Reason): void {
  (reason.harmless ? tally.harmless : tally.relevant).push({ what, reason: reason.why });
}

function count(tally: Tally, mutant: Mutant, fate: Fate): void {
  tally.tried += 1;
  if (fate.is === 'refused') tally.refused += 1;
  else if (fate.is === 'same') tally.same += 1;
  else sort(tally, words(mutant), reasonFor(mutant, fate.differing));
}

/** Refused, of what is neither the same nor harmless. */
function share({ refused, relevant }: Tally): number {
  return refused / (refused + relevant.length);
}

describe.each(demoCars)('%s', (name) => {
  test('at least 95 of 100 broken procedures that matter are refused', () => {
    const bench = new Bench(name);
    const tally = tallyOf(`${name}: procedures`);
    for (const mutant of bench.mutants()) count(tally, mutant, bench.fate(mutant));
    expect(tally.tried).toBeGreaterThan(800);
    expect(tally.refused).toBeGreaterThan(150);
    expect(share(tally)).toBeGreaterThanOrEqual(0.95);
  }, 400_000);

  test('at least 95 of 100 broken lines, valves and figures that matter are refused', () => {
    const tally = tallyOf(`${name}: lines, valves and figures`);
    for (const broken of sampled(brokenSpecs(name))) {
      tally.tried += 1;
      if (refusalOf(name, broken) === undefined)
        sort(tally, `${broken.kind}: ${broken.what}`, reasonForSpec(broken));
      else tally.refused += 1;
    }
    expect(tally.tried).toBeGreaterThan(all ? 100 : 15);
    expect(share(tally)).toBeGreaterThanOrEqual(0.95);
  }, 400_000);
});

test('what passes is listed with its reason', () => {
  const path = new URL('../../docs/proof-survivors.md', import.meta.url);
  if (all) writeFileSync(path, page());
  const listed = readFileSync(path, 'utf8');
  for (const tally of tallies.values())
    for (const { what } of [...tally.relevant, ...tally.harmless]) expect(listed).toContain(what);
});

function page(): string {
  const rows = [...tallies].map(
    ([name, tally]) =>
      `| ${name} | ${tally.tried} | ${tally.same} | ${tally.refused} | ${tally.harmless.length} | ${tally.relevant.length} | ${(100 * share(tally)).toFixed(1)} % |`,
  );
  const lists = [...tallies].flatMap(([name, tally]) => [
    `## ${name}`,
    '',
    ...listOf('Passes and matters', tally.relevant),
    ...listOf('Passes and does no harm', tally.harmless),
  ]);
  return [
    '# Broken on purpose, and not refused',
    '',
    'Made by `SURVIVORS=write npx vitest run tests/proof/mutants.test.ts`. Every step of every demo car’s procedures is dropped, swapped with',
    'the next, repeated, done to a wrong valve, robbed of its cautions or of its minutes; parts are taken out of lines, swapped and left out;',
    'parked positions are turned round; pressures are doubled and halved. A mutant counts as *the same* if the procedure then leaves the car in',
    'just the states that the right one leaves it in and breaks nothing on the way: what was changed decides nothing that the model holds.',
    '',
    '| car | tried | the same | refused | harmless | matters | refused of what matters |',
    '| --- | --- | --- | --- | --- | --- | --- |',
    ...rows,
    '',
    ...lists,
  ].join('\n');
}

function listOf(
  title: string,
  found: readonly { readonly what: string; readonly reason: string }[],
): readonly string[] {
  if (found.length === 0) return [];
  const byReason = new Map<string, string[]>();
  for (const { what, reason } of found) byReason.set(reason, [...(byReason.get(reason) ?? []), what]);
  return [
    `### ${title}`,
    '',
    ...[...byReason].flatMap(([reason, whats]) => [
      `${reason[0]?.toUpperCase() ?? ''}${reason.slice(1)}:`,
      '',
      ...whats.map((what) => `- ${what}`),
      '',
    ]),
  ];
}
