import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { segmentsIn } from '../../src/language/segments';

const textsIn = (template: string) =>
  segmentsIn(template).flatMap(({ words, isText }) => (isText ? [words] : []));

describe('the texts of a template', () => {
  test('go on over values and over words set bold, and end at blocks of markup', () => {
    expect(textsIn('<h1>{{car.name}}: for <em>you</em></h1>\n<p>Read it.</p>')).toEqual([
      '{{car.name}}: for <em>you</em>',
      'Read it.',
    ]);
  });

  test('end at conditions, lists and pieces, which belong to no text', () => {
    expect(textsIn('<p>One {{#if a}}two {{a}}{{else}}three{{/if}} four {{> piece}} five</p>')).toEqual([
      'One',
      'two {{a}}',
      'three',
      'four',
      'five',
    ]);
  });

  test('do not hold tags that stand around the whole of them, or that have no partner in them', () => {
    expect(textsIn('<p><strong>Seen:</strong> {{#if b}}<strong>{{b}} now{{/if}}</strong></p>')).toEqual([
      'Seen:',
      '{{b}} now',
    ]);
  });

  test('are what the title of a field says, and nothing else in its tag', () => {
    expect(textsIn('<th>By</th><td><input name="by" title="Shown by {{who}}" size="24"></td>')).toEqual([
      'By',
      'Shown by {{who}}',
    ]);
  });

  test('keep a tag that stands around a part of them', () => {
    expect(textsIn('<p><strong>{{keeper}}</strong>, by day.</p>')).toEqual([
      '<strong>{{keeper}}</strong>, by day.',
    ]);
  });
});

test('segments are the template when they are put together again, whatever it holds', () => {
  const piece = fc.constantFrom(
    ...['<p>', '</p>', '<strong>', '</strong>', '<br>', '<a href="#x{{y}}">', '</a>', '<td>', ' ', '\n'],
    ...['<input title="a b">', '<input title="">', '<td title="{{t}}" id="u">'],
    ...['{{a}}', '{{#if a}}', '{{else}}', '{{/if}}', '{{> b c=d}}', 'word', 'two words', '<', '{', '&nbsp;'],
  );
  fc.assert(
    fc.property(fc.array(piece, { maxLength: 30 }), (pieces) => {
      const template = pieces.join('');
      expect(
        segmentsIn(template)
          .map(({ words }) => words)
          .join(''),
      ).toBe(template);
    }),
  );
});
