import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Diagnostic } from '../../src/diagnostic/diagnostic';
import type { Drawing } from '../../src/drawing/drawing';
import { drawSign } from '../../src/drawing/signs/signs';
import { withApostrophes } from '../../src/markup/apostrophes';
import type { Block, Inline } from '../../src/markup/block';
import { parseMarkup } from '../../src/markup/parse';
import { compileTemplates } from '../../src/markup/template/compile';

const plan: Drawing = { name: 'plan', widthPt: 10, heightPt: 10, shapes: [], alt: 'a plan' };
const drawings = new Map([['plan', plan]]);

function blocks(html: string): readonly Block[] {
  const outcome = parseMarkup(html, 'page', { drawings });
  if (!outcome.ok)
    throw new Error(outcome.problems.map((p) => `${p.at?.line}:${p.at?.column} ${p.message}`).join('\n'));
  return outcome.value;
}

function block(html: string): Block {
  const [only, ...more] = blocks(html);
  if (!only || more.length > 0) throw new Error('one block was wanted');
  return only;
}

function problems(html: string): readonly Diagnostic[] {
  const outcome = parseMarkup(html, 'page', { drawings });
  if (outcome.ok) throw new Error('no problem was found');
  return outcome.problems;
}

const codes = (html: string): string[] => problems(html).map((problem) => problem.code);
const text = (inlines: readonly Inline[]): string =>
  inlines.map((one) => (one.kind === 'text' ? one.text : one.kind === 'break' ? '\n' : '#')).join('');
const run = (words: string, more: object = {}) => ({
  kind: 'text',
  text: words,
  strong: false,
  emphasis: false,
  ...more,
});

describe('headings and paragraphs', () => {
  it('carry level, id, style and place', () => {
    expect(blocks('<h1 id="top">One</h1>\n<h2>Two</h2><p class="lead">Three</p><p>Four</p>')).toMatchObject([
      { kind: 'heading', level: 1, id: 'top', origin: { line: 1, column: 1 }, content: [run('One')] },
      { kind: 'heading', level: 2, origin: { line: 2, column: 1 } },
      { kind: 'paragraph', style: 'lead' },
      { kind: 'paragraph', style: 'body' },
    ]);
  });

  it('may not skip a level on the way down', () => {
    expect(codes('<h1>a</h1><h3>b</h3>')).toEqual(['markup-heading']);
    expect(codes('<h2>a</h2>')).toEqual(['markup-heading']);
    expect(codes('<h1>a</h1><section class="keep"><h3>b</h3></section>')).toEqual(['markup-heading']);
    expect(blocks('<h1>a</h1><h2>b</h2><h3>c</h3><h1>d</h1><h2>e</h2>')).toHaveLength(5);
  });

  it('must hold words', () => {
    expect(codes('<p></p>')).toEqual(['markup-empty']);
    expect(codes('<p> \n </p>')).toEqual(['markup-empty']);
    expect(codes('<p><br></p>')).toEqual(['markup-empty']);
    expect(codes('<p><strong></strong></p>')).toEqual(['markup-empty']);
  });
});

describe('words', () => {
  const words = (html: string): readonly Inline[] => {
    const paragraph = block(`<p>${html}</p>`);
    return paragraph.kind === 'paragraph' ? paragraph.content : [];
  };

  it('have their white space collapsed, none at the ends', () => {
    expect(words('\n  Open\n\t the   valve \n')).toEqual([run('Open the valve')]);
    expect(words('a <strong> b</strong> c')).toEqual([run('a '), run('b', { strong: true }), run(' c')]);
    expect(words('a<strong> b </strong>  c')).toEqual([run('a'), run(' b ', { strong: true }), run('c')]);
    expect(words('a <br> b <em>c </em> ')).toEqual([
      run('a'),
      { kind: 'break' },
      run('b '),
      run('c', { emphasis: true }),
    ]);
  });

  it('keep a fixed space', () => {
    expect(words('45&nbsp;psi')).toEqual([run('45\u00a0psi')]);
    expect(words('&nbsp;')).toEqual([run('\u00a0')]);
  });

  it('join what is in one style', () => {
    expect(words('a &amp; b &lt;c&gt;<!-- nothing --> d')).toEqual([run('a & b <c> d')]);
    expect(words('<em><strong>x</strong></em>')).toEqual([run('x', { strong: true, emphasis: true })]);
  });

  it('link to blocks and to their pages', () => {
    expect(
      blocks('<h1 id="x">X</h1><p><a href="#x">see <em>X</em></a> on <a class="page" href="#x"></a>.</p>')[1],
    ).toMatchObject({
      content: [
        run('see ', { link: 'x' }),
        run('X', { link: 'x', emphasis: true }),
        run(' on '),
        { kind: 'page-of', target: 'x' },
        run('.'),
      ],
    });
  });

  it('may not link to nowhere, or out of the paper', () => {
    expect(problems('<h1 id="pilot">X</h1><p><a href="#pilto">x</a></p>')[0]).toMatchObject({
      code: 'markup-link',
      mend: 'did you mean `#pilot`?',
    });
    expect(codes('<p><a href="https://example.org">x</a></p>')).toEqual(['markup-value']);
    expect(codes('<p><a>x</a></p>')).toEqual(['markup-attribute']);
  });
});

