/** `kettlebook make`: the papers of a car, into a folder. */
import { basename, extname, join, relative } from 'node:path';
import { type Diagnostic, hasErrors } from '../diagnostic/diagnostic';
import { makePapers, unsaidOf } from '../kettlebook';
import type { MadePaper, PrintedSheets } from '../paper/paper';
import { askedButNotWhole } from '../paper/whole';
import type { Asked } from './arguments';
import { choosePapers } from './choosePapers';
import { openIssue } from './openIssue';
import { sheetWords } from './sheetWords';
import { tellProblems } from './tell';
import { type ExitCode, exitCodes, type Terminal } from './terminal';
import { unwritable } from './unwritable';
import { Aside } from './writeAside';

type MakeAsked = Extract<Asked, { kind: 'make' }>;

interface Row {
  readonly paper: string;
  readonly pages: string;
  readonly size: string;
  readonly file: string;
}

/** Make the papers that are asked for. All of them or none are put in place. */
export async function make(asked: MakeAsked, root: string, terminal: Terminal): Promise<ExitCode> {
  const opened = await openIssue(asked.spec, root, asked);
  if (!opened.ok) return fail(opened.problems, terminal);
  const { workshop, ready, told, earlier } = opened.value;
  const silent = ready.leftOut.filter(({ name }) => asked.papers.includes(name));
  if (silent.length > 0) {
    const unsaid = unsaidOf(ready, silent, workshop);
    const problems = unsaid.ok
      ? unsaid.value.map(({ paper, texts }) => askedButNotWhole(paper, ready.language, texts))
      : unsaid.problems;
    return fail(problems, terminal);
  }
  const papers = choosePapers(ready.papers, asked.papers);
  if (!('chosen' in papers)) {
    terminal.complain(`kettlebook: ${papers.why}`);
    return exitCodes.wrongUse;
  }
  const folder = join(asked.out, basename(asked.spec, extname(asked.spec)));
  let aside: Aside;
  try {
    aside = await Aside.in(folder);
  } catch (error) {
    return fail([unwritable(folder, error)], terminal);
  }
  try {
    const rows: Row[] = [];
    const keep = async (paper: MadePaper) => {
      rows.push(rowOf(paper, await aside.write(paper.fileName, paper.bytes)));
      await aside.write(paper.screen.fileName, paper.screen.bytes);
      const { sheets } = paper;
      if (sheets === undefined) return;
      rows.push(rowOfSheets(sheets, await aside.write(sheets.fileName, sheets.bytes)));
    };
    const made = await makePapers(ready, papers.chosen, workshop, keep, earlier);
    const problems = [...opened.remarks, ...told(made.ok ? made.remarks : made.problems)];
    if (hasErrors(problems)) {
      await aside.discard();
      return fail(problems, terminal);
    }
    await aside.keep();
    tellProblems(problems, terminal);
    terminal.say(`${tableOf(rows)}\n\nEach paper stands beside its PDF as a page for a screen too (.html).`);
    return exitCodes.done;
  } catch (error) {
    await aside.discard();
    if (!(error instanceof Error && 'code' in error)) throw error;
    return fail([unwritable(folder, error)], terminal);
  }
}

function fail(problems: readonly Diagnostic[], terminal: Terminal): ExitCode {
  tellProblems(problems, terminal);
  terminal.complain('Nothing was made; papers made earlier are as they were.');
  return exitCodes.atFault;
}

function rowOf(paper: MadePaper, place: string): Row {
  const pages = paper.laidOut.pages.length;
  return {
    paper: paper.title,
    pages: String(pages),
    size: `${sheetWords(paper.laidOut)}${turnedOn(paper.turning)}${paper.lightOnDark ? ', light on dark: takes much ink' : ''}`,
    file: relative('.', place),
  };
}

/** Cards together on sheets: below the card itself, with how they are to be printed. */
function rowOfSheets({ laidOut, turning }: PrintedSheets, place: string): Row {
  return {
    paper: '  the same on sheets, to print on both sides and cut',
    pages: String(laidOut.pages.length),
    size: `${sheetWords(laidOut)}${turnedOn(turning)}`,
    file: relative('.', place),
  };
}

function turnedOn(turning: MadePaper['turning']): string {
  if (turning === undefined) return '';
  return turning === 'none' ? ', on one side' : `, turned on the ${turning.replace('-', ' ')}`;
}

function tableOf(rows: readonly Row[]): string {
  const head: Row = { paper: 'Paper', pages: 'Pages', size: 'Size on paper', file: 'File' };
  const width = (pick: (row: Row) => string) => Math.max(...[head, ...rows].map((row) => pick(row).length));
  const [paper, pages, size] = [
    width((row) => row.paper),
    width((row) => row.pages),
    width((row) => row.size),
  ];
  return [head, ...rows]
    .map(
      (row) =>
        `${row.paper.padEnd(paper)}  ${row.pages.padStart(pages)}  ${row.size.padEnd(size)}  ${row.file}`,
    )
    .join('\n');
}
