import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Diagnostic, Outcome } from '../../src/diagnostic/diagnostic';
import { allFoundGood, compileTemplates } from '../../src/markup/template/compile';
import type { Context, Helpers, Markup } from '../../src/markup/template/render';

function fill(
  sources: Record<string, string> | string,
  context: Context,
  helpers: Helpers = {},
): Outcome<Markup> {
  const set = typeof sources === 'string' ? { page: sources } : sources;
  const templates = compileTemplates(set, helpers);
  return templates.ok ? templates.value.render('page', context) : templates;
}

function html(sources: Record<string, string> | string, context: Context, helpers: Helpers = {}): string {
  const outcome = fill(sources, context, helpers);
  if (!outcome.ok) throw new Error(outcome.problems.map((problem) => problem.message).join('\n'));
  return outcome.value.html;
}

function problems(
  sources: Record<string, string> | string,
  context: Context = {},
  helpers: Helpers = {},
): readonly Diagnostic[] {
  const outcome = fill(sources, context, helpers);
  if (outcome.ok) throw new Error(`no problem was found; made ${outcome.value.html}`);
  return outcome.problems;
}

function fail(): never {
  throw new Error('there is no such template');
}

const codes = (list: readonly Diagnostic[]): string[] => list.map((problem) => problem.code);

describe('values', () => {
  it('are put in as text, with every mark of HTML escaped', () => {
    expect(html('<p>{{name}}</p>', { name: 'A & B <left> "x" \'y\'' })).toBe(
      '<p>A &amp; B &lt;left&gt; &quot;x&quot; &#x27;y&#x27;</p>',
    );
  });

  it('of helpers are escaped as well', () => {
    expect(html('{{loud name}}', { name: '<b>' }, { loud: ([text]) => `${String(text)}!` })).toBe(
      '&lt;b&gt;!',
    );
  });

  it('print numbers as they stand', () => {
    expect(html('{{n}}', { n: 0 })).toBe('0');
  });

  it.each([
    ['nothing', null],
    ['yes or no', true],
    ['a number that is none', Number.NaN],
    ['a group', { a: 1 }],
    ['a list', [1]],
  ])('that are %s cannot be printed', (_, x) => {
    expect(codes(problems('{{x}}', { x }))).toEqual(['template-value']);
  });

  it('are refused inside a tag outside quotes, and inside a comment', () => {
    expect(codes(problems('<td {{x}}>', { x: 'a' }))).toEqual(['template-place']);
    expect(codes(problems('<td class={{x}}>', { x: 'a' }))).toEqual(['template-place']);
    expect(codes(problems('<{{x}}>', { x: 'p' }))).toEqual(['template-place']);
    expect(codes(problems('<!-- {{x}} -->', { x: 'a' }))).toEqual(['template-place']);
    expect(html('<td class="{{x}}">', { x: 'a' })).toBe('<td class="a">');
  });

  it('can never be put in as markup', () => {
    expect(codes(problems('{{{x}}}', { x: '<b>' }))).toEqual(['template-raw']);
    expect(codes(problems('{{&x}}', { x: '<b>' }))).toEqual(['template-raw']);
  });
});

