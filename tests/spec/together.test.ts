/** What holds for every spec, whole or spoiled: nothing is thrown, everything is told at once, in order, inside the file. */
import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { catalogue } from '../../src/diagnostic/catalogue';
import { hasErrors } from '../../src/diagnostic/diagnostic';
import { loadTiny, spoiled, tinySpec } from '../helpers/tinySpec';
import { codesOf } from './told';

/** Codes told by later stages, which look at more than the file. */
const elsewhere: readonly string[] = ['spec-no-log'];

describe('all at once', () => {
  test('faults of fields, names and references in one file, in the order of the file', () => {
    const text = spoiled(
      ['seats: 2', 'seats: two'],
      ['reach: seated', 'reech: seated'],
      ['capacity: 20 US gal', 'capacity: 20 gal'],
      ['tag: F2', 'tag: F1'],
      ['place: dash, kind: dial', 'place: dahs, kind: dial'],
      ['usual-speed: 12 mph\n', 'usual-speed: 12 mph\n  colour: red\n'],
    );
    expect(codesOf(text)).toEqual([
      '11 spec-wrong-type',
      '40 spec-unknown-key',
      '63 spec-quantity',
      '146 spec-name-twice',
      '158 spec-unknown-name',
      '184 spec-unknown-key',
    ]);
  });

  test('contradictions of every kind in one file, in the order of the file', () => {
    const text = spoiled(
      ['letter: A', 'letter: C'],
      ['back: 4 ft', 'back: 40 ft'],
      ['share: 90 %', 'share: 80 %'],
      ['reserve: 4 US gal', 'reserve: 40 US gal'],
      ['kind: extinguisher', 'kind: other'],
      ['burner-cuts-out: 220 psi gauge', 'burner-cuts-out: 260 psi gauge'],
      ['pilot-tank, pilot-valve, pilot-burner', 'pilot-tank, pilot-burner'],
      ['through: [engine, open-air]', 'through: [engine, drip-cock, drip-cock]'],
    );
    expect(codesOf(text)).toEqual([
      '26 spec-order',
      '43 spec-outside-car',
      '54 spec-shares',
      '65 spec-tank',
      '93 spec-lacks',
      '103 spec-pressures',
      '116 spec-lacks',
      '146 spec-off-line',
      '180 spec-line-repeats',
    ]);
  });

  test('a remark comes with the spec and stops nothing', () => {
    const outcome = loadTiny(spoiled(['due: 2027-01-10', 'due: 2026-02-01']));
    expect(outcome.ok && outcome.remarks.map(({ code }) => code)).toEqual(['spec-inspection-due']);
  });

  test('remarks are told along with errors', () => {
    const text = spoiled(['due: 2027-01-10', 'due: 2026-02-01'], ['share: 90 %', 'share: 80 %']);
    expect(codesOf(text)).toEqual(['54 spec-shares', '112 spec-inspection-due']);
  });

  test('every code of the spec group is shown in these tests', () => {
    const folder = new URL('.', import.meta.url);
    const tests = readdirSync(folder)
      .filter((file) => file.endsWith('.test.ts') && file !== 'together.test.ts')
      .map((file) => readFileSync(new URL(file, folder), 'utf8'))
      .join('\n');
    const untold = Object.keys(catalogue).filter(
      (code) =>
        code.startsWith('spec-') &&
        !elsewhere.includes(code) &&
        !new RegExp(`\\d (?:error|remark) ${code} at `).test(tests),
    );
    expect(untold).toEqual([]);
  });
});

/** The tiny spec with something wrong with it, or not: whatever the change comes to. */
const corrupted = fc
  .tuple(
    fc.constantFrom('delete', 'swap', 'letter', 'double', 'cut', 'indent', 'insert'),
    fc.nat(),
    fc.nat(),
    fc.oneof(fc.constantFrom(...':-#&*[]{}"\'|>%@`!?,\t\n\r \u0000\uFEFF'), fc.string({ minLength: 1 })),
  )
  .map(([kind, a, b, letter]) => corrupt(kind, a, b, letter));

function corrupt(kind: string, a: number, b: number, letter: string): string {
  const lines = tinySpec.split('\n');
  const i = a % lines.length;
  const j = b % lines.length;
  const at = a % tinySpec.length;
  switch (kind) {
    case 'delete':
      return lines.toSpliced(i, 1).join('\n');
    case 'swap':
      return lines
        .with(i, lines[j] ?? '')
        .with(j, lines[i] ?? '')
        .join('\n');
    case 'double':
      return lines.toSpliced(j, 0, lines[i] ?? '').join('\n');
    case 'indent':
      return lines.with(i, `  ${lines[i]}`).join('\n');
    case 'cut':
      return tinySpec.slice(0, at);
    case 'insert':
      return `${tinySpec.slice(0, at)}${letter}${tinySpec.slice(at)}`;
    default:
      return `${tinySpec.slice(0, at)}${letter}${tinySpec.slice(at + 1)}`;
  }
}

