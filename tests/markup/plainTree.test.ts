import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Diagnostic } from '../../src/diagnostic/diagnostic';
import { plainTree } from '../../src/markup/plainTree';
import { fullTree, readTree, type TreeNode } from '../../src/markup/tree';

const nowhere = () => ({ template: 'page', line: 1, column: 1 });

function full(html: string): {
  readonly tree: readonly TreeNode[];
  readonly problems: readonly Diagnostic[];
} {
  const problems: Diagnostic[] = [];
  const tree = fullTree(html, nowhere, (problem) => void problems.push(problem));
  return { tree, problems };
}

/** The quick reader gives what the full one gives, which has nothing to say, or it gives up. */
function agrees(html: string): boolean {
  const plain = plainTree(html);
  if (plain === undefined) return false;
  expect({ tree: plain, problems: [] }).toEqual(full(html));
  return true;
}

describe('the quick reader of markup', () => {
  it('reads what is written as it ought to be', () => {
    for (const html of [
      '',
      'words',
      '<p id="a" class=\'lead\'>a &amp; b &lt;c&gt; &quot;&#x27;&nbsp;d</p>\n<p\n  data-critical >x</p>',
      '<ol class="steps"><li data-critical><p class="action">x<br>y</p></li></ol><hr class="page-break">',
      '&amp;first <!-- a note --> and <!---->more<p><!-- > <p> - - --> x</p>',
      '<a href="#x&amp;y&quot;z">–’°½</a>',
      '<col data-weight="2"><hr>',
      'a\f\tb > c',
    ])
      expect(agrees(html), html).toBe(true);
  });

  it('leaves everything else to the full reader', () => {
    for (const html of [
      '<p>',
      '</p>',
      '<p><em></p></em>',
      '<P>x</P>',
      '<p class=lead>x</p>',
      '<p id="a" id="b">x</p>',
      '<p id="a"class="b">x</p>',
      '<p/>',
      '<hr/>',
      '</br>',
      '<!doctype html>',
      '<!-->x-->',
      '<!--->x-->',
      '<!-- <!-- -->',
      '<!-- --!> -->',
      '<!-- -',
      '<!--x--->',
      '<p',
      '<p id="a',
      '<p =x>y</p>',
      'a & b',
      '&constructor;',
      '&amp',
      '&ndash;',
      '&#8211;',
      '<3',
      '<',
      '<?x?>',
      'a\rb',
      'a\u0000b',
      'a\u0085b',
      'a\u{1F600}b',
      'a\ud800b',
      'a\uffffb',
      '<p>x</p >',
    ])
      expect(plainTree(html), html).toBeUndefined();
  });

  it('agrees with the full reader on anything it reads', () => {
    const scrap = fc.constantFrom(
      ...[
        '<p>',
        '</p>',
        '<em>',
        '</em>',
        '<br>',
        '<hr class="page-break">',
        '<a href="#x">',
        '</a>',
        'words',
        ' ',
      ],
      ...[
        '\n',
        '&amp;',
        '&nbsp;',
        '&',
        ';',
        '<',
        '>',
        '"',
        "'",
        '=',
        '<!--',
        '-->',
        '-',
        '!',
        "<p id='a\"' x>",
        '/',
      ],
      ...[
        '<b a="1"\nc="2" >',
        '</b>',
        '\u00a0',
        '\f',
        '\t',
        '&lt;',
        '&quot',
        '<!---->',
        '\u2028',
        '\ufdd0',
        '\u0001',
      ],
    );
    let read = 0;
    const html = fc.array(scrap, { maxLength: 9 }).map((scraps) => scraps.join(''));
    const closed = html.map((inside) => `<p>${inside}</p>`);
    fc.assert(
      fc.property(fc.oneof(html, closed), (markup) => {
        if (agrees(markup)) read += 1;
      }),
      { numRuns: 3000 },
    );
    expect(read).toBeGreaterThan(300);
  });

  it('is what markup is read with: what it gives up is read all the same', () => {
    const problems: Diagnostic[] = [];
    const tree = readTree('<p>a &ndash; b</p>', nowhere, (problem) => void problems.push(problem));
    expect(problems).toEqual([]);
    expect(tree).toEqual(full('<p>a – b</p>').tree);
  });
});
