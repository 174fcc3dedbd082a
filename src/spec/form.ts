/** Faults of form, before anything is known of what the file says: said in words for somebody who does not know YAML. */
import { type Document, visit, type YAMLError } from 'yaml';
import type { Diagnostic, Spot } from '../diagnostic/diagnostic';

/** From an offset in the text to a place a keeper can find. */
export type SpotAt = (offset: number, path?: readonly (string | number)[]) => Spot;

/** Everything the reader of YAML complains of, and documents that are not one car in the present form of YAML. */
export function troubleOfForm(
  documents: readonly Document.Parsed[],
  text: string,
  spotAt: SpotAt,
): Diagnostic[] {
  const problems = firstOfEachRun(
    documents.flatMap((each) =>
      tellingOnes([...each.errors, ...each.warnings]).map((error) =>
        yamlProblem(error, spotAt(beginningOf(error, each))),
      ),
    ),
  );
  const spaces = problems.length === 0 ? [] : strangeSpaces(text, spotAt);
  if (spaces.length > 0) return spaces;
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

/** Lines further apart than this are not one run: between them stand blank lines and comments at the most. */
const gapInRun = 3;

/**
 * One line in a wrong column makes the reader stumble over every line that belongs with it: of each run of lines with one complaint
 * the first is told, and how far the run goes.
 */
function firstOfEachRun(problems: readonly Diagnostic[]): Diagnostic[] {
  const runs: { readonly first: Diagnostic; last: number; lines: number }[] = [];
  for (const problem of [...problems].sort((a, b) => lineOf(a) - lineOf(b))) {
    const run = runs.at(-1);
    const line = lineOf(problem);
    if (run !== undefined && line === run.last) continue;
    const same = run?.first.message === problem.message && line - run.last <= gapInRun;
    if (run === undefined || !same) runs.push({ first: problem, last: line, lines: 1 });
    else {
      run.last = line;
      run.lines += 1;
    }
  }
  return runs.map(({ first, last, lines }) =>
    lines === 1
      ? first
      : {
          ...first,
          notes: [
            `The same is found down to line ${last}. Most often one line is at fault: this one, or the one before it.`,
          ],
        },
  );
}

function lineOf({ at }: Diagnostic): number {
  return at?.line ?? 0;
}

/** Lines set in with spaces that only look like spaces, as web pages and word processors have them. */
function strangeSpaces(text: string, spotAt: SpotAt): Diagnostic[] {
  return [...text.matchAll(/^ *[\u00a0\u2000-\u200b\u202f\u205f\u3000\ufeff]/gmu)].map(({ index }) => ({
    code: 'spec-yaml',
    severity: 'error',
    at: spotAt(index),
    message: 'the file cannot be read here: this line begins with a space of another kind',
    found: 'a space that does not break a line, or one of another width',
    expected: 'plain spaces',
    mend: 'take away what stands before the first letter and type spaces; such spaces come along when text is copied from a web page or a word processor',
  }));
}

/** What the reader complains of and how to mend it, by its own name for the complaint. */
const complaints: Readonly<Record<string, { readonly says: string; readonly mend: string }>> = {
  TAB_AS_INDENT: { says: 'this line is set in with a tab', mend: 'set it in with spaces, not tabs' },
  BAD_INDENT: {
    says: 'this line does not begin in the column of the lines it belongs with',
    mend: 'make it begin in the same column as they do',
  },
  BLOCK_AS_IMPLICIT_KEY: {
    says: 'a second key, where the key before it has its value already',
    mend: 'put the text in quotes if it holds a colon with a space after it; otherwise see that this line and the one before begin in the right column',
  },
  MULTILINE_IMPLICIT_KEY: {
    says: 'there is no key with a colon and a space after it',
    mend: 'look for a colon, or the space after it, that is missing, or for quotes that were not closed',
  },
  BAD_SCALAR_START: {
    says: 'this text begins with a sign that means something else',
    mend: 'put the text in quotes',
  },
  MISSING_CHAR: {
    says: 'a bracket, a quote, a comma or a colon is missing',
    mend: 'look for it on this line or the one before',
  },
  UNEXPECTED_TOKEN: {
    says: 'this does not go with what stands before it',
    mend: 'look at the columns, the colons, the brackets and the quotes on this line and the one before',
  },
  TAG_RESOLVE_FAILED: {
    says: 'a word that begins with `!`',
    mend: 'put the text in quotes if it begins with `!`; otherwise take the word out',
  },
};

/** A bracket that is not closed is told by the reader as a line that stands too far left. */
const openBracket = {
  says: 'a bracket that was opened is not closed before this line',
  mend: 'close it with `]` or `}`, or put the text in quotes if the bracket belongs to it',
};

/** A quote that is not closed. */
const openQuote = {
  says: 'the quote that begins here is not closed',
  mend: 'close it; a quote inside the text is written twice, or the text put in quotes of the other kind',
};

function yamlProblem(error: YAMLError, at: Spot): Diagnostic {
  if (isTooDeep(error)) return tooDeep(at);
  const [message = error.message] = error.message.split('\n');
  const { says, mend } = complaintOf(error.code, message) ?? { says: message, mend: undefined };
  return unreadable(says, at, mend);
}

function complaintOf(code: string, message: string) {
  if (/^Flow .* must be sufficiently indented/i.test(message)) return openBracket;
  if (code === 'MISSING_CHAR' && /quote/.test(message)) return openQuote;
  const sign = code === 'BAD_SCALAR_START' ? /character (\S)$/.exec(message)?.[1] : undefined;
  if (sign !== undefined)
    return {
      says: `this text begins with \`${sign}\`, which means something else`,
      mend: 'put the text in quotes',
    };
  return complaints[code];
}

/** The file cannot be read at a place, for the reason the reader of YAML gives. */
export function unreadable(reason: string, at: Spot, mend?: string): Diagnostic {
  return {
    code: 'spec-yaml',
    severity: 'error',
    at,
    message: `the file cannot be read here: ${reason.charAt(0).toLowerCase()}${reason.slice(1).replace(/\.$/, '')}`,
    mend: mend ?? 'look at the columns, the colons and the quotes on this line and the one before',
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
