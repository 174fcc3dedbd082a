import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeEach, describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { newCar } from '../../src/cli/new';
import { judge } from '../../src/newcar/answer';
import type { Question } from '../../src/newcar/questions';
import { fillIn, questionsFor } from '../../src/newcar/skeleton';
import { carFrom, inWords, root } from '../whole/made';
import { replyTo } from './replies';
import { asking, replies, skeletonOf } from './skeletons';

const kinds = asking.kinds.map(({ key }) => key);

describe.each(kinds)('%s', (kind) => {
  const skeleton = skeletonOf(kind);

  test('answered in full, it passes every check, the proof with it', async () => {
    const outcome = await carFrom(fillIn(skeleton, asking.questions, replies(kind)));
    expect(
      outcome.ok ? [] : outcome.problems.filter(({ severity }) => severity === 'error').map(inWords),
    ).toEqual([]);
  });

  test('every mark in it has a question, and nothing unanswered is made up', () => {
    const text = fillIn(skeleton, asking.questions, new Map());
    expect(text).not.toMatch(/<[a-z-]+>/);
    const marks = skeleton.match(/<[a-z0-9-]+>/g) ?? [];
    expect(marks.length).toBeGreaterThan(50);
    expect(text.match(/# not answered: /g)).toHaveLength(marks.length);
  });

  test('no amount stands in it but those of the reader’s eye and of a whole', () => {
    const amounts = skeleton
      .split('\n')
      .filter((line) => !line.startsWith('#') && /: *-?\d/.test(line))
      .map((line) => line.trim());
    expect(new Set(amounts)).toEqual(
      new Set([
        'kettlebook: 1',
        'dash: 28 in',
        'lap: 18 in',
        'wall: 5 ft',
        ...(skeleton.includes('share: 100 %') ? ['share: 100 %'] : []),
      ]),
    );
  });

  test('one answer left out is told by check, at its place or at what it belongs to', async () => {
    const given = replies(kind);
    given.delete('working-pressure');
    const outcome = await carFrom(fillIn(skeleton, asking.questions, given));
    expect(
      outcome.ok ? [] : outcome.problems.map(({ code, message }) => `${code} ${message}`).join('\n'),
    ).toContain('working-pressure');
  });
});

test.each(kinds.filter((kind) => !kind.startsWith('monotube')))(
  '%s: the levels of a cold boiler are asked for, and no check stops for them',
  async (kind) => {
    const given = replies(kind);
    for (const key of ['working-level-cold', 'highest-level-cold']) expect(given.delete(key)).toBe(true);
    const text = fillIn(skeletonOf(kind), asking.questions, given);
    expect(text.match(/# not answered: /g)).toHaveLength(2);
    expect((await carFrom(text)).ok).toBe(true);
  },
);

test('an estimate is a share of an answer, marked about and as not measured', () => {
  const given = replies('small-runabout');
  given.delete('water-reserve');
  const text = fillIn(skeletonOf('small-runabout'), asking.questions, given);
  expect(text).toMatch(/reserve: about 4\.00 US gal {4}# estimated, not measured: /);
});

test('a liquid of which nothing is blended in is left out, with all its lines', () => {
  const given = replies('fire-tube-with-pilot');
  given.set('main-share', '100 %').set('gasoline-share', '0 %');
  const text = fillIn(skeletonOf('fire-tube-with-pilot'), asking.questions, given);
  expect(text).toContain('      -\n        liquid: kerosene\n        share: 100 %\n\n');
  expect(text).not.toContain('#?');
  given.set('main-share', '95 %').set('gasoline-share', '05 %');
  expect(fillIn(skeletonOf('fire-tube-with-pilot'), asking.questions, given)).toContain('share: 05 %');
});

test('what nothing has to be done for is left out', () => {
  const given = replies('small-runabout');
  given.set('plant-reach', 'standing').set('plant-opened', 'None');
  const text = fillIn(skeletonOf('small-runabout'), asking.questions, given);
  expect(text).toContain('    reach: standing\n\n');
  expect(text).not.toMatch(/how: none/i);
});

test('words that YAML would take for something else come back as they were typed', () => {
  for (const name of ['yes', 'No', '1:30', '1905', '~', 'a: b', '# x', "it's", '- y', '“q”']) {
    const given = replies('small-runabout');
    given.set('name', name);
    const text = fillIn(skeletonOf('small-runabout'), asking.questions, given);
    for (const version of ['1.1', '1.2'] as const)
      expect(parse(text, { version })).toMatchObject({ car: { name } });
  }
});

describe('answers', () => {
  const question = (answer: Question['answer']): Question => ({
    key: 'a',
    ask: 'A?',
    measure: 'it',
    answer,
    choices: ['left', 'right', 'centre'],
    also: { centre: ['center', 'middle'] },
  });
  const asked = { today: '2026-05-01', system: 'us' } as const;

  test.each([
    ['volume', '25 US gal', true],
    ['volume', '25 gal', false],
    ['volume', '25', false],
    ['number', 'four', false],
    ['number', '1.5', true],
    ['number', '0', false],
    ['date', '2026-02-30', false],
    ['date', '2026-02-28', true],
    ['one-of', '2', true],
    ['one-of', 'Left', true],
    ['one-of', 'top', false],
    ['one-of', 'e', false],
  ] as const)('%s: %s', (answer, typed, ok) => {
    const judged = judge(question(answer), typed, asked);
    expect(judged.ok).toBe(ok);
    if (!judged.ok) expect(judged.why.length).toBeGreaterThan(10);
  });
});

describe('answers that are written otherwise than they were typed', () => {
  const asked = { today: '2026-05-01', system: 'imperial' } as const;
  const taken = (key: string, typed: string) => {
    const question = asking.questions.find((each) => each.key === key);
    return question === undefined ? undefined : judge(question, typed, asked);
  };

  test.each([
    ['driver-side', 'center', 'centre'],
    ['driver-side', 'R', 'right'],
    ['steering', 'tiller bar', 'tiller'],
    ['language', 'UK', 'en-GB'],
    ['units', 'British', 'imperial'],
    ['main-liquid', 'paraffin', 'kerosene'],
    ['main-liquid', 'petrol', 'gasoline'],
    ['date', 'today', '2026-05-01'],
    ['dash-right', '0', '0 in'],
    ['water-unusable', '0', '0 imp gal'],
  ])('%s: %s', (key, typed, text) => {
    expect(taken(key, typed)).toEqual({ ok: true, text });
  });

  test.each(["don't know", 'don’t know', 'I do not know', 'n/a', '-', 'unknown', '??'])(
    '“%s” is nobody’s name and no amount',
    (typed) => {
      for (const key of ['model', 'mass', 'driver-side', 'date'])
        expect(taken(key, typed)).toEqual({ ok: 'not-known' });
    },
  );

  test('what is wrong says what was meant', () => {
    expect(taken('year', 'about 1904')).toMatchObject({ why: expect.stringContaining('1904') });
    expect(taken('inspection-last', '2026-02-30')).toMatchObject({
      why: expect.stringContaining('no such day'),
    });
  });
});

test.each([
  ['1.5', false],
  ['1769', false],
  ['1905', true],
])('a number that counts, and has a least: %s', (typed, ok) => {
  const year = asking.questions.find(({ key }) => key === 'year');
  expect(year === undefined ? undefined : judge(year, typed, { today: '2026-05-01', system: 'us' }).ok).toBe(
    ok,
  );
});

describe('at the terminal', () => {
  const folder = mkdtempSync(join(tmpdir(), 'kettlebook-new-'));
  const file = join(folder, 'bramble.yaml');
  const kept = join(folder, 'bramble.answers.yaml');
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  beforeEach(() => {
    rmSync(file, { force: true });
    rmSync(kept, { force: true });
  });

  /** Type some lines, then go away. */
  function type(...lines: readonly string[]): Promise<{ code: number; said: string }> {
    return answer(true, lines);
  }

  /** The same through a pipe, or by somebody who can answer again. */
  async function answer(
    answersAgain: boolean,
    lines: readonly string[],
  ): Promise<{ code: number; said: string }> {
    const said: string[] = [];
    const say = (text: string) => void said.push(text);
    async function* typed() {
      yield* lines;
    }
    const keeper = { typed: typed(), answersAgain, today: '2026-05-01' };
    const code = await newCar({ kind: 'new', file }, root, { say, complain: say, columns: 100 }, keeper);
    return { code, said: said.join('\n') };
  }

  const runabout = kinds.indexOf('small-runabout') + 1;
  const keys = questionsFor(skeletonOf('small-runabout'), asking.questions).map(({ key }) => key);

  test('answered to the end, in two goes, it passes check', async () => {
    const first = await type(`${runabout}`, ...keys.slice(0, 7).map(replyTo), 'leave');
    expect(first.code).toBe(0);
    expect(first.said).toContain(`${keys.length - 7} questions are open`);
    const second = await type(...keys.slice(7).map(replyTo));
    expect(second.said).toContain('7 questions are answered.');
    expect(second.said).toContain('Every question is answered.');
    expect(second.said).toContain('It passes `kettlebook check`.');
    expect(second.said).not.toContain('error[');
  });

  test('a pipe that ends in the middle leaves what was answered, and check tells the rest', async () => {
    const { code, said } = await type(`${runabout}`, 'Bramble');
    expect(code).toBe(0);
    expect(readFileSync(file, 'utf8')).toContain('  name: Bramble');
    expect(said).toContain(`${keys.length - 1} questions are open`);
    expect(said).toContain('\n  Who built it?\n');
    expect(said).toContain('check` tells at which lines they are missing.');
    expect(said).not.toContain('error[');
  });

  test('what answers contradict is told, with its line', async () => {
    const wrong: Readonly<Record<string, string>> = { 'water-reserve': '40 US gal' };
    const { said } = await type(`${runabout}`, ...keys.map((key) => wrong[key] ?? replyTo(key)));
    expect(said).toContain('Every question is answered.');
    expect(said).toMatch(/bramble\.yaml:\d+:\d+ error\[/);
  });

  test('back asks the question before again, with what was answered, in an earlier go too', async () => {
    const upTo = keys.indexOf('width');
    await type(`${runabout}`, ...keys.slice(0, upTo).map(replyTo), 'back', '8 ft', '4 ft', 'leave');
    const text = readFileSync(file, 'utf8');
    expect(text).toContain('  length: 8 ft');
    expect(text).toContain('  width: 4 ft');
    const { said } = await type('back', 'back', '', '4 ft 1 in', 'leave');
    expect(said).toContain('So far: 4 ft. Type nothing to keep it.');
    expect(said).toContain('So far: 8 ft. Type nothing to keep it.');
    expect(readFileSync(file, 'utf8')).toContain('  length: 8 ft');
    expect(readFileSync(file, 'utf8')).toContain('  wheelbase: 4 ft 1 in');
  });

  test('a wrong answer is asked again, ? tells what to measure, nothing passes over', async () => {
    const upTo = keys.indexOf('length');
    const { said } = await type(
      `${runabout}`,
      ...keys.slice(0, upTo).map(replyTo),
      '?',
      '9',
      '',
      '4 ft',
      'leave',
    );
    expect(said).toContain('Measure: from the foremost to the rearmost point');
    expect(said).toContain('That cannot be read as a length: say the unit');
    const text = readFileSync(file, 'utf8');
    expect(text).toMatch(/# not answered: length:/);
    expect(text).toContain('  width: 4 ft');
  });

  test('through a pipe an answer that cannot stand leaves its question open, and the next line is for the next', async () => {
    const upTo = keys.indexOf('length');
    const { said } = await answer(false, [
      `${runabout}`,
      ...keys.slice(0, upTo).map(replyTo),
      '9',
      '4 ft',
      '6 ft',
    ]);
    expect(said).toContain('`9` was not taken; the question stays open.');
    const text = readFileSync(file, 'utf8');
    expect(text).toMatch(/# not answered: length:/);
    expect(text).toContain('  width: 4 ft');
    expect(text).toContain('  wheelbase: 6 ft');
  });

  test('through a pipe a kind there is not writes nothing', async () => {
    const { code, said } = await answer(false, ['steam lorry', 'Bramble']);
    expect(code).toBe(1);
    expect(said).toContain('Nothing was written.');
    expect(existsSync(file)).toBe(false);
  });

  test('? tells more of each kind; what is not known stays open', async () => {
    const { said } = await type('?', `${runabout}`, 'Bramble', "don't know", 'leave');
    for (const { more } of asking.kinds) expect(said).toContain(more);
    expect(said).toContain('It stays open.');
    expect(readFileSync(file, 'utf8')).toMatch(/# not answered: make:/);
  });

  test('a spec that is there is not written over unasked', async () => {
    writeFileSync(file, 'mine: true\n');
    for (const answers of [[], ['no'], ['']]) {
      const { code, said } = await type(...answers);
      expect(code).toBe(1);
      expect(said).toContain('Write over it?');
      expect(readFileSync(file, 'utf8')).toBe('mine: true\n');
      expect(existsSync(kept)).toBe(false);
    }
    await type('yes', `${runabout}`, 'Bramble');
    expect(readFileSync(file, 'utf8')).toContain('  name: Bramble');
  });

  test('nor is one that was begun here and changed by hand since', async () => {
    await type(`${runabout}`, 'Bramble');
    const edited = `${readFileSync(file, 'utf8')}# my own words\n`;
    writeFileSync(file, edited);
    const { said } = await type('no');
    expect(said).toContain('was changed by hand');
    expect(readFileSync(file, 'utf8')).toBe(edited);
    // nor where the answers were: the question names both files
    expect(said).toContain(`${kept} was`);
  });

  test('with every question answered nothing is asked', async () => {
    await type(`${runabout}`, ...keys.map(replyTo));
    const { said } = await type();
    expect(said).not.toContain('0 questions');
    expect(said).toContain('Every question is answered.');
  });
});
