import { describe, expect, test } from 'vitest';
import { compareIssues } from '../../src/compare/compare';
import type { Change } from '../../src/compare/comparison';
import { reprintSlip } from '../../src/compare/reprintSlip';
import { tellComparison } from '../../src/compare/told';
import { makePapers, setOnePaper, worldOf } from '../../src/kettlebook';
import { carFrom, demo, goodOf, specText, workshop } from '../whole/made';
import { changed, changesTo, compared, edited, nextIssue } from './issues';

const plain = (text: string) => text.replaceAll('\u00a0', ' ');
const inShort = ({ group, kind, what, was, is }: Change) => plain(`${group} ${kind} ${what}: ${was} > ${is}`);
const ofCar = (changes: readonly Change[]) =>
  changes.filter(({ group }) => group !== 'step' && group !== 'figure').map(inShort);

describe('what changed', () => {
  test('nothing but the issue: no change, and every paper reads the same but for it', async () => {
    const { comparison, remarks } = await compared([]);
    expect(comparison.changes).toEqual([]);
    expect(remarks).toEqual([]);
    expect(new Set(comparison.papers.map(({ fate }) => fate))).toEqual(new Set(['issue']));
    for (const { was, is } of comparison.papers) expect(was).not.toBe(is);
  });

  test('the same spec twice: the same papers, by their fingerprints', async () => {
    const { comparison, remarks } = await compared([], []);
    expect(remarks).toEqual([]);
    expect(comparison.papers.every(({ fate, was, is }) => fate === 'same' && was === is)).toBe(true);
  });

  test('an equal amount in other units is no change', async () => {
    // 1 US gal is 8 US pt, 1 ft is 12 in, by definition (NIST Handbook 44, Appendix C)
    const { comparison } = await compared([
      ['capacity: 14 US gal', 'capacity: 112 US pt'],
      ['length: 7 ft 6 in', 'length: 90 in'],
    ]);
    expect(comparison.changes).toEqual([]);
    expect(comparison.papers.filter(({ fate }) => fate !== 'issue')).toEqual([]);
  });

  test('a value, by the name that is printed, in the keeper’s units', async () => {
    const changes = await changed([['reserve: 1.5 US gal', 'reserve: 2 US gal']]);
    expect(ofCar(changes)).toEqual([
      'value changed water tank: reserve: 1.5 US gal (5.7 L) > 2 US gal (7.6 L)',
    ]);
    const groups = new Set(changes.map(({ group }) => group));
    expect(groups).toContain('step');
    expect(groups).toContain('figure');
  });

  test('an estimate that was measured since', async () => {
    const changes = await changed([['unusable: about 0.7 US gal', 'unusable: 0.7 US gal']]);
    expect(ofCar(changes)).toEqual([
      'value changed water tank: unusable: about 0.7 US gal (2.6 L) > 0.7 US gal (2.6 L)',
    ]);
  });

  test('two amounts that print alike are told as they were written', async () => {
    const changes = await changed([['mass-empty: about 850 lb', 'mass-empty: about 850.01 lb']]);
    expect(ofCar(changes)).toEqual(['value changed running: mass empty: about 850 lb > about 850.01 lb']);
  });

  test('a row of a table of readings, known by its depth', async () => {
    const changes = await changed([
      ['{ depth: 3 5/8 in, volume: 6 US gal }', '{ depth: 3 5/8 in, volume: 6.1 US gal }'],
    ]);
    expect(ofCar(changes)).toEqual([
      'value changed water tank: stick 3 5/8 in (92 mm) volume: 6 US gal (23 L) > 6.1 US gal (23 L)',
    ]);
  });

  test('a valve: its way, its turns, how it is parked, each by itself', async () => {
    const changes = await changed([
      ['turns: 1 1/2 turns\n    first-crack: 1/4 turn', 'turns: 2 1/2 turns\n    first-crack: 1/4 turn'],
    ]);
    expect(ofCar(changes)).toEqual(['valve changed main burner valve: turns: 1 1/2 turns > 2 1/2 turns']);
  });

  test('a part that has another name, tag or place', async () => {
    const changes = await changed([
      ['name: upper try cock\n    tag: W5', 'name: high try cock\n    tag: W25'],
      ['place: tiller-post\n    locks', 'place: toe-board\n    locks'],
    ]);
    expect(ofCar(changes)).toEqual([
      'part renamed high try cock: name: upper try cock > high try cock',
      'part renamed high try cock: tag: W5 > W25',
      'part moved throttle lock: place: tiller post, between driver and passenger > toe board, in front of the feet',
    ]);
  });

  test('a part that has only another key is the same part', async () => {
    const text = specText('thimble').replaceAll('water-tank-drain-cock', 'tank-emptying-cock');
    expect(await changesTo(edited(text, nextIssue))).toEqual([]);
  });

  test('a part added, with its pipe, and one that is gone', async () => {
    const changes = await changed([
      [
        '  water-strainer:\n    name: water strainer',
        '  second-strainer: { name: second strainer, place: water-tank-foot, kind: strainer }\n  water-strainer:\n    name: water strainer',
      ],
      [
        'through: [water-tank, water-tank-valve, water-strainer, feed-pump',
        'through: [water-tank, water-tank-valve, second-strainer, water-strainer, feed-pump',
      ],
      [
        '  spare-glass:\n    name: spare gauge glass with packings, its wrench and goggles\n    kind: spare\n    place: tool-roll\n',
        '',
      ],
    ]);
    expect(ofCar(changes)).toEqual([
      'part removed spare gauge glass with packings, its wrench and goggles: tool tray under the floor mat > ',
      'part added second strainer:  > under the water tank, behind the rear axle',
      'line changed feed: … → water tank valve → water strainer → … > … → water tank valve → second strainer → water strainer → …',
    ]);
  });
});

