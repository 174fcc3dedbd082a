/** The plain part of Handlebars is filled in to the letter as Handlebars does it. */
import fc from 'fast-check';
import Handlebars from 'handlebars';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { Lacking, piecesOf, QuickWords } from '../../src/language/quickWords';
import { libraryFiles } from '../procedure/shared';

const phrases = {
  'how-to': 'turn {{part.opens}}',
  'whole-way': '{{#if part.how}}{{part.how}}, {{/if}}{{> how-to}}',
  circle: '{{> circle}}',
};

const values = {
  part: { called: 'the pilot valve (P1)', name: 'pilot valve', opens: 'anticlockwise', how: undefined },
  tank: { name: 'pilot tank', note: '' },
  inspector: 'the county',
  absent: undefined,
};

/** The same values for Handlebars, with nothing absent that is printed. */
const forHandlebars = { ...values, part: { ...values.part, toString: () => values.part.called } };

const engine = Handlebars.create();
for (const [name, phrase] of Object.entries(phrases)) engine.registerPartial(name, phrase);

function byHandlebars(text: string): string {
  const options = { noEscape: true, knownHelpersOnly: true, knownHelpers: { if: true, unless: true } };
  return engine.compile(text, options)(forHandlebars);
}

const quick = new QuickWords(phrases);

const words = fc.constantFrom('Open ', ' and', '.', ' {', '} ', 'a } b', '"', '<i>&', 'é', '  ', '%');
const printable = fc.constantFrom('part', 'part.name', 'part.opens', 'tank.name', 'tank.note', 'inspector');
const askable = fc.constantFrom('part', 'part.how', 'tank.note', 'inspector', 'absent', 'tank');
const { text: texts } = fc.letrec<{ text: string; piece: string }>((tie) => ({
  text: fc.array(tie('piece'), { maxLength: 5 }).map((pieces) => pieces.join('')),
  piece: fc.oneof(
    { depthSize: 'small' },
    words,
    printable.map((path) => `{{${path}}}`),
    fc.constantFrom('{{> how-to}}', '{{>whole-way}}'),
    fc
      .tuple(fc.constantFrom('if', 'unless'), askable, tie('text'), fc.option(tie('text')))
      .map(
        ([kind, path, first, second]) =>
          `{{#${kind} ${path}}}${first}${second === null ? '' : `{{else}}${second}`}{{/${kind}}}`,
      ),
  ),
}));

test('any text of it comes out as Handlebars has it', () => {
  let plain = 0;
  fc.assert(
    fc.property(texts, (text) => {
      const made = quick.fill(text, values);
      if (made === undefined) return;
      plain += 1;
      expect(made).toBe(byHandlebars(text));
    }),
    { numRuns: 2000 },
  );
  expect(plain).toBeGreaterThan(800);
});

describe('left to Handlebars', () => {
  test.each([
    ['a line of its own', 'One\n{{> how-to}}\ntwo'],
    ['blanks taken away', 'a {{~part.name~}} b'],
    ['three braces', '{{{part.name}}}'],
    ['a comment', 'a {{! not printed }} b'],
    ['another helper', '{{#each parts}}x{{/each}}'],
    ['a chain', '{{#if part}}a{{else if tank}}b{{/if}}'],
    ['a name that is a helper', '{{log}}'],
    ['a tag that is none', 'a \\{{part}}'],
    ['a block that is not ended', '{{#if part}}a'],
    ['a block that is ended as another', '{{#if part}}a{{/unless}}'],
    ['an end without a beginning', 'a{{/if}}'],
    ['two ends of one choice', '{{#if part}}a{{else}}b{{else}}c{{/if}}'],
    ['a phrase alone among blanks', ' {{> how-to}} '],
  ])('%s', (_, text) => {
    expect(piecesOf(text)).toBeUndefined();
  });

  test.each([
    ['a name that is no value', '{{part.colour}}'],
    ['a condition that is no value', '{{#if colour}}x{{/if}}'],
    ['a value within a single value', '{{inspector.name}}'],
    ['values without a name of their own', '{{tank}}'],
    ['a phrase that is not there', '{{> nothing}}'],
    ['a phrase that is in everything', '{{> toString}}'],
    ['a phrase that calls itself', '{{> circle}}'],
  ])('%s', (_, text) => {
    expect(piecesOf(text)).toBeDefined();
    expect(quick.fill(text, values)).toBeUndefined();
  });
});

test('a value that the car has not got is named where it would be printed, and nowhere else', () => {
  expect(() => quick.fill('{{> whole-way}} {{part.how}}', values)).toThrow(new Lacking('part.how'));
  expect(quick.fill('{{#if part.how}}{{part.how}}{{else}}by hand{{/if}}', values)).toBe('by hand');
});

test('nearly every text of the step library is in the plain part', () => {
  const strings = (value: unknown): readonly string[] =>
    typeof value === 'string'
      ? [value]
      : typeof value === 'object' && value !== null
        ? Object.values(value).flatMap(strings)
        : [];
  const filled = [...libraryFiles().values()]
    .flatMap((file) => strings(parse(file)))
    .filter((text) => text.includes('{{'));
  expect(filled.length).toBeGreaterThan(300);
  const plain = filled.filter((text) => piecesOf(text) !== undefined);
  expect(plain.length / filled.length).toBeGreaterThan(0.95);
});
