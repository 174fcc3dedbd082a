import { describe, expect, it } from 'vitest';
import { parseMarkup } from '../../src/markup/parse';

const parsed = (html: string) => parseMarkup(html, 'page', { drawings: new Map() });
const inCell = (html: string) => `<table><tbody><tr><td>${html}</td></tr></tbody></table>`;

function fieldOf(html: string) {
  const outcome = parsed(inCell(html));
  if (!outcome.ok) throw new Error(outcome.problems.map(({ message }) => message).join('\n'));
  const [block] = outcome.value;
  return block?.kind === 'table' ? block.body[0]?.cells[0]?.field : undefined;
}

function told(html: string): readonly [code: string, message: string][] {
  const outcome = parsed(html);
  return outcome.ok ? [] : outcome.problems.map(({ code, message }) => [code, message]);
}

describe('fields', () => {
  it('in a cell are a line, a box to tick, or several lines, with room for as many letters as they say', () => {
    expect(fieldOf('<input name="a-1" title="Date">')).toEqual({
      kind: 'line',
      name: 'a-1',
      title: 'Date',
      letters: 5,
      lines: 1,
    });
    expect(fieldOf('<input type="checkbox" name="b" title="Good">')).toMatchObject({ kind: 'tick' });
    expect(fieldOf('<textarea name="c" title="Remarks" rows="3" size="20"></textarea>')).toMatchObject({
      kind: 'lines',
      lines: 3,
      letters: 20,
    });
  });

  it('between blocks are ruled lines', () => {
    const outcome = parsed('<textarea name="c" title="Remarks" rows="3"></textarea>');
    expect(outcome.ok && outcome.value).toMatchObject([
      { kind: 'rule', lines: 3, field: { kind: 'lines', name: 'c', title: 'Remarks' } },
    ]);
  });

  it('stand alone in their cells, are named once, and say what belongs in them', () => {
    const sound = '<input name="a" title="A">';
    expect(told(inCell(`Date: ${sound}`))).toEqual([['markup-part', 'a field stands alone in its cell']]);
    expect(told(inCell(`${sound}<input name="b" title="B">`))).toEqual([
      ['markup-part', 'a field stands alone in its cell'],
    ]);
    expect(told(inCell(sound) + inCell(sound))).toEqual([['markup-id', 'the field name `a` is given twice']]);
    expect(told(inCell('<input name="a">'))).toEqual([['markup-attribute', '`<input>` needs `title`']]);
    expect(told(inCell('<input name="a.b" title="A">'))).toEqual([
      ['markup-value', '`name` cannot be `a.b`'],
    ]);
  });
});
