/**
 * Problems as they are read on a terminal: where and what in the first line, then found, expected, what to do, notes.
 *
 * The first words, `car.yaml:14:19`, are such as editors and terminals turn into a link to the place.
 */
import type { Diagnostic } from '../diagnostic';
import { countOf, countWords } from './count';

/** Narrower than this nothing is set; the lines run over instead. */
const narrowest = 40;

/** Wider than this a line is hard to follow with the eye. */
const widest = 110;

const indent = '    ';

/** Columns of the words that say what a line is. */
const labelWidth = 10;

/** All problems in the order given, wrapped to `columns`, and a closing line that counts them. */
export function printForTerminal(problems: readonly Diagnostic[], columns: number): string {
  const width = Math.min(Math.max(columns, narrowest), widest);
  const blocks = problems.map((problem) => printOne(problem, width));
  return [...blocks, countWords(countOf(problems))].join('\n\n');
}

function printOne(problem: Diagnostic, width: number): string {
  const { at, code, severity, message, found, expected, mend, notes } = problem;
  const place = at === undefined ? [] : [`${at.file}:${at.line}:${at.column}`];
  const head = [...place, `${severity}[${code}]`, message].join(' ');
  return [
    ...wrapped(head, '', '  ', width),
    ...labelled('found', found, width),
    ...labelled('expected', expected, width),
    ...labelled('mend', mend, width),
    ...(notes ?? []).flatMap((note) => labelled('note', note, width)),
  ].join('\n');
}

function labelled(label: string, text: string | undefined, width: number): readonly string[] {
  if (text === undefined) return [];
  return wrapped(text, indent + label.padEnd(labelWidth), indent + ' '.repeat(labelWidth), width);
}

/** Text in lines of at most `width`, broken between words. A word that is longer keeps a line to itself. */
function wrapped(text: string, first: string, others: string, width: number): readonly string[] {
  const lines: string[] = [];
  let line = first;
  let holds = false;
  for (const word of visible(text).split(' ')) {
    if (holds && lettersIn(line) + 1 + lettersIn(word) > width) {
      lines.push(line);
      line = others;
      holds = false;
    }
    line += holds ? ` ${word}` : word;
    holds = true;
  }
  return [...lines, line];
}

function lettersIn(text: string): number {
  return [...text].length;
}

/** Text in one line, without the letters that would move the cursor or colour the screen. */
function visible(text: string): string {
  return text
    .replace(/\s+/g, ' ')
    .trim()
    .replace(/[\p{Cc}\p{Cf}]/gu, '\uFFFD');
}