describe('lists', () => {
  it('hold words or blocks', () => {
    expect(block('<ul><li>one</li>\n<li><p>two</p><ol><li>three</li></ol></li></ul>')).toMatchObject({
      kind: 'list',
      ordered: false,
      items: [
        [{ kind: 'paragraph', content: [run('one')] }],
        [{ kind: 'paragraph' }, { kind: 'list', ordered: true }],
      ],
    });
  });

  it('do not hold both side by side', () => {
    expect(codes('<ul><li>one <p>two</p></li></ul>')).toEqual(['markup-place']);
    expect(codes('<ul><li><em>one</em><ul><li>a</li></ul></li></ul>')).toEqual(['markup-place']);
  });

  it('of words and meanings take turns', () => {
    expect(block('<dl><dt>A</dt><dd>B</dd><dt>C</dt><dd>D</dd></dl>')).toMatchObject({
      kind: 'definitions',
      items: [{ term: [run('A')], meaning: [run('B')] }, {}],
    });
    expect(codes('<dl><dt>A</dt><dt>C</dt><dd>D</dd></dl>')).toEqual(['markup-part']);
    expect(codes('<dl><dd>D</dd></dl>')).toEqual(['markup-part']);
    expect(codes('<dl><dt>A</dt><dd>B</dd><dd>D</dd></dl>')).toEqual(['markup-part']);
  });
});

describe('steps', () => {
  const step =
    '<li data-critical><aside data-signal="warning"><p class="hazard">h</p><p class="consequence">c</p><p class="avoidance">a</p></aside><p class="action">Open</p><p class="result">Blue</p><p class="remark">from the seat</p></li>';

  it('hold cautions, action, result and remark', () => {
    expect(
      block(`<ol class="steps" data-mark="tick" start="7">${step}<li><p class="action">Shut</p></li></ol>`),
    ).toMatchObject({
      kind: 'steps',
      mark: 'tick',
      start: 7,
      items: [
        {
          critical: true,
          cautions: [{ signal: 'warning', hazard: [run('h')] }],
          action: [run('Open')],
          result: [run('Blue')],
          remark: [run('from the seat')],
        },
        { critical: false, cautions: [], action: [run('Shut')], result: [], remark: [] },
      ],
    });
  });

  it.each([
    ['no action', '<li><p class="result">x</p></li>', 'markup-part'],
    ['two actions', '<li><p class="action">x</p><p class="action">y</p></li>', 'markup-part'],
    [
      'the result before the action',
      '<li><p class="result">x</p><p class="action">y</p></li>',
      'markup-place',
    ],
    [
      'a caution after the action',
      step.replace(/(<aside.*<\/aside>)(<p class="action">Open<\/p>)/, '$2$1'),
      'markup-place',
    ],
    ['words outside its parts', '<li>do it</li>', 'markup-place'],
    ['an unknown part', '<li><p class="actoin">x</p></li>', 'markup-value'],
    ['a part without a class', '<li><p>x</p></li>', 'markup-value'],
  ])('with %s are refused', (_, item, code) => {
    expect(codes(`<ol class="steps">${item}</ol>`)).toContain(code);
  });
});

