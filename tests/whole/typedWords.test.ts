/**
 * No word that a paper prints is typed in the program: it comes from the language, the library or a template, or from the
 * car's own spec. Every text of language, library and templates is turned into capitals; what is printed in small letters
 * and is no word of the car was typed in a source file.
 */
import { describe, expect, test } from 'vitest';
import { good } from '../../src/diagnostic/diagnostic';
import { type ReadyCar, readCar, worldOf } from '../../src/kettlebook';
import { type Dialect, sayingAround, textsIn } from '../../src/language/dialect';
import type { Language } from '../../src/language/language';
import { type MessageKey, messagesOf, messageValues } from '../../src/language/messages';
import { withApostrophes } from '../../src/markup/apostrophes';
import { logColumns } from '../../src/paper/context/logColumns';
import { footOf, headOf } from '../../src/paper/heads';
import { fillPaper, type Paper, type World } from '../../src/paper/paper';
import { demo, demoNames, goodOf, logs, specText, workshop } from './made';

const shop = await workshop();

/** Capitals everywhere but in braces and tags. */
const capitals = (text: string, kept: RegExp) =>
  text
    .split(kept)
    .map((piece, index) => (index % 2 === 1 ? piece : piece.toUpperCase()))
    .join('');

const loud: Dialect = {
  say: (text) => capitals(text, /(\{\{[\s\S]*?\}\})/),
  sayTemplate: (text) => capitals(text, /(\{\{[\s\S]*?\}\}|<(?:\{\{[\s\S]*?\}\}|[^>])*>|&[a-z]+;)/),
};

/** English in capitals. */
function loudly(language: Language): Language {
  const keys = Object.keys(messageValues) as MessageKey[];
  const plainly = (key: MessageKey) =>
    language.messages
      .pieces(key)
      .map((piece) => (typeof piece === 'string' ? piece.toUpperCase() : `{{${piece.value}}}`))
      .join('');
  return {
    ...language,
    numbers: { ...language.numbers, units: textsIn(loud, language.numbers.units) },
    words: textsIn(loud, language.words),
    phrases: textsIn(loud, language.phrases),
    ways: textsIn(loud, language.ways),
    messages: messagesOf(
      Object.fromEntries(keys.map((key) => [key, plainly(key)])) as Record<MessageKey, string>,
    ),
    texts: loud,
    telling: (own) => sayingAround(loud, own),
  };
}

const loudShop = {
  ...shop,
  languages: {
    ...shop.languages,
    of: (tag: string) => {
      const language = shop.languages.of(tag);
      return language.ok ? good(loudly(language.value)) : language;
    },
  },
};

function loudCar(name: string): ReadyCar {
  return goodOf(readCar({ file: 'car.yaml', text: specText(name), beside: logs() }, loudShop));
}

/** Every run of printed text in blocks or shapes, drawings left out; pieces that stand beside each other are one run. */
function textsOf(value: unknown): readonly string[] {
  if (typeof value !== 'object' || value === null) return [];
  if (Array.isArray(value)) {
    const pieces = value.map((each: unknown) =>
      typeof each === 'object' && each !== null && 'text' in each && typeof each.text === 'string'
        ? each.text
        : undefined,
    );
    if (pieces.some((piece) => piece !== undefined)) return [pieces.map((piece) => piece ?? ' ').join('')];
    return value.flatMap(textsOf);
  }
  return Object.entries(value).flatMap(([key, each]) => (key === 'drawing' ? [] : textsOf(each)));
}

/** Symbols of units and of standards, which no language translates. */
const symbols = new Set(
  (
    'mi gal psi bar mm km kg ft in lb min cm qt pt fl oz mph mg grains imp abs hp kW kWh kJ MJ Btu yd mL rad ' +
    'shared yaml running fuels tanks boiler'
  ).split(' '),
);

/** Words in small letters that are neither the car's own nor symbols. */
function typedIn(world: World, paper: Paper): readonly string[] {
  const { blocks } = goodOf(fillPaper(paper, world, 'XXXX·XXXX'));
  const drawings = [...paper.drawings(world), ...(paper.cutOut?.(world, 'XXXX·XXXX') ?? [])];
  const own = ownWords(world);
  const typed = [
    ...textsOf(blocks),
    ...drawings.flatMap(({ shapes, alt }) => [
      alt,
      // a name that is broken over two lines is looked for in parts
      ...shapes
        .flatMap((shape) => textsOf([shape]))
        .filter((line) => !own.some((each) => each.includes(withApostrophes(line.trim())))),
    ]),
    ...[headOf(world, paper.title), footOf(world, 'XXXX·XXXX')].flatMap(textsOf),
  ]
    .join('\n')
    // a figure of the car's own words is bound to its unit
    .replaceAll('\u00a0', ' ');
  const printed = withApostrophes(typed);
  const whole = new RegExp(
    `(?<![\\p{L}])(?:${own.map((each) => escaped(each.replaceAll('\u00a0', ' '))).join('|')})(?![\\p{L}])`,
    'giu',
  );
  const rest = printed.replace(whole, '·').replace(/\d+ \p{L}+ \d{4}|\p{L}+ \d+, \d{4}/gu, '·');
  return [...new Set(rest.match(/(?<!\p{L})\p{L}*\p{Ll}{2,}/gu) ?? [])].filter((word) => !symbols.has(word));
}

/**
 * What the spec and the liquids say, the longest first, but for its fixed choices, which the language says; with the titles of sources, the paths of the spec that figures
 * rest on, and the heads of the log, which the program reads again.
 */
function ownWords({ car, liquids, figures }: World): readonly string[] {
  const gather = (value: unknown, field = ''): readonly string[] => {
    if (typeof value === 'string') return field !== 'name' && /^[a-z-]+$/.test(value) ? [] : [value];
    if (typeof value !== 'object' || value === null) return [];
    return Object.entries(value).flatMap(([key, each]) => gather(each, key));
  };
  const all = [
    ...gather(car.spec),
    // what is said of a fuel aloud
    ...Object.values(car.spec.fuels).flatMap(({ name }) => name.split(',')[0] ?? []),
    ...[...car.parts.values()].map(({ name }) => name),
    ...[...liquids.values()].flatMap(({ name, source }) => [name, source]),
    ...figures.all.flatMap(({ source, inputs }) => [source, ...inputs.map(({ from }) => from)]),
    ...logColumns(car.spec.print.units.first),
  ];
  // of how a part is worked some papers say the first clause alone
  const clauses = all.flatMap((each) => [each, ...(each.includes('; ') ? [each.split('; ')[0] ?? ''] : [])]);
  return [...new Set(clauses.map(withApostrophes))].sort((a, b) => b.length - a.length);
}

function escaped(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
}

describe.each(demoNames)('%s', (name) => {
  const ready = loudCar(name);
  const world = worldOf(ready, loudShop);
  test.each(ready.papers.map((paper) => [paper.name, paper] as const))('%s', (_, paper) => {
    expect(typedIn(world, paper)).toEqual([]);
  });
});

test('a typed word would be seen', async () => {
  const [paper] = shop.papers;
  if (paper === undefined) throw new Error('there is no paper');
  expect(typedIn(worldOf(await demo('thimble'), shop), paper)).toEqual(
    expect.arrayContaining(['Read', 'the', 'Reading', 'shut']),
  );
});
