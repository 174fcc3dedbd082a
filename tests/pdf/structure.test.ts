import { beforeAll, describe, expect, it } from 'vitest';
import type { LaidOut } from '../../src/layout/frame';
import { writePdf } from '../../src/pdf/write';
import { options, page, paper, textItem } from '../helpers/laidOut';
import { operations, PdfFile } from '../helpers/pdfFile';
import { openPdf } from '../helpers/pdfText';

interface TreeNode {
  readonly role?: string;
  readonly alt?: string;
  readonly children?: readonly TreeNode[];
  readonly type?: string;
}

/** A tree as one line: `H1[content]`. */
const plain = (node: TreeNode): string =>
  node.role === undefined
    ? (node.type ?? '')
    : `${node.role}${node.children?.length ? `[${node.children.map(plain).join(' ')}]` : ''}`;

let bytes: Uint8Array;
beforeAll(async () => {
  bytes = await writePdf(paper, options);
});

async function treeOf(pdfBytes: Uint8Array, number: number): Promise<TreeNode> {
  const pdf = await openPdf(pdfBytes);
  const tree = await (await pdf.getPage(number)).getStructTree();
  await pdf.destroy();
  return tree as TreeNode;
}

describe('the structure tree', () => {
  it('is found on each page as it was laid out, content and children in reading order', async () => {
    expect(plain(await treeOf(bytes, 1))).toBe(
      'Root[Document[Sect[H1[content] P[content Span[content] content Link[content object]] ' +
        'L[LI[Lbl[content] LBody[content]]] ' +
        'Table[THead[TR[TH[content] TH[content]]] TBody[TR[TH[content]] TR[TD[content]]]] Figure[content]]]]',
    );
    expect(plain(await treeOf(bytes, 2))).toBe('Root[Document[Sect[H1[content] Note[content] P[content]]]]');
  });

  it('has no content on a page of artifacts alone', async () => {
    const file = new PdfFile(bytes);
    const [third] = operations(file.stream(file.dict(file.pages[2]).Contents)).filter(
      ({ operator }) => operator === 'BDC',
    );
    expect(third).toBeUndefined();
  });

  it('carries words, boxes, scopes, spans, numbering, language and names', () => {
    const file = new PdfFile(bytes);
    const elements = [...file.objects.values()]
      .map((value) => file.dict(value))
      .filter((dict) => 'S' in dict && 'P' in dict);
    const of = (type: string) =>
      elements.filter((dict) => JSON.stringify(dict.S) === JSON.stringify({ name: type }));
    expect(of('Figure')[0]).toMatchObject({
      Alt: 'A valve, open (½ turn)',
      A: { BBox: [100, 332, 200, 392], O: { name: 'Layout' } },
    });
    expect(of('TH').map((dict) => file.dict(dict.A).Scope)).toMatchObject([
      { name: 'Column' },
      { name: 'Column' },
      { name: 'Row' },
    ]);
    expect(of('TD').map((dict) => file.dict(dict.A).ColSpan)).toEqual([undefined, 2]);
    expect(of('TD')[0]).not.toHaveProperty('K');
    expect(of('L')[0]).toMatchObject({ A: { ListNumbering: { name: 'Decimal' } } });
    expect(of('P')[1]).toMatchObject({ Lang: 'de' });
    expect(of('Note')[0]?.ID).toMatch(/^note-/);
  });

  it('keeps a paragraph that runs over the page in one element', async () => {
    const over: LaidOut = {
      structure: [{ type: 'Document' }, { type: 'P', parent: 0 }],
      pages: [
        page('1', [textItem('first', 72, 700, { tag: 1 })]),
        page('2', [textItem('second', 72, 72, { tag: 1 })]),
      ],
      destinations: [],
      outline: [],
    };
    const made = await writePdf(over, options);
    const file = new PdfFile(made);
    expect(plain(await treeOf(made, 1))).toBe('Root[Document[P[content]]]');
    expect(plain(await treeOf(made, 2))).toBe('Root[Document[P[content]]]');
    expect(
      [...file.objects.values()].filter((value) => JSON.stringify(file.dict(value).S) === '{"name":"P"}'),
    ).toHaveLength(1);
  });

  it('has one mark for items of one element that follow each other', async () => {
    const lines = ['a', 'b', 'c'].map((text, index) => textItem(text, 72, 100 + index * 12, { tag: 1 }));
    const one: LaidOut = {
      structure: [{ type: 'Document' }, { type: 'P', parent: 0 }],
      pages: [page('1', lines)],
      destinations: [],
      outline: [],
    };
    const file = new PdfFile(await writePdf(one, options));
    const marks = operations(file.stream(file.dict(file.pages[0]).Contents)).filter(
      ({ operator }) => operator === 'BDC',
    );
    expect(marks).toHaveLength(1);
  });
});
