import { describe, expect, it } from 'vitest';
import { readCsv } from '../../../src/calc/range/csv';
import { readTripLog, type TripLog } from '../../../src/calc/range/trip-log';
import type { Diagnostic } from '../../../src/diagnostic/diagnostic';

const head = 'date, distance (mi), water used (US gal), fuel used (US gal), terrain, stops, note';

function log(...lines: string[]): TripLog {
  const outcome = readTripLog(lines.join('\n'), 'trips.csv');
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}
function faults(...lines: string[]): readonly Diagnostic[] {
  const outcome = readTripLog(lines.join('\n'), 'trips.csv');
  if (outcome.ok) throw new Error('was read');
  return outcome.problems;
}

describe('a log that is right', () => {
  it('is read in the units of its head', () => {
    const { trips } = log(
      head,
      '2025-06-01, 10, 9.5, 1 1/4, level, 2, "calm, warm"',
      '',
      '2025-06-02,12,,1.3,Hilly,,',
    );
    expect(trips).toEqual([
      {
        line: 2,
        date: '2025-06-01',
        distanceM: expect.closeTo(16093.44, 9),
        waterM3: expect.closeTo(9.5 * 3.785411784e-3, 12),
        fuelM3: expect.closeTo(1.25 * 3.785411784e-3, 12),
        terrain: 'level',
        stops: 2,
        note: 'calm, warm',
      },
      {
        line: 4,
        date: '2025-06-02',
        distanceM: expect.closeTo(19312.128, 9),
        fuelM3: expect.closeTo(1.3 * 3.785411784e-3, 12),
        terrain: 'hilly',
      },
    ]);
  });

  it('may have its columns in another order and other units, and Windows line ends', () => {
    const { trips } = log('terrain,water used (L),distance (km),date\r', 'rolling,40,16,2025-06-01\r');
    expect(trips[0]).toMatchObject({
      terrain: 'rolling',
      waterM3: 0.04,
      distanceM: 16000,
      date: '2025-06-01',
    });
  });

  it('remarks on a trip that stands there twice', () => {
    const outcome = readTripLog(
      [head, '2025-06-01,10,9,1,level,0,', '2025-06-01,10,9,1,level,0,'].join('\n'),
      'trips.csv',
    );
    expect(outcome).toMatchObject({
      ok: true,
      remarks: [{ code: 'log-doubtful', severity: 'remark', at: { line: 3 } }],
    });
  });
});

describe('logs as spreadsheets save them', () => {
  it('a mark of byte order, Windows line ends, blank lines and spaces change nothing', () => {
    const plain = log(head, '2025-06-01,10,9,1,level,0,', '2025-06-02,12,10,1,hilly,1,').trips;
    const saved = log(
      `\uFEFF${head}\r`,
      '\r',
      '2025-06-01 , 10 , 9 , 1 , LEVEL , 0 , \r',
      ' , , , , , , \r',
      '2025-06-02,12,10,1,hilly,1,\r',
      '',
    ).trips;
    expect(saved.map(({ line: _, ...trip }) => trip)).toEqual(plain.map(({ line: _, ...trip }) => trip));
  });

  it('semicolons are not guessed at: told at the head, with what to do', () => {
    const problems = faults('date;distance (km);water used (L);terrain', '2025-06-01;10,5;9,25;level');
    expect(problems).toMatchObject([{ code: 'log-form', at: { line: 1 } }]);
    expect(problems[0]?.mend).toContain('comma-separated');
  });

  it.each(['"10,5"', '"1.234,5"', '10.5.1', '1e9999', '−10', '-10', 'NaN', '10 km'])(
    'a number written %s is refused at its place, never read as another number',
    (written) => {
      const problems = faults('date,distance (km),water used (L),terrain', `2025-06-01,${written},9,level`);
      expect(problems.map(({ code }) => code)).toContain('log-value');
      expect(problems[0]?.at?.line).toBe(2);
    },
  );

  it('10,000 trips', () => {
    const lines = Array.from({ length: 10_000 }, (_, i) => `2025-06-01,${10 + (i % 7)},9,1,level,0,${i}`);
    expect(log(head, ...lines).trips).toHaveLength(10_000);
  });
});

describe('a log with faults', () => {
  it('tells all of them at once, each at its place', () => {
    const problems = faults(
      head,
      '2025-02-30, 10, 9, 1, level, 0',
      '2025-06-01, 10 mi, 9, 1, lvel, 0.5',
      '2025-06-01, , 9, 1, level, 0, a, b',
    );
    expect(problems.map(({ code, at }) => [code, at?.line, at?.column])).toEqual([
      ['log-value', 2, 1],
      ['log-value', 3, 13],
      ['log-value', 3, 26],
      ['log-value', 3, 32],
      ['log-form', 4, 34],
      ['log-value', 4, 1],
    ]);
    expect(problems[1]?.mend).toContain('only the number');
    expect(problems[2]?.mend).toContain('`level`');
  });

  it.each([
    ['no unit', 'date, distance, water used (US gal), terrain', '`distance (mi)`'],
    ['a gallon of no country', 'date, distance (mi), water used (gal), terrain', '`water used (US gal)`'],
    ['an unknown column', 'date, distance (mi), water used (US gal), terain', '`terrain`'],
    ['a column missing', 'date, water used (US gal), terrain', 'add the column'],
    ['no use at all', 'date, distance (mi), terrain', '`water used (US gal)`'],
    ['a column twice', 'date, date, distance (mi), water used (L), terrain', 'take one out'],
  ])('head: %s', (_, text, mend) => {
    const problems = faults(text);
    expect(problems.every((problem) => problem.code === 'log-head')).toBe(true);
    expect(problems.map((problem) => problem.mend).join(' | ')).toContain(mend);
  });

  it('an empty log, a quote not closed, a trip of no length', () => {
    expect(faults('')[0]?.code).toBe('log-form');
    expect(faults('date;distance (km);water used (L);terrain')).toMatchObject([{ code: 'log-form' }]);
    expect(faults(head, '2025-06-01,10,9,1,level,0,"oh')[0]).toMatchObject({
      code: 'log-form',
      at: { line: 2 },
    });
    expect(faults(head, '2025-06-01,0,9,1,level,0')[0]?.message).toContain('no length');
  });
});

describe('comma-separated text (RFC 4180)', () => {
  it('reads quotes, doubled quotes and line ends within quotes, and knows where cells stand', () => {
    const table = readCsv('a,"b ""x"", y"\n"two\nlines",d\n');
    if (!table.ok) throw new Error(table.why);
    expect(table.rows.map((row) => row.map((cell) => cell.text))).toEqual([
      ['a', 'b "x", y'],
      ['two\nlines', 'd'],
    ]);
    expect(table.rows[1]?.map(({ line, column }) => [line, column])).toEqual([
      [2, 1],
      [3, 8],
    ]);
  });
});