describe('cautions', () => {
  const parts = ['<p class="hazard">h</p>', '<p class="consequence">c</p>', '<p class="avoidance">a</p>'];

  it('need every part, save a notice', () => {
    expect(block(`<aside data-signal="danger">${parts.join('')}</aside>`)).toMatchObject({
      kind: 'caution',
      signal: 'danger',
      avoidance: [run('a')],
    });
    for (const left of parts) {
      expect(
        codes(`<aside data-signal="danger">${parts.filter((part) => part !== left).join('')}</aside>`),
      ).toEqual(['markup-part']);
    }
    expect(block(`<aside data-signal="notice">${parts[0]}</aside>`)).toMatchObject({
      consequence: [],
      avoidance: [],
    });
  });

  it('that are brief say it all in the hazard', () => {
    expect(block(`<aside data-signal="danger" data-brief>${parts[0]}</aside>`)).toMatchObject({
      brief: true,
      hazard: [run('h')],
    });
    expect(codes(`<aside data-signal="danger" data-brief>${parts.join('')}</aside>`)).toEqual([
      'markup-part',
    ]);
  });

  it('need a signal word that exists', () => {
    expect(codes(`<aside>${parts.join('')}</aside>`)).toEqual(['markup-attribute']);
    expect(problems(`<aside data-signal="warnign">${parts.join('')}</aside>`)[0]).toMatchObject({
      code: 'markup-value',
      mend: 'did you mean `warning`?',
    });
  });
});

describe('tables', () => {
  const table = `<table class="large striped"><caption>T</caption>
    <colgroup><col data-weight="0"><col data-align="right" data-weight="3"><col></colgroup>
    <thead><tr><th>A</th><th colspan="2">B</th></tr></thead>
    <tbody><tr><th scope="row">a</th><td>1</td><td></td></tr></tbody></table>`;

  it('carry columns, heads, spans and style', () => {
    expect(block(table)).toMatchObject({
      kind: 'table',
      style: 'large',
      striped: true,
      caption: [run('T')],
      columns: [
        { align: 'left', weight: 0 },
        { align: 'right', weight: 3 },
        { align: 'left', weight: 1 },
      ],
      head: [
        {
          cells: [
            { head: 'column', span: 1 },
            { head: 'column', span: 2 },
          ],
        },
      ],
      body: [{ cells: [{ head: 'row' }, { head: 'none', content: [run('1')] }, { content: [] }] }],
    });
  });

  it('show a dash in every empty cell that is not filled in, where they are `dashed`', () => {
    const rows = (
      cls: string,
    ) => `<table class="ruled ${cls}"><thead><tr><th>A</th><th></th><th>C</th></tr></thead>
      <tbody><tr><th scope="row">a</th><td> </td><td><input name="x" title="x"></td></tr></tbody></table>`;
    expect(block(rows('dashed'))).toMatchObject({
      head: [{ cells: [{}, { content: [] }, {}] }],
      body: [{ cells: [{ content: [run('a')] }, { content: [run('–')] }, { content: [], field: {} }] }],
    });
    expect(block(rows('boxes'))).toMatchObject({ boxes: true, body: [{ cells: [{}, { content: [] }, {}] }] });
  });

  it('have the same number of columns in every row', () => {
    expect(codes('<table><tbody><tr><td>a</td><td>b</td></tr><tr><td>c</td></tr></tbody></table>')).toEqual([
      'markup-table',
    ]);
    expect(codes(table.replace('<td></td>', ''))).toEqual(['markup-table']);
  });

  it.each([
    ['words between the rows', '<table><tbody>stray<tr><td>a</td></tr></tbody></table>', 'markup-place'],
    ['words directly inside', '<table>stray<tbody><tr><td>a</td></tr></tbody></table>', 'markup-place'],
    ['rows outside a body', '<table><tr><td>a</td></tr></table>', 'markup-place'],
    ['a cell outside a row', '<table><tbody><td>a</td></tbody></table>', 'markup-place'],
    [
      'a plain cell in the head',
      '<table><thead><tr><td>a</td></tr></thead><tbody><tr><td>a</td></tr></tbody></table>',
      'markup-place',
    ],
    ['two styles', '<table class="large plain"><tbody><tr><td>a</td></tr></tbody></table>', 'markup-value'],
    ['no rows', '<table><tbody></tbody></table>', 'markup-empty'],
    [
      'the caption last',
      '<table><tbody><tr><td>a</td></tr></tbody><caption>c</caption></table>',
      'markup-place',
    ],
    ['a block in a cell', '<table><tbody><tr><td><p>a</p></td></tr></tbody></table>', 'markup-place'],
  ])('with %s are refused', (_, html, code) => {
    expect(codes(html)).toContain(code);
  });
});

