/**
 * The text of a spec file, read as YAML, with the place of everything in it.
 */
import {
  type Document,
  isAlias,
  isMap,
  isScalar,
  isSeq,
  LineCounter,
  type Node,
  type Pair,
  parseAllDocuments,
  type YAMLMap,
} from 'yaml';
import { bad, type Diagnostic, good, type Outcome, type Spot } from '../diagnostic/diagnostic';
import { emptyFile, type SpotAt, tooDeep, troubleOfForm, unreadable } from './form';
import { isKept, keptData } from './kept';
import { keyText, survey } from './survey';

/** A path into the data: keys and list positions, from the top. */
export type SpecPath = readonly (string | number)[];

/** A file that was read: its data and where each piece stands. */
export interface SpecSource {
  readonly file: string;
  readonly text: string;
  /** Plain data as YAML gives it. */
  readonly data: unknown;
  /** The place of a value; of the nearest parent that exists if the path does not. */
  spotOfValue(path: SpecPath): Spot;
  /** The place to point to: of a single value itself, of anything larger at its key, of what is absent at its parent’s key. */
  spotOf(path: SpecPath): Spot;
  /** The place of a key; of its value if it has none of its own. */
  spotOfKey(path: SpecPath): Spot;
  /** What the keeper wrote there, letter for letter and without quotes, if it is a single value. */
  written(path: SpecPath): string | undefined;
}

/** How a path is shown to a keeper: `tanks.main-tank.capacity`, `lines.3.through.2` with lists counted from 1. */
export function showPath(path: SpecPath): string {
  return path.map((part) => (typeof part === 'number' ? String(part + 1) : part)).join('.');
}

/** Read YAML text. Reports every fault of form at once: bad indentation, duplicate keys, endless anchors, an empty file. */
export function readSource(given: string, file: string): Outcome<SpecSource> {
  const text = given.replace(/^\uFEFF/, '');
  if (isKept(text)) return good(keptSource(text, file));
  if (last?.text !== text || last.file !== file) last = { text, file, read: readText(text, file) };
  return last.read;
}

/** What was read last: a spec is asked for its own folder first and for its car right after. */
let last: { readonly text: string; readonly file: string; readonly read: Outcome<SpecSource> } | undefined;

/** A source of which something is kept; the text is read when a place in it is asked for, or data that are not kept. */
function keptSource(text: string, file: string): SpecSource {
  let known: SpecSource | undefined;
  const placed = (): SpecSource => {
    if (known !== undefined) return known;
    const read = readText(text, file);
    if (!read.ok) throw new Error(`${file} was read before and cannot be read now`);
    known = read.value;
    return known;
  };
  return {
    file,
    text,
    get data() {
      return (keptData(text) ?? placed()).data;
    },
    spotOf: (path) => placed().spotOf(path),
    spotOfValue: (path) => placed().spotOfValue(path),
    spotOfKey: (path) => placed().spotOfKey(path),
    written: (path) => placed().written(path),
  };
}

function readText(text: string, file: string): Outcome<SpecSource> {
  const spotAt = spotsIn(text, file);
  const documents = parse(text);
  if (documents === undefined) return bad([tooDeep(spotAt(0))]);
  const [document] = documents;
  const trouble = troubleOfForm(documents, text, spotAt);
  if (trouble.length > 0) return bad(trouble);
  if (document === undefined || !isMap(document.contents)) return bad([emptyFile(spotAt(0))]);

  const root = document.contents;
  const { problems, targets } = survey(root, spotAt);
  if (problems.length > 0) return bad(problems);
  const data = plainData(document, spotAt);
  if (!data.ok) return data;

  const follow = (node: unknown): Node | undefined => {
    const target = isAlias(node) ? targets.get(node) : node;
    return isMap(target) || isSeq(target) || isScalar(target) ? target : undefined;
  };
  const nodeAt = wayfinder(root, follow);
  const spotOfValue = (path: SpecPath) => spotAt(nodeAt(path).value.range?.[0] ?? 0, path);
  const spotOfKey = (path: SpecPath) => {
    const { key, value } = nodeAt(path);
    return spotAt((key ?? value).range?.[0] ?? 0, path);
  };
  return good({
    file,
    text,
    data: data.value,
    spotOf: (path) => {
      const { value, depth } = nodeAt(path);
      return depth === path.length && isScalar(value) ? spotOfValue(path) : spotOfKey(path);
    },
    spotOfValue,
    spotOfKey,
    written: (path) => {
      const { value, depth } = nodeAt(path);
      if (depth !== path.length || !isScalar(value)) return undefined;
      return value.source ?? String(value.value);
    },
  });
}

