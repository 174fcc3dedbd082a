/**
 * The structure tree: what each piece of a page is, in reading order (ISO 32000-1, 14.7 and 14.8).
 */
import type { LaidOut, StructureElement, StructureIndex } from '../layout/frame';
import type { ObjectStore } from './objects';
import { nums, ref, textString } from './syntax';

/** A page as the tree sees it. */
export interface PageHandle {
  readonly index: number;
  /** Number of its dictionary. */
  readonly id: number;
  readonly heightPt: number;
}

/** Something on a page that belongs to an element. `moment` counts up in the order of reading through the whole paper. */
type Content = { readonly moment: number; readonly page: PageHandle } & (
  | { readonly kind: 'marked'; readonly mcid: number }
  | { readonly kind: 'annotation'; readonly id: number }
);

interface Node {
  readonly id: number;
  readonly element: StructureElement;
  readonly children: Node[];
  readonly contents: Content[];
  /** When the first content of the element or of anything in it was put on a page. */
  firstMoment?: number;
}

/** Collects what is put on pages, element by element; then writes the tree. */
export class StructureTree {
  private readonly nodes: readonly Node[];
  private readonly rootId: number;
  private readonly marksOf: number[][] = [];
  private readonly annotations: { readonly key: number; readonly node: Node }[] = [];
  private moment = 0;
  private rank = 0;
  private nextKey: number;

  constructor(
    structure: LaidOut['structure'],
    pageCount: number,
    private readonly store: ObjectStore,
  ) {
    this.rootId = store.reserve();
    this.nodes = structure.map((element) => ({ id: store.reserve(), element, children: [], contents: [] }));
    this.nextKey = pageCount;
    for (const node of this.nodes) {
      if (node.element.parent !== undefined) this.node(node.element.parent).children.push(node);
    }
  }

  /** From here on what is put on pages is read after everything of a lower rank. */
  readAt(rank: number): void {
    this.rank = rank;
  }

  /** Notes the next stretch of content of a page, which belongs to an element. Stretches are numbered page by page. */
  mark(tag: StructureIndex, page: PageHandle): void {
    const node = this.node(tag);
    this.marksOf[page.index] ??= [];
    const marks = this.marksOf[page.index] ?? [];
    const mcid = marks.push(node.id) - 1;
    node.contents.push({ kind: 'marked', mcid, page, moment: this.nextMoment(node) });
  }

  /** Notes an annotation of an element; gives its key in the parent tree. */
  annotate(tag: StructureIndex, page: PageHandle, id: number): number {
    const node = this.node(tag);
    node.contents.push({ kind: 'annotation', id, page, moment: this.nextMoment(node) });
    const key = this.nextKey++;
    this.annotations.push({ key, node });
    return key;
  }

  /** Writes all elements; gives the number of the tree's root. */
  write(): number {
    for (const node of this.nodes) this.store.put(node.id, this.elementBody(node));
    const pages = this.marksOf.map((marks, page) => `${page} [${marks.map(ref).join(' ')}]`);
    const links = this.annotations.map(({ key, node }) => `${key} ${ref(node.id)}`);
    const parentTree = this.store.add(`<</Nums [${[...pages.filter(Boolean), ...links].join(' ')}]>>`);
    const notes = this.nodes.filter(({ element }) => element.type === 'Note');
    const names = notes.map((node) => `${textString(noteName(node))} ${ref(node.id)}`).sort();
    const idTree = names.length === 0 ? '' : `/IDTree <</Names [${names.join(' ')}]>>`;
    const top = this.nodes[0] ? `/K ${ref(this.nodes[0].id)}` : '';
    this.store.put(
      this.rootId,
      `<</Type /StructTreeRoot ${top} /ParentTree ${ref(parentTree)} /ParentTreeNextKey ${this.nextKey} ${idTree}>>`,
    );
    return this.rootId;
  }

  /** Counts on, and notes for the element and all around it when their first content is read. */
  private nextMoment(node: Node): number {
    const moment = this.rank * momentsPerRank + this.moment++;
    let around: Node | undefined = node;
    while (around && moment < (around.firstMoment ?? Number.POSITIVE_INFINITY)) {
      around.firstMoment = moment;
      const { parent }: StructureElement = around.element;
      around = parent === undefined ? undefined : this.node(parent);
    }
    return moment;
  }

  private node(index: StructureIndex): Node {
    const node = this.nodes[index];
    if (!node) throw new RangeError(`there is no structure element ${index}`);
    return node;
  }

  private elementBody(node: Node): string {
    const { element, contents } = node;
    if (contents.length > 1) contents.sort((one, other) => one.moment - other.moment);
    const first = contents[0];
    const parent = element.parent === undefined ? this.rootId : this.node(element.parent).id;
    // a book has tens of thousands of these
    let body = `<</Type /StructElem /S /${element.type} /P ${ref(parent)}`;
    if (first) body += ` /Pg ${ref(first.page.id)}`;
    body += kidsOf(node, first?.page);
    if (element.alt !== undefined) body += ` /Alt ${textString(element.alt)}`;
    if (element.language !== undefined) body += ` /Lang ${textString(element.language)}`;
    if (element.type === 'Note') body += ` /ID ${textString(noteName(node))}`;
    return `${body}${attributesOf(element, first?.page)}>>`;
  }
}

/** More than a paper has pieces of content. */
const momentsPerRank = 2 ** 32;

/** A note must have a name of its own (ISO 14289-1, 7.9). */
function noteName({ id }: Node): string {
  return `note-${String(id).padStart(6, '0')}`;
}

/** The element's own content and its children, in reading order: a child stands where its first content was put. */
function kidsOf(node: Node, home: PageHandle | undefined): string {
  const { children, contents } = node;
  let kids = '';
  let next = 0;
  for (let at = 0; at <= children.length; at += 1) {
    const child = children[at];
    const before = child === undefined ? Number.POSITIVE_INFINITY : child.firstMoment;
    for (let own = contents[next]; own && before !== undefined && own.moment < before; own = contents[next]) {
      kids += `${kids === '' ? '' : ' '}${kidOf(own, home)}`;
      next += 1;
    }
    if (child !== undefined) kids += `${kids === '' ? '' : ' '}${ref(child.id)}`;
  }
  return kids === '' ? '' : ` /K [${kids}]`;
}

/** A piece of content in its element's list; the page is named unless it is the element's own. */
function kidOf(content: Content, home: PageHandle | undefined): string {
  const page = content.page === home ? '' : ` /Pg ${ref(content.page.id)}`;
  if (content.kind === 'annotation') return `<</Type /OBJR${page} /Obj ${ref(content.id)}>>`;
  return page === '' ? String(content.mcid) : `<</Type /MCR${page} /MCID ${content.mcid}>>`;
}

/** What a type of element says beside its name (ISO 32000-1, 14.8.5). */
function attributesOf(element: StructureElement, page: PageHandle | undefined): string {
  const { box, scope, columnSpan = 1, numbering } = element;
  if (box && page) {
    const [left, top, right, bottom] = box;
    const corners = nums(left, page.heightPt - bottom, right, page.heightPt - top);
    return ` /A <</O /Layout /Placement /Block /BBox [${corners}]>>`;
  }
  if (numbering) return ` /A <</O /List /ListNumbering /${numbering}>>`;
  const table = (scope ? ` /Scope /${scope}` : '') + (columnSpan > 1 ? ` /ColSpan ${columnSpan}` : '');
  return table === '' ? '' : ` /A <</O /Table${table}>>`;
}