describe('other blocks', () => {
  it('are figures, contents, groups, rules and page breaks', () => {
    expect(
      blocks(
        '<figure data-drawing="plan"><figcaption>P</figcaption></figure><nav data-depth="3"></nav><section class="boxed"><p>x</p></section><section class="keep"><p>x</p></section><section class="columns"><p>x</p></section><hr><hr data-lines="4"><hr data-lines="4" data-fill><hr class="page-break">',
      ),
    ).toMatchObject([
      { kind: 'figure', drawing: plan, caption: [run('P')] },
      { kind: 'contents', depth: 3 },
      { kind: 'group', style: 'boxed', blocks: [{ kind: 'paragraph' }] },
      { kind: 'group', style: 'plain' },
      { kind: 'group', style: 'columns' },
      { kind: 'rule', lines: 0 },
      { kind: 'rule', lines: 4 },
      { kind: 'rule', lines: 4, fill: true },
      { kind: 'page-break' },
    ]);
  });

  it('are signs with their words, and signs beside a caution', () => {
    const sign = drawSign('M009', 'gloves');
    const outcome = parseMarkup(
      '<ul class="signs"><li data-sign="M009">Gloves <strong>on</strong></li></ul><aside data-signal="notice" data-signs="M009"><p class="hazard">h</p></aside>',
      'page',
      { drawings, signs: new Map([['M009', sign]]) },
    );
    expect(outcome.ok && outcome.value).toMatchObject([
      { kind: 'signs', items: [{ sign, content: [run('Gloves '), { text: 'on', strong: true }] }] },
      { kind: 'caution', signs: [sign] },
    ]);
  });

  it('name only signs there are, each once, and no more than fit', () => {
    const told = (numbers: string) => {
      const html = `<aside data-signal="notice" data-signs="${numbers}"><p class="hazard">h</p></aside>`;
      const signs = new Map(['W012', 'W017', 'W021', 'M009'].map((each) => [each, plan]));
      const outcome = parseMarkup(html, 'page', { drawings, signs });
      return outcome.ok ? [] : outcome.problems.map(({ code, mend }) => [code, mend]);
    };
    expect(told('W021 M009 W017')).toEqual([]);
    expect(told('W022')).toEqual([['markup-sign', 'did you mean `W012`?']]);
    expect(told('M009 M009')[0]?.[0]).toBe('markup-sign');
    expect(told('W012 W017 W021 M009')[0]?.[0]).toBe('markup-sign');
    expect(told('')[0]?.[0]).toBe('markup-sign');
    expect(codes('<ul class="signs"><li>x</li></ul>')).toEqual(['markup-attribute']);
  });

  it('name only drawings there are', () => {
    expect(problems('<figure data-drawing="plam"></figure>')[0]).toMatchObject({
      code: 'markup-drawing',
      mend: 'did you mean `plan`?',
    });
  });

  it('do not break a page inside a group', () => {
    expect(codes('<section class="keep"><p>a</p><hr class="page-break"></section>')).toEqual([
      'markup-value',
    ]);
  });
});

