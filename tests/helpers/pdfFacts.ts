/**
 * What checks of a file look at, read once: its structure tree, contents, annotations, metadata.
 */
import {
  type Dict,
  isDict,
  Name,
  type Operation,
  operations,
  type PdfFile,
  Ref,
  Stream,
  type Value,
} from './pdfFile';

/** One check: the clause it holds a file to, and the breaches it finds, in words. */
export interface Check {
  readonly clause: string;
  readonly breaches: (facts: PdfFacts) => readonly string[];
}

/** An element of the structure tree. */
export interface Element {
  readonly id: number;
  readonly dict: Dict;
  readonly type: string;
  readonly kids: readonly Value[];
  readonly parent: Element | undefined;
}

/** An annotation and the page it is on. */
export interface FoundAnnotation {
  readonly page: Dict;
  readonly annotation: Value;
  readonly dict: Dict;
  readonly type: string;
}

/** A file with what was read from it. */
export interface PdfFacts {
  readonly file: PdfFile;
  /** In the order of the tree, parents first. */
  readonly elements: readonly Element[];
  readonly byId: ReadonlyMap<number, Element>;
  /** Entries of the parent tree. */
  readonly owners: ReadonlyMap<number, Value>;
  /** The operators of each page. */
  readonly contents: readonly (readonly Operation[])[];
  readonly annotations: readonly FoundAnnotation[];
  readonly metadata: string;
  /** The operators of each appearance of a field. */
  readonly appearances: readonly (readonly Operation[])[];
  /** Every dictionary, also those of streams and those that stand in another. */
  readonly dicts: readonly Dict[];
}

/** Reads a file. What is changed in it afterwards is not seen. */
export function factsOf(file: PdfFile): PdfFacts {
  const elements = elementsOf(file);
  const metadata = file.get(file.catalog.Metadata);
  return {
    file,
    elements,
    byId: new Map(elements.map((element) => [element.id, element])),
    owners: ownersOf(file),
    contents: file.pages.map((page) => operations(file.stream(file.dict(page).Contents))),
    annotations: file.pages.flatMap((page) =>
      file.list(file.dict(page).Annots).map((annotation) => {
        const dict = file.dict(annotation);
        return { page: file.dict(page), annotation, dict, type: nameOf(dict.Subtype) };
      }),
    ),
    metadata: metadata instanceof Stream ? metadata.bytes.toString('utf8') : '',
    appearances: [...file.objects.values()].flatMap((value) =>
      value instanceof Stream && nameOf(value.dict.Subtype) === 'Form' ? [operations(value)] : [],
    ),
    dicts: [...file.objects.values()].flatMap(dictsIn),
  };
}

function dictsIn(value: Value | undefined): readonly Dict[] {
  if (value instanceof Stream) return dictsIn(value.dict);
  if (Array.isArray(value)) return value.flatMap(dictsIn);
  return isDict(value) ? [value, ...Object.values(value).flatMap(dictsIn)] : [];
}

function elementsOf(file: PdfFile): readonly Element[] {
  const list: Element[] = [];
  const walk = (value: Value, parent: Element | undefined): void => {
    const dict = file.dict(value);
    if (!(value instanceof Ref) || !('S' in dict)) return;
    const element = { id: value.id, dict, type: nameOf(dict.S), kids: file.list(dict.K), parent };
    list.push(element);
    for (const kid of element.kids) walk(kid, element);
  };
  for (const kid of file.list(file.dict(file.catalog.StructTreeRoot).K)) walk(kid, undefined);
  return list;
}

function ownersOf(file: PdfFile): ReadonlyMap<number, Value> {
  const nums = file.list(file.dict(file.dict(file.catalog.StructTreeRoot).ParentTree).Nums);
  return new Map(
    nums.flatMap((key, at) => (at % 2 === 0 ? [[Number(key), nums[at + 1] ?? null] as const] : [])),
  );
}

/** The name that a value is; empty for anything else. */
export const nameOf = (value: Value | undefined): string => (value instanceof Name ? value.name : '');

/** The breach, unless all is well. */
export const unless = (holds: boolean, words: string): readonly string[] => (holds ? [] : [words]);

/** An attribute of an element. */
export function attribute({ file }: PdfFacts, element: Element, name: string): Value {
  return (
    file
      .list(element.dict.A)
      .map((one) => file.dict(one)[name])
      .find((value) => value !== undefined) ?? null
  );
}

/** Types of the elements in an element, in order. */
export function childTypes({ byId }: PdfFacts, element: Element): readonly string[] {
  return element.kids.flatMap((kid) => (kid instanceof Ref ? (byId.get(kid.id)?.type ?? []) : []));
}

/** The element that an annotation belongs to, if it names it back. */
export function ownerOf(
  { file, byId, owners }: PdfFacts,
  { annotation, dict }: FoundAnnotation,
): Element | undefined {
  const owner = owners.get(Number(dict.StructParent));
  const element = owner instanceof Ref ? byId.get(owner.id) : undefined;
  const named = element?.kids.some((kid) => {
    const target = file.dict(kid).Obj;
    return target instanceof Ref && annotation instanceof Ref && target.id === annotation.id;
  });
  return named === true ? element : undefined;
}
