/** Faults of form, before anything is known of what the file says: said in words for somebody who does not know YAML. */
import { type Document, visit, type YAMLError } from 'yaml';
import type { Diagnostic, Spot } from '../diagnostic/diagnostic';

/** From an offset in the text to a place a keeper can find. */
export type SpotAt = (offset: number, path?: readonly (string | number)[]) => Spot;

/** Everything the reader of YAML complains of, and documents that are not one car in the present form of YAML. */
export function troubleOfForm(documents: readonly Document.Parsed[], spotAt: SpotAt): Diagnostic[] {
  const problems = firstOfEachLine(
    documents.flatMap((each) =>
      tellingOnes([...each.errors, ...each.warnings]).map((error) =>
        yamlProblem(error, spotAt(beginningOf(error, each))),
      ),
    ),
  );
  const [first, second] = documents;
  if (first?.directives?.yaml.version === '1.1') problems.push(oldYaml(spotAt(0)));
  if (second !== undefined) problems.push(secondDocument(spotAt(second.range?.[0] ?? 0)));
  return problems;
}

/** One mistake makes the reader stumble over much that follows: tabs and bottomless nesting hide everything else. */
function tellingOnes(errors: readonly YAMLError[]): readonly YAMLError[] {
  const tabs = errors.filter((error) => error.code === 'TAB_AS_INDENT');
  const deep = errors.filter(isTooDeep);
  if (deep.length > 0) return deep.slice(0, 1);
  return tabs.length > 0 ? tabs : errors;
}

function isTooDeep(error: YAMLError): boolean {
  return /call stack/i.test(error.message);
}

/** A quote that is not closed is told where it was opened, not at the end of the file. */
function beginningOf(error: YAMLError, document: Document.Parsed): number {
  const [offset] = error.pos;
  if (error.code !== 'MISSING_CHAR' || !/quote/.test(error.message)) return offset;
  let opened = offset;
  visit(document, {
    Scalar: (_, scalar) => {
      const [start, end] = scalar.range ?? [offset, offset];
      if (scalar.type?.startsWith('QUOTE') && start < offset && end >= offset) opened = start;
    },
  });
  return opened;
}

function firstOfEachLine(problems: readonly Diagnostic[]): Diagnostic[] {
  const seen = new Set<number>();
  return problems.filter(({ at }) => {
    const line = at?.line ?? 0;
    if (seen.has(line)) return false;
    seen.add(line);
    return true;
  });
}

/** How to mend what the reader complains of, by its own name for the complaint. */
const mends: Readonly<Record<string, string>> = {
  TAB_AS_INDENT: 'indent with spaces, not tabs',
  BAD_INDENT: 'make this line begin in the same column as the lines it belongs with',
  BLOCK_AS_IMPLICIT_KEY:
    'put the text in quotes if it holds a colon with a space after it; otherwise see that the next line begins in the right column',
  MULTILINE_IMPLICIT_KEY: 'look for a colon that is missing after a key, or for quotes that were not closed',
  BAD_SCALAR_START: 'put the text in quotes',
  MISSING_CHAR: 'look for a bracket, a quote or a comma that is missing on this line or the one before',
  TAG_RESOLVE_FAILED: 'put the text in quotes if it begins with `!`; otherwise take the tag out',
};

function yamlProblem(error: YAMLError, at: Spot): Diagnostic {
  if (isTooDeep(error)) return tooDeep(at);
  const [message = error.message] = error.message.split('\n');
  return unreadable(message, at, mends[error.code]);
}

/** The file cannot be read at a place, for the reason the reader of YAML gives. */
export function unreadable(reason: string, at: Spot, mend?: string): Diagnostic {
  return {
    code: 'spec-yaml',
    severity: 'error',
    at,
    message: `the file cannot be read here: ${reason.charAt(0).toLowerCase()}${reason.slice(1).replace(/\.$/, '')}`,
    mend: mend ?? 'look at the indentation, the colons and the quotes on this line and the one before',
  };
}

function oldYaml(at: Spot): Diagnostic {
  return {
    code: 'spec-yaml',
    severity: 'error',
    at,
    message: 'the file asks to be read as YAML 1.1, in which `1:30` means ninety and `no` means false',
    found: '`%YAML 1.1`',
    expected: 'YAML 1.2',
    mend: 'take the line `%YAML 1.1` out',
  };
}

function secondDocument(at: Spot): Diagnostic {
  return {
    code: 'spec-yaml',
    severity: 'error',
    at,
    message: 'the file holds more than one document',
    found: '`---` between two documents',
    expected: 'one car in one file',
    mend: 'take the second part out, into a file of its own',
  };
}

/** The file has nothing in it, or not keys and values. */
export function emptyFile(at: Spot): Diagnostic {
  return {
    code: 'spec-empty',
    severity: 'error',
    at,
    message: 'the file holds no keys and values',
    expected: 'a spec that begins with `kettlebook: 1`',
    mend: 'start from one of the cars in the folder `cars`',
  };
}

/** Brackets within brackets, further than any spec goes. */
export function tooDeep(at: Spot): Diagnostic {
  return {
    code: 'spec-yaml',
    severity: 'error',
    at,
    message: 'lists and keys stand inside each other far deeper than any spec needs',
    mend: 'look for brackets that were opened and not closed',
  };
}

/** One key twice in one place. */
export function keyTwice(name: string, at: Spot, first: Spot): Diagnostic {
  return {
    code: 'spec-duplicate-key',
    severity: 'error',
    at,
    message: `the key \`${name}\` stands twice in the same place`,
    found: `\`${name}\`, already in line ${first.line}`,
    expected: 'each key once',
    mend: 'take one of the two out, or give it another name',
  };
}

/** An anchor that holds itself, or many times many copies. */
export function endless(name: string, at: Spot): Diagnostic {
  return {
    code: 'spec-endless',
    severity: 'error',
    at,
    message: `the anchor \`${name}\` expands without end`,
    found: `\`*${name}\`, which refers to itself or is used over and over`,
    expected: 'each value written where it belongs',
    mend: 'write the values out instead of referring to an anchor',
  };
}

/** An alias to nothing. */
export function noAnchor(name: string, at: Spot): Diagnostic {
  return {
    code: 'spec-yaml',
    severity: 'error',
    at,
    message: `\`*${name}\` refers to an anchor that nothing above has`,
    expected: `\`&${name}\` at the value that is meant, further up`,
    mend: 'write the value out, or put the text in quotes if it really begins with a star',
  };
}
