/**
 * The text of a spec file, read as YAML, with the place of everything in it.
 */
import { isAlias, isMap, isScalar, isSeq, LineCounter, type Node, parseAllDocuments, type YAMLError } from 'yaml';
import { bad, type Diagnostic, good, type Outcome, type Spot } from '../diagnostic/diagnostic';

/** A path into the data: keys and list positions, from the top. */
export type SpecPath = readonly (string | number)[];

/** A file that was read: its data and where each piece stands. */
export interface SpecSource {
  readonly file: string;
  /** Plain data as YAML gives it. */
  readonly data: unknown;
  /** The place of a value; of the nearest parent that exists if the path does not. */
  spotOfValue(path: SpecPath): Spot;
  /** The place of a key; of its value if it has none of its own. */
  spotOfKey(path: SpecPath): Spot;
  /** What the keeper wrote there, letter for letter, if it is a single value. */
  written(path: SpecPath): string | undefined;
}

/** An anchor used oftener than this is taken for one that expands without end. */
const mostAliases = 100;

/** How a path is shown to a keeper: `tanks.main-tank.capacity`, `lines.3.through.2` with lists counted from 1. */
export function showPath(path: SpecPath): string {
  return path.map((part) => (typeof part === 'number' ? String(part + 1) : part)).join('.');
}

/** Read YAML text. Reports every fault of form at once: bad indentation, duplicate keys, endless anchors, an empty file. */
export function readSource(text: string, file: string): Outcome<SpecSource> {
  const lines = new LineCounter();
  const parsed = parseAllDocuments(text.replace(/^\uFEFF/, ''), { lineCounter: lines, prettyErrors: false });
  const documents = 'empty' in parsed ? [] : parsed;
  const spotAt = (offset: number, path?: SpecPath): Spot => {
    const { line, col } = lines.linePos(offset);
    const spot = { file, line: Math.max(1, line), column: Math.max(1, col) };
    return path === undefined || path.length === 0 ? spot : { ...spot, path: showPath(path) };
  };

  const [document, second] = documents;
  if (document === undefined || document.contents === null) return bad([emptyFile(spotAt(0))]);
  const problems = documents.flatMap((each) => [...each.errors, ...each.warnings].map((error) => yamlProblem(error, spotAt(error.pos[0]))));
  if (second !== undefined) {
    problems.push({
      code: 'spec-yaml', severity: 'error', at: spotAt(second.range?.[0] ?? 0),
      message: 'the file holds more than one document', found: '`---` between two documents',
      expected: 'one car in one file', mend: 'take the second part out, into a file of its own',
    });
  }
  if (problems.length > 0) return bad(problems);
  if (!isMap(document.contents)) return bad([emptyFile(spotAt(0))]);

  let data: unknown;
  try {
    data = document.toJS({ maxAliasCount: mostAliases });
  } catch {
    return bad([{
      code: 'spec-endless', severity: 'error', at: spotAt(firstAliasOffset(document.contents) ?? 0),
      message: 'an anchor expands without end', found: 'a `*name` that refers to itself or is used over and over',
      expected: 'each value written where it belongs', mend: 'write the values out instead of referring to an anchor',
    }]);
  }
  const root = document.contents;
  const follow = (node: unknown): Node | undefined => {
    const target = isAlias(node) ? node.resolve(document) : node;
    return isMap(target) || isSeq(target) || isScalar(target) ? target : undefined;
  };
  const nodeAt = (path: SpecPath) => walk(root, path, follow);
  return good({
    file,
    data,
    spotOfValue: (path) => spotAt(nodeAt(path).value.range?.[0] ?? 0, path),
    spotOfKey: (path) => spotAt((nodeAt(path).key ?? nodeAt(path).value).range?.[0] ?? 0, path),
    written: (path) => {
      const { value, depth } = nodeAt(path);
      if (depth !== path.length || !isScalar(value)) return undefined;
      return value.source ?? String(value.value);
    },
  });
}

interface Found {
  readonly value: Node;
  readonly key?: Node;
  /** How many parts of the path were found. */
  readonly depth: number;
}

/** Go down a path as far as it exists. */
function walk(root: Node, path: SpecPath, follow: (node: unknown) => Node | undefined): Found {
  let found: Found = { value: root, depth: 0 };
  for (const [index, part] of path.entries()) {
    const here = found.value;
    if (isMap(here)) {
      const pair = here.items.find((item) => isScalar(item.key) && String(item.key.value) === String(part));
      const keyNode = pair === undefined ? undefined : follow(pair.key);
      if (pair === undefined || keyNode === undefined) return found;
      const value = follow(pair.value);
      if (value === undefined) return { value: keyNode, key: keyNode, depth: index };
      found = { value, key: keyNode, depth: index + 1 };
    } else if (isSeq(here) && typeof part === 'number') {
      const value = follow(here.items[part]);
      if (value === undefined) return found;
      found = { value, depth: index + 1 };
    } else {
      return found;
    }
  }
  return found;
}

function firstAliasOffset(node: unknown): number | undefined {
  if (isAlias(node)) return node.range?.[0];
  const children: unknown[] = isMap(node) ? node.items.map((item) => item.value) : isSeq(node) ? node.items : [];
  for (const child of children) {
    const offset = firstAliasOffset(child);
    if (offset !== undefined) return offset;
  }
  return undefined;
}

function emptyFile(at: Spot): Diagnostic {
  return {
    code: 'spec-empty', severity: 'error', at,
    message: 'the file holds no keys and values', expected: 'a spec that begins with `kettlebook: 1`',
    mend: 'start from one of the cars in the folder `cars`',
  };
}

function yamlProblem(error: YAMLError, at: Spot): Diagnostic {
  if (error.code === 'DUPLICATE_KEY') {
    return {
      code: 'spec-duplicate-key', severity: 'error', at,
      message: 'this key stands twice in the same place', expected: 'each key once',
      mend: 'take one of the two out, or give it another name',
    };
  }
  const [message = error.message] = error.message.split('\n');
  const tab = error.code === 'TAB_AS_INDENT';
  return {
    code: 'spec-yaml', severity: 'error', at,
    message: `the file cannot be read here: ${message.charAt(0).toLowerCase()}${message.slice(1).replace(/\.$/, '')}`,
    mend: tab ? 'indent with spaces, not tabs' : 'look at the indentation, the colons and the quotes on this line and the one before',
  };
}