describe('a missing value', () => {
  it('is told with its place and what is known there', () => {
    const [problem] = problems('<p>\n  {{car.nam}}</p>', { car: { name: 'x', place: 'y' } });
    expect(problem).toMatchObject({
      code: 'template-missing',
      at: { file: 'page', line: 2, column: 5, path: 'car.nam' },
      message: 'there is no `nam` in car',
      expected: '`name`, `place`',
      mend: 'did you mean `name`?',
    });
  });

  it.each([
    '{{#if gone}}x{{/if}}',
    '{{#unless gone}}x{{/unless}}',
    '{{#each gone}}x{{/each}}',
    '{{#with gone}}x{{/with}}',
    '{{#if (eq gone 1)}}x{{/if}}',
    '{{#if (not gone)}}x{{/if}}',
    '{{#each list as |one|}}{{one.gone}}{{/each}}',
    '{{#each list}}{{gone}}{{/each}}',
    '{{#each list}}{{../gone}}{{/each}}',
    '{{@gone}}',
    '{{@root.gone}}',
    '{{list.length.gone}}',
    '{{lookup list gone}}',
  ])('is an error in %s', (template) => {
    expect(codes(problems(template, { list: [{ a: 1 }] }))).toEqual(['template-missing']);
  });

  it('is told once for a whole list, and every different one is told', () => {
    expect(problems('{{#each list}}{{a}}{{b}}{{/each}}', { list: [{}, {}, {}] })).toHaveLength(2);
  });

  it('inside a piece is told at its place in the piece', () => {
    const [problem] = problems({ page: '<p>{{> row item}}</p>', row: 'x\n{{gone}}' }, { item: { a: 1 } });
    expect(problem?.at).toMatchObject({ file: 'row', line: 2, column: 3 });
  });

  it('is anything inherited', () => {
    for (const name of ['constructor', '__proto__', 'toString', 'hasOwnProperty']) {
      expect(codes(problems(`{{${name}}}`, {}))).toEqual(['template-missing']);
    }
    expect(codes(problems('{{x.trim}}', { x: 'a' }))).toEqual(['template-missing']);
    expect(codes(problems('{{f}}', { f: () => 'called' }))).toEqual(['template-missing']);
  });
});

describe('blocks', () => {
  it('choose and repeat', () => {
    const template =
      '{{#if a}}A{{else if b}}B{{else}}C{{/if}}{{#each list as |x i|}}{{i}}{{x.n}}{{#unless @last}},{{/unless}}{{else}}none{{/each}}';
    expect(html(template, { a: false, b: true, list: [{ n: 'p' }, { n: 'q' }] })).toBe('B0p,1q');
    expect(html(template, { a: 0, b: '', list: [] })).toBe('Cnone');
  });

  it('reach outward with `../` and `@root`', () => {
    expect(html('{{#with a}}{{b}}{{../c}}{{@root.c}}{{/with}}', { a: { b: 1 }, c: 2 })).toBe('122');
  });

  it('leave no trace of lines that hold only a block tag', () => {
    expect(html('<ul>\n{{#each l}}\n  <li>{{this}}</li>\n{{/each}}\n</ul>', { l: ['a', 'b'] })).toBe(
      '<ul>\n  <li>a</li>\n  <li>b</li>\n</ul>',
    );
  });

  it('other than those built in are errors', () => {
    expect(codes(problems('{{#thing}}x{{/thing}}', { thing: true }))).toEqual(['template-helper']);
    expect(codes(problems('{{#each 5}}x{{/each}}'))).toEqual(['template-value']);
  });
});

describe('pieces', () => {
  it('see what they are given, by name too', () => {
    expect(html({ page: '{{> row item big="yes"}}', row: '{{n}}{{big}}' }, { item: { n: 1 } })).toBe('1yes');
  });

  it('do not see what surrounds their call', () => {
    const [problem] = problems({ page: '{{#with a}}{{> row}}{{/with}}', row: '{{../c}}' }, { a: {}, c: 1 });
    expect(problem).toMatchObject({ code: 'template-missing', at: { file: 'row' } });
  });

  it('can wrap a body', () => {
    expect(
      html({ page: '{{#> box}}{{x}}{{/box}}', box: '<section>{{> @partial-block}}</section>' }, { x: 'in' }),
    ).toBe('<section>in</section>');
  });

  it('that do not exist are told before anything is filled in, with the nearest name', () => {
    expect(problems({ page: '{{> rwo}}', row: '' })[0]).toMatchObject({
      code: 'template-unknown',
      mend: 'did you mean `row`?',
    });
  });

  it('that call themselves without end are stopped', () => {
    expect(codes(problems({ page: '{{> page}}{{> page}}' }))).toEqual(['template-depth']);
  });
});

