/** The glossary and the signs of faults. */
import { describe, expect, test } from 'vitest';
import { entriesFor, readFaults, readGlossary } from '../../src/procedure/reference';
import { demoCar } from '../cars/demo';
import { sharedText } from './shared';

function glossary() {
  const outcome = readGlossary(sharedText('glossary.yaml'), 'glossary.yaml');
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

function faults() {
  const outcome = readFaults(sharedText('faults.yaml'), 'faults.yaml');
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

describe('the glossary', () => {
  test('has about fifty words in alphabetical order', () => {
    const terms = glossary().map((entry) => entry.term);
    expect(terms.length).toBeGreaterThanOrEqual(48);
    const sorted = [...terms].sort((a, b) =>
      a.replace(/[ -]/g, '').localeCompare(b.replace(/[ -]/g, ''), 'en'),
    );
    expect(terms).toEqual(sorted);
  });

  test('gives each a meaning of one or two sentences', () => {
    const long = glossary().filter(
      (entry) => entry.meaning.split(/[.:] [A-Z]/).length > 2 || !entry.meaning.endsWith('.'),
    );
    expect(long.map((entry) => entry.term)).toEqual([]);
  });

  test('leaves out what a car has not got', () => {
    const terms = (name: string) => entriesFor(demoCar(name), glossary()).map((entry) => entry.term);
    expect(terms('marigold')).toEqual(
      expect.arrayContaining(['pilot', 'starting branch', 'soak', 'pressure tank']),
    );
    expect(terms('heron')).not.toContain('pilot');
    expect(terms('heron')).toContain('coil boiler');
    expect(terms('marigold')).not.toContain('coil boiler');
  });

  test('a word explained twice is told, with its line', () => {
    const outcome = readGlossary(
      'words:\n  - { term: Feed, meaning: Water. }\n  - { term: feed, meaning: Water again. }\n',
      'g.yaml',
    );
    expect(outcome.ok ? [] : outcome.problems.map((problem) => [problem.code, problem.at?.line])).toEqual([
      ['library-twice', 3],
    ]);
  });
});

describe('the faults', () => {
  test('cover pilot, main burner, fuel, steam, water and engine', () => {
    expect([...new Set(faults().map((fault) => fault.where))]).toEqual([
      'Pilot',
      'Main burner',
      'Electrics',
      'Fuel',
      'Steam',
      'Water',
      'Engine',
      'Running gear',
    ]);
  });

  test('each has causes, something to do and something not to do', () => {
    const bare = faults().filter(
      (fault) => fault.causes.length === 0 || fault.do.length === 0 || fault.never.length === 0,
    );
    expect(bare.map((fault) => fault.id)).toEqual([]);
    expect(
      faults()
        .flatMap((fault) => fault.never)
        .filter((text) => !/^Do not /.test(text)),
    ).toEqual([]);
    expect(
      faults()
        .flatMap((fault) => [fault.seen, ...fault.do])
        .filter((text) => !text.endsWith('.')),
    ).toEqual([]);
  });

  test('a car without a pilot has no faults of one', () => {
    const where = (name: string) => new Set(entriesFor(demoCar(name), faults()).map((fault) => fault.where));
    expect(where('heron').has('Pilot')).toBe(false);
    expect(where('thimble').has('Pilot')).toBe(true);
  });

  test('a condition on a duty that does not exist is told, with the nearest', () => {
    const text =
      'faults:\n  - { id: a, where: Pilot, seen: X., causes: [y], do: [Z.], never: [Do not w.], when: { has: { duty: pilott } } }\n';
    const outcome = readFaults(text, 'f.yaml');
    expect(
      outcome.ok ? [] : outcome.problems.map((problem) => [problem.code, problem.expected, problem.at?.line]),
    ).toEqual([['library-unknown', '`pilot`', 2]]);
  });
});