describe('nothing is mended in silence', () => {
  it.each([
    ['an unknown element', '<p>a</p>\n <dvi>b</dvi>', 'markup-element', 2, 2],
    ['a block in a paragraph', '<p>a\n<ul><li>b</li></ul></p>', 'markup-place', 2, 1],
    ['a paragraph in a paragraph', '<p>a<p>b</p></p>', 'markup-place', 1, 5],
    ['an element left open', '<h1>a</h1>\n<p>b', 'markup-unclosed', 2, 1],
    ['an element closed by its parent', '<ul>\n<li>b</ul>', 'markup-unclosed', 2, 1],
    ['a crossing', '<p><strong>a<em>b</strong>c</em></p>', 'markup-unclosed', 1, 13],
    ['an end without a start', '<p>a</p></section>', 'markup-unclosed', 1, 9],
    ['words outside blocks', '<p>a</p>\n  stray', 'markup-place', 2, 3],
    ['an unknown attribute', '<p\n style="x">a</p>', 'markup-attribute', 2, 2],
    ['an attribute given twice', '<p id="a" id="b">a</p>', 'markup-syntax', 1, 13],
    ['a bare <', '<p>a < b</p>', 'markup-syntax', 1, 7],
    ['an unknown reference', '<p>a &nbps; b</p>', 'markup-syntax', 1, 11],
    ['a self-closed block', '<p/><p>b</p>', 'markup-unclosed', 1, 1],
    ['an unfinished comment', '<p>a</p><!-- b', 'markup-syntax', 1, 15],
    ['a document type', '<!doctype html><p>a</p>', 'markup-syntax', 1, 1],
    ['an id given twice', '<p id="a">a</p>\n<p id="a">b</p>', 'markup-id', 2, 4],
    ['an unfit id', '<p id="1 a">a</p>', 'markup-value', 1, 4],
    ['a count out of range', '<hr data-lines="0">', 'markup-value', 1, 5],
    ['a script', '<script>alert(1)</script>', 'markup-element', 1, 1],
  ])('%s is told at its place', (_, html, code, line, column) => {
    const [problem] = problems(html);
    expect(problem).toMatchObject({ code, at: { file: 'what page made', line, column } });
  });

  it('all problems are told at once', () => {
    expect(codes('<foo></foo><p class="big">a</p><ul></ul>')).toEqual([
      'markup-element',
      'markup-value',
      'markup-empty',
    ]);
  });
});

describe('markup made by a template', () => {
  const whole = (source: string, context: Record<string, unknown>) => {
    const templates = compileTemplates({ page: source });
    if (!templates.ok) throw new Error('the template is wrong');
    const made = templates.value.render('page', context);
    if (!made.ok) throw new Error('a value is missing');
    return parseMarkup(made.value.html, 'page', { drawings, origins: made.value.origins });
  };

  it('prints a name letter for letter', () => {
    const outcome = whole('<p>{{name}}</p>', { name: 'A & B <left>' });
    expect(outcome).toMatchObject({ ok: true, value: [{ content: [run('A & B <left>')] }] });
  });

  it('has its problems at their place in the template, not in what it made', () => {
    const outcome = whole('{{#each l}}\n<p>{{this}}</p>\n{{/each}}\n<p\n  colour="red">x</p>', {
      l: ['a\nb', 'c', 'd'],
    });
    expect(outcome).toMatchObject({ ok: false, problems: [{ at: { file: 'page', line: 5, column: 3 } }] });
  });

  it('never lets text become markup, whatever the text', () => {
    const printable = fc.string({ unit: 'grapheme' }).filter((name) => !/^[ \t\n\r\f]*$/.test(name));
    const markup = fc.constantFrom(
      '<b>',
      '</p>',
      '&lt;',
      '&',
      '"',
      "'",
      '<!--',
      '-->',
      '{{x}}',
      '<p id="q">',
      ' ',
      'a',
    );
    const hostile = fc.array(markup, { minLength: 1, maxLength: 6 }).map((list) => `x${list.join('')}`);
    fc.assert(
      fc.property(fc.oneof(printable, hostile), (name) => {
        const outcome = whole('<p id="i">{{name}}</p><ul><li>{{name}}</li></ul>', { name });
        if (!outcome.ok) throw new Error(outcome.problems.map((problem) => problem.message).join());
        const [paragraph] = outcome.value;
        const collapsed = name.replace(/[ \t\n\r\f]+/g, ' ').replace(/^ | $/g, '');
        expect(outcome.value).toHaveLength(2);
        expect(paragraph?.kind === 'paragraph' && text(paragraph.content)).toBe(withApostrophes(collapsed));
      }),
      { numRuns: 300 },
    );
  });
});

it('random markup never crashes the reader: it gives blocks or problems', () => {
  const scrap = fc.constantFrom(
    '<p>',
    '</p>',
    '<ul>',
    '<li>',
    '</ul>',
    '<table>',
    '<tr>',
    '<td>',
    '<aside data-signal="danger">',
    '<ol class="steps">',
    '<br>',
    'x',
    '<',
    '&',
    '"',
    '<a href="#',
    '<hr class=page-break>',
    '</',
    '<figure data-drawing=plan>',
  );
  fc.assert(
    fc.property(fc.array(scrap, { maxLength: 25 }), (scraps) => {
      const outcome = parseMarkup(scraps.join(''), 'page', { drawings });
      expect(outcome.ok || outcome.problems.length > 0).toBe(true);
    }),
    { numRuns: 500 },
  );
});