describe('steps', () => {
  test('one that the keeper added, and one that reads otherwise', async () => {
    const changes = await changed([['say: Every half minute, read', 'say: Every furlong, read']]);
    const steps = changes.filter(({ group }) => group === 'step').map(inShort);
    expect(steps).toHaveLength(1);
    expect(steps[0]).toMatch(
      /^step changed On the road, step \d+: Every half minute, read .* > Every furlong, read/,
    );
  });

  test('one that was moved is told as moved, and only that one', async () => {
    const changes = await changed([
      [
        '    move: extinguisher-out\n    before: smell-round',
        '    move: extinguisher-out\n    after: smell-round',
      ],
    ]);
    const steps = changes.filter(({ kind }) => kind === 'reordered');
    expect(steps).toHaveLength(1);
    expect(changes.filter(({ group }) => group === 'step')).toHaveLength(1);
  });

  test('one that is gone', async () => {
    const text = specText('thimble');
    const added = text.slice(text.indexOf('  - in: running\n    add:'));
    const changes = await changed([[added, '']]);
    expect(changes.map(inShort).filter((each) => each.startsWith('step removed'))).toEqual([
      expect.stringContaining('On the road, reasons: Nothing on this car puts the fire out'),
      expect.stringContaining('Every half minute, read the water glass aloud from the mirror.'),
    ]);
  });
});

describe('papers', () => {
  test('only those that say something else are to be printed again; the headings say where', async () => {
    const { comparison } = await compared([['telephone: +1 000 555 0137', 'telephone: +1 000 555 0138']]);
    const changed = comparison.papers.filter(({ fate }) => fate === 'changed');
    expect(changed.map(({ name }) => name)).toContain('owners-manual');
    expect(changed.find(({ name }) => name === 'owners-manual')?.laminated).toBe(false);
    expect(comparison.papers.find(({ name }) => name === 'range-table')?.fate).toBe('issue');
  });

  test('a card on other paper is another card, though it says the same', async () => {
    const { comparison } = await compared([['card: index-5x8', 'card: half-letter']]);
    expect(comparison.papers.find(({ name }) => name === 'card-cold-start')?.fate).toBe('changed');
  });

  test('the fingerprints are those on the papers themselves', async () => {
    const { comparison } = await compared([['reserve: 1.5 US gal', 'reserve: 2 US gal']]);
    const shop = await workshop();
    const ready = await demo('thimble');
    const paper = shop.papers.find(({ name }) => name === 'range-table');
    if (paper === undefined) throw new Error('there is no range table');
    const row = comparison.papers.find(({ name }) => name === 'range-table');
    expect(row?.was).toBe(goodOf(setOnePaper(ready, paper, shop)).fingerprint);
    expect(row?.fate).toBe('changed');
    expect(row?.laminated).toBe(true);
  });
});