describe('helpers', () => {
  it('take values and names', () => {
    expect(
      html('{{join a "-" end=b}}', { a: 1, b: 2 }, { join: ([x, y], { end }) => `${x}${y}${end}` }),
    ).toBe('1-2');
  });

  it('that are unknown are told with the nearest name', () => {
    expect(problems('{{roundd 1}}', {}, { round: () => 1 })[0]).toMatchObject({
      code: 'template-helper',
      mend: 'did you mean `round`?',
    });
  });

  it('that fail are told at their place', () => {
    const fail = () => {
      throw new Error('no unit');
    };
    expect(problems('\n{{fail 1}}', {}, { fail })[0]).toMatchObject({
      code: 'template-helper',
      at: { line: 2 },
      message: 'the helper `fail` could not do its work: no unit',
    });
  });
});

describe('a template that is not well-formed', () => {
  it.each([
    ['an open block', '{{#if a}}', 1],
    ['a wrong end', 'x\n{{#if a}}\n{{/each}}', 2],
    ['an unfinished value', '\n{{a', 2],
    ['an inline piece', '\n\n{{#*inline "a"}}{{/inline}}', 3],
  ])('with %s is told with its line', (_, template, line) => {
    const [problem] = problems(template, { a: 1 });
    expect(problem).toMatchObject({ code: 'template-syntax', at: { file: 'page', line } });
  });

  it('does not keep the others from being checked', () => {
    expect(codes(problems({ page: '{{#if}}', a: '{{{x}}}', b: '{{' }))).toEqual([
      'template-syntax',
      'template-syntax',
      'template-raw',
    ]);
  });
});

describe('a set found good before', () => {
  const sources = {
    page: '{{#if x}}{{> row}}{{else}}{{> end}}{{/if}}',
    row: '<p>{{> word}}</p>',
    end: '<p>end</p>',
    word: 'a word',
    // would be refused when it is read
    apart: '{{#if}}',
  };
  const opened = (name: string) => {
    const read: string[] = [];
    const known = Object.entries(sources).map(([each, text]) => {
      const tree = allFoundGood(each, text);
      return [each, () => (read.push(each), tree?.() ?? fail())] as const;
    });
    const templates = compileTemplates(sources, {}, (each) => new Map(known).get(each));
    if (!templates.ok) throw new Error('not read');
    templates.value.open(name);
    return read;
  };

  it('can be read before there is what to fill in, with all that it calls and nothing else, each once', () => {
    expect(opened('page')).toEqual(['page', 'row', 'word', 'end']);
    expect(opened('word')).toEqual(['word']);
    expect(opened('none')).toEqual([]);
  });
});

describe('places', () => {
  it('of every letter lead back to the template that made it', () => {
    const outcome = fill(
      { page: '<ul>\n{{#each l}}\n  {{> row this}}\n{{/each}}\n</ul>', row: '<li>\n {{n}} end</li>' },
      { l: [{ n: 'a' }, { n: 'bb' }] },
    );
    if (!outcome.ok) throw new Error('not filled in');
    const { html: made, origins } = outcome.value;
    expect(origins.at(made.lastIndexOf('bb'))).toEqual({ template: 'row', line: 2, column: 2 });
    expect(origins.at(made.lastIndexOf('end'))).toEqual({ template: 'row', line: 2, column: 8 });
    expect(origins.at(made.indexOf('</ul>'))).toEqual({ template: 'page', line: 5, column: 1 });
    expect(origins.at(made.indexOf('<li>'))).toEqual({ template: 'row', line: 1, column: 1 });
  });

  it('are the same whatever the line ends of the template', () => {
    const of = (text: string) => problems(text)[0]?.at;
    expect(of('\uFEFF<p>\r\n{{gone}}\r\n</p>')).toEqual(of('<p>\n{{gone}}\n</p>'));
  });
});

it('escaped text holds no mark that could begin or end markup', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), (x) => {
      expect(html('{{x}}', { x })).not.toMatch(/[<>"']|&(?!amp;|lt;|gt;|quot;|#x27;)/);
    }),
  );
});