/** Offsets to places. A fault found at the end of the file is told at its last written letter. */
function spotsIn(text: string, file: string): SpotAt {
  const end = text.trimEnd().length;
  // the counter is told of lines here: the parser tells them out of order when it goes back over what it cannot read
  const lines = new LineCounter();
  lines.addNewLine(0);
  for (const { index } of text.matchAll(/\n/g)) lines.addNewLine(index + 1);
  return (offset, path) => {
    const { line, col: column } = lines.linePos(Math.max(0, Math.min(offset, end)));
    const spot = { file, line, column };
    return path === undefined || path.length === 0 ? spot : { ...spot, path: showPath(path) };
  };
}

/**
 * The documents in a text; nothing if it is nested deeper than the reader can go. Twice the same key is looked
 * for afterwards, in time that grows with the file and not with its square.
 */
function parse(text: string): readonly Document.Parsed[] | undefined {
  try {
    const parsed = parseAllDocuments(text, { prettyErrors: false, uniqueKeys: false });
    return 'empty' in parsed ? [] : parsed;
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

/** The data of a document whose anchors are known to be harmless. */
function plainData(document: Document.Parsed, spotAt: SpotAt): Outcome<unknown> {
  try {
    return good(document.toJS({ maxAliasCount: -1 }));
  } catch (error) {
    const problem: Diagnostic = unreadable(error instanceof Error ? error.message : '', spotAt(0));
    return bad([problem]);
  }
}

interface Found {
  readonly value: Node;
  readonly key?: Node;
  /** How many parts of the path were found. */
  readonly depth: number;
}

type Follow = (node: unknown) => Node | undefined;

/** Goes down paths as far as they exist. The keys of a mapping are listed once, when it is first passed through. */
function wayfinder(root: Node, follow: Follow): (path: SpecPath) => Found {
  const listed = new WeakMap<YAMLMap, ReadonlyMap<string, Pair>>();
  const pairsOf = (map: YAMLMap): ReadonlyMap<string, Pair> => {
    const known = listed.get(map) ?? listPairs(map, follow);
    listed.set(map, known);
    return known;
  };
  const step = (found: Found, part: string | number): Found | undefined => {
    const here = found.value;
    if (isMap(here)) {
      const pair = pairsOf(here).get(String(part));
      const key = pair === undefined ? undefined : follow(pair.key);
      if (pair === undefined || key === undefined) return undefined;
      const value = follow(pair.value);
      return value === undefined
        ? { value: key, key, depth: found.depth }
        : { value, key, depth: found.depth + 1 };
    }
    const value = isSeq(here) && typeof part === 'number' ? follow(here.items[part]) : undefined;
    return value === undefined ? undefined : { value, depth: found.depth + 1 };
  };
  return (path) => {
    let found: Found = { value: root, depth: 0 };
    for (const part of path) {
      const next = step(found, part);
      if (next === undefined) return found;
      found = next;
    }
    return found;
  };
}

function listPairs(map: YAMLMap, follow: Follow): ReadonlyMap<string, Pair> {
  return new Map(
    map.items.flatMap((pair) => {
      const name = keyText(follow(pair.key));
      return name === undefined ? [] : [[name, pair] as const];
    }),
  );
}