describe('refused', () => {
  test('two cars', async () => {
    const shop = await workshop();
    const papers = { before: shop.papers, after: shop.papers };
    const [one, other] = [await demo('thimble'), await demo('heron')];
    const outcome = compareIssues(worldOf(one, shop), worldOf(other, shop), papers);
    expect(outcome.ok ? [] : outcome.problems.map(({ code }) => code)).toEqual(['compare-other-car']);
  });

  test('a letter that was kept is told, with its line; so are issues named the wrong way round', async () => {
    const kept = await compared([['reserve: 1.5 US gal', 'reserve: 2 US gal']], []);
    expect(kept.remarks.map(({ code, severity }) => `${severity} ${code}`)).toEqual([
      'error compare-letter-kept',
    ]);
    expect(kept.remarks[0]?.at?.line).toBe(specText('thimble').split('\n').indexOf('  letter: B') + 1);
    const turned = await compared([], [['letter: B\n  date: 2026-02-07', 'letter: C\n  date: 2025-06-01']]);
    expect(turned.remarks.map(({ code }) => code)).toEqual(['compare-order']);
  });
});

describe('the slip', () => {
  test('is one page for an ordinary change, names every paper that changed with both fingerprints, and every change', async () => {
    const { comparison } = await compared([['reserve: 1.5 US gal', 'reserve: 2 US gal']]);
    const shop = await workshop();
    const after = goodOf(
      await carFrom(
        edited(specText('thimble'), [...nextIssue, ['reserve: 1.5 US gal', 'reserve: 2 US gal']]),
      ),
    );
    const slip = goodOf(setOnePaper(after, reprintSlip(shop.plans.papers['reprint-slip'], comparison), shop));
    const words = slip.laidOut.pages
      .flatMap(({ items }) => items.flatMap((item) => (item.kind === 'text' ? [item.text] : [])))
      .join(' ')
      .replace(/[\s\u00a0]+/g, '');
    expect(slip.laidOut.pages).toHaveLength(1);
    for (const paper of comparison.papers.filter(({ fate }) => fate === 'changed')) {
      expect(words).toContain(paper.was);
      expect(words).toContain(paper.is);
      expect(words).toContain(paper.title.replace(/\s/g, ''));
    }
    for (const { was, is } of comparison.changes) {
      expect(words).toContain(was.replace(/[\s\u00a0]+/g, ''));
      expect(words).toContain(is.replace(/[\s\u00a0]+/g, ''));
    }
    const written: string[] = [];
    goodOf(
      await makePapers(
        after,
        [reprintSlip(shop.plans.papers['reprint-slip'], comparison)],
        shop,
        ({ fileName }) => void written.push(fileName),
      ),
    );
    expect(written).toEqual(['reprint-slip.pdf']);
  });

  test('the terminal is told the same', async () => {
    const { comparison } = await compared([['reserve: 1.5 US gal', 'reserve: 2 US gal']]);
    const told = tellComparison(comparison);
    expect(told).toContain('water tank: reserve: 1.5 US gal (5.7 L) → 2 US gal (7.6 L)');
    expect(told).toMatch(/Fuel and water range: destroy \S+·\S+, print \S+·\S+/);
    expect(told).toMatch(/Cold start: reads the same but for its issue/);
    const [, old = ''] = /^To destroy: (.*)\.$/m.exec(told) ?? [];
    const destroyed = [...told.matchAll(/^ {2}(.+): destroy /gm)].map(([, title]) => title);
    expect(old).toBe(destroyed.join(', '));
    expect(told).toMatch(/^To print: .*Owner’s manual/m);
  });
});
