import { parseFragment } from 'parse5';
import { describe, expect, it } from 'vitest';
import type { Drawing, Shape } from '../../src/drawing/drawing';
import { toSvg } from '../../src/drawing/svg';
import { squareFonts } from '../helpers/squareMetrics';

const drawing = (...shapes: Shape[]): Drawing => ({
  name: 'Plan of "A & B"',
  widthPt: 200,
  heightPt: 100.5,
  shapes,
  alt: 'a car <seen> from above',
});

describe('a drawing as SVG', () => {
  it('has its size, its name and its words', () => {
    expect(toSvg(drawing())).toBe(
      '<svg xmlns="http://www.w3.org/2000/svg" role="img" width="200pt" height="100.5pt" viewBox="0 0 200 100.5">' +
        '<title>Plan of &quot;A &amp; B&quot;</title><desc>a car &lt;seen&gt; from above</desc></svg>',
    );
  });

  it('has every kind of shape', () => {
    const svg = toSvg(
      drawing(
        {
          kind: 'path',
          pieces: [
            { op: 'move', x: 1, y: 2 },
            { op: 'line', x: 3, y: 4 },
            { op: 'curve', x1: 1, y1: 2, x2: 3, y2: 4, x: 5, y: 6 },
            { op: 'close' },
          ],
          paint: {
            fill: '#ffffff',
            stroke: { colour: '#000000', widthPt: 0.5, dashPt: [3, 1.5], cap: 'round' },
          },
        },
        { kind: 'rect', x: 1, y: 2, width: 3, height: 4, radius: 1, paint: { fill: '#cccccc' } },
        { kind: 'circle', cx: 5, cy: 6, r: 1 / 3, paint: {} },
        {
          kind: 'text',
          x: 7,
          y: 8,
          text: 'V1',
          face: 'narrow-bold',
          sizePt: 8,
          colour: '#000000',
          anchor: 'middle',
          turn: 90,
        },
      ),
    );
    expect(svg).toContain(
      '<path d="M1 2 L3 4 C1 2 3 4 5 6 Z" fill="#ffffff" stroke="#000000" stroke-width="0.5" stroke-dasharray="3 1.5" stroke-linecap="round"></path>',
    );
    expect(svg).toContain('<rect x="1" y="2" width="3" height="4" rx="1" fill="#cccccc"></rect>');
    expect(svg).toContain('<circle cx="5" cy="6" r="0.333" fill="none"></circle>');
    expect(svg).toContain(
      '<text x="7" y="8" text-anchor="middle" transform="rotate(90 7 8)" font-family="\'IBM Plex Sans Condensed\', sans-serif" font-weight="bold" font-size="8" fill="#000000">V1</text>',
    );
  });

  it('shows text letter for letter, whatever it says', () => {
    const words = '</text><script>alert("x")</script> & \'q\' &lt; \u0001';
    const svg = toSvg(
      drawing({
        kind: 'text',
        x: 0,
        y: 0,
        text: words,
        face: 'text',
        sizePt: 8,
        colour: '#000000',
        anchor: 'start',
      }),
    );
    const [root] = parseFragment(svg).childNodes;
    const children = root && 'childNodes' in root ? root.childNodes : [];
    expect(children.map(({ nodeName }) => nodeName)).toEqual(['title', 'desc', 'text']);
    const shown = children[2] && 'childNodes' in children[2] ? children[2].childNodes[0] : undefined;
    expect(shown && 'value' in shown ? shown.value : '').toBe(words.replace('\u0001', ''));
  });

  it('holds text to its width in the fonts it was made for, and keeps the spaces at its ends', () => {
    const text = (words: string) =>
      drawing({
        kind: 'text',
        x: 0,
        y: 0,
        text: words,
        face: 'narrow',
        sizePt: 8,
        colour: '#000000',
        anchor: 'start',
      });
    // five square letters of 8 pt
    expect(toSvg(text(' tank'), squareFonts)).toContain(
      'textLength="40" lengthAdjust="spacingAndGlyphs" xml:space="preserve"> tank</text>',
    );
    expect(toSvg(text('tank'))).not.toMatch(/textLength|xml:space/);
  });

  it('is refused if a number is none', () => {
    for (const bad of [Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(() => toSvg(drawing({ kind: 'circle', cx: bad, cy: 0, r: 1, paint: {} }))).toThrow(RangeError);
      expect(() =>
        toSvg(drawing({ kind: 'path', pieces: [{ op: 'move', x: 0, y: bad }], paint: {} })),
      ).toThrow(RangeError);
    }
    expect(() => toSvg({ ...drawing(), widthPt: Number.NaN })).toThrow(RangeError);
  });

  it('does not mix up two drawings', () => {
    const one = toSvg(drawing({ kind: 'rect', x: 1, y: 1, width: 1, height: 1, paint: {} }));
    expect(toSvg(drawing())).not.toContain('rect');
    expect(one).toContain('rect');
  });
});