function expectToldProperly(text: string): void {
  const outcome = loadTiny(text);
  const problems = outcome.ok ? outcome.remarks : outcome.problems;
  expect(hasErrors(problems)).toBe(!outcome.ok);
  const lines = text.replace(/^\uFEFF/, '').split('\n');
  const places = problems.map(({ at }) => ({ line: at?.line ?? 0, column: at?.column ?? 0 }));
  for (const { line, column } of places) {
    expect(line).toBeGreaterThanOrEqual(1);
    expect(line).toBeLessThanOrEqual(lines.length);
    expect(column).toBeGreaterThanOrEqual(1);
    expect(column).toBeLessThanOrEqual((lines[line - 1]?.length ?? 0) + 1);
  }
  const inOrder = places.toSorted((a, b) => a.line - b.line || a.column - b.column);
  expect(places).toEqual(inOrder);
  for (const each of problems) {
    expect(each.message).not.toMatch(/undefined|\[object|NaN/);
    expect(each.mend.length).toBeGreaterThan(0);
  }
}

describe('spoiled at random', () => {
  test('a line from further down that stands at the head: every place is inside the file', () => {
    const lines = tinySpec.split('\n');
    expectToldProperly(corrupt('swap', lines.indexOf('kettlebook: 1'), lines.indexOf('  blend:'), ''));
  });

  test('one change: a spec, or at least one error with a line inside the file', () => {
    fc.assert(fc.property(corrupted, expectToldProperly), { numRuns: 200 });
  });

  test('a value changed for any other value', () => {
    const values = [...tinySpec.matchAll(/(?<=: )[^{}[\],:\n]+(?=[,}\n])/g)];
    expect(values.length).toBeGreaterThan(150);
    const odd = fc.constantFrom(
      '',
      '~',
      'true',
      '-1',
      '0',
      '.nan',
      '1e999',
      '[]',
      '{}',
      '[[]]',
      '{ a: 1 }',
      '__proto__',
      'constructor',
      'toString',
      'dash',
      'boiler',
      'open-air',
      'water',
      '5 psi',
      '2020-01-01',
      '!!str',
      '| ',
      '"x"',
      '9 ft',
    );
    fc.assert(
      fc.property(fc.nat(values.length - 1), odd, (which, value) => {
        const match = values[which];
        const start = match?.index ?? 0;
        expectToldProperly(
          tinySpec.slice(0, start) + value + tinySpec.slice(start + (match?.[0].length ?? 0)),
        );
      }),
      { numRuns: 200 },
    );
  });

  test('any text at all', () => {
    fc.assert(fc.property(fc.string({ maxLength: 200, unit: 'binary' }), expectToldProperly), {
      numRuns: 300,
    });
  });
});

describe('large files', () => {
  /** Milliseconds a file of 10,000 lines may take on a slow machine; it takes about a tenth of that. */
  const patience = 15_000;

  function timed(text: string): { codes: readonly string[]; ms: number } {
    const start = performance.now();
    const codes = codesOf(text);
    return { codes, ms: performance.now() - start };
  }

  test('10,000 places', () => {
    const places = Array.from(
      { length: 10_000 },
      (_, n) => `  place-${n}: { name: place ${n}, at: { back: 1 ft, right: 0 in }, reach: seated }\n`,
    );
    const { codes, ms } = timed(spoiled(['places:\n', `places:\n${places.join('')}`]));
    expect(codes).toEqual([]);
    expect(ms).toBeLessThan(patience);
  });

  test('5,000 valves on 5,000 lines', () => {
    const indices = Array.from({ length: 5_000 }, (_, n) => n);
    const valves = indices.map(
      (n) =>
        `  drain-${n}: { name: drain tap ${n}, tag: D${n}, place: dash, kind: plug, opens: up, parked: shut, does: Drains. }\n`,
    );
    const lines = indices.map((n) => `  - { carries: water, through: [water-tank, drain-${n}, ground] }\n`);
    const text = spoiled(
      ['valves:\n', `valves:\n${valves.join('')}`],
      ['lines:\n', `lines:\n${lines.join('')}`],
    );
    const { codes, ms } = timed(text);
    expect(codes).toEqual([]);
    expect(ms).toBeLessThan(patience);
  });

  test('10,000 faults', () => {
    const places = Array.from({ length: 10_000 }, (_, n) => `  place-${n}: { name: place ${n} }\n`);
    const { codes, ms } = timed(spoiled(['places:\n', `places:\n${places.join('')}`]));
    expect(codes).toHaveLength(20_000);
    expect(ms).toBeLessThan(patience);
  });

  test('10,000 times the same key', () => {
    const { codes, ms } = timed(
      spoiled(['places:\n', `places:\n${'  here: { name: here }\n'.repeat(10_000)}`]),
    );
    expect(codes).toHaveLength(9_999);
    expect(ms).toBeLessThan(patience);
  });

  test('10,000 references to nothing', () => {
    const entry = (n: number) =>
      `  hand-${n}: { name: hand ${n}, place: nowhere-${n}, kind: other, does: Nothing. }\n`;
    const controls = Array.from({ length: 10_000 }, (_, n) => entry(n));
    const { codes, ms } = timed(spoiled(['controls:\n', `controls:\n${controls.join('')}`]));
    expect(codes).toHaveLength(10_000);
    expect(ms).toBeLessThan(patience);
  });
});
