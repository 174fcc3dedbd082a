/** `kettlebook make`: the papers of a car, into a folder. */
import { basename, extname, join, relative } from 'node:path';
import { type Diagnostic, hasErrors } from '../diagnostic/diagnostic';
import { nearest } from '../diagnostic/nearest';
import { makePapers, openWorkshop, readCar } from '../kettlebook';
import type { MadePaper, Paper } from '../paper/paper';
import type { Asked } from './arguments';
import { readCarFiles } from './carFiles';
import { readSharedFiles } from './sharedFiles';
import { sheetWords } from './sheetWords';
import { tellProblems } from './tell';
import { type ExitCode, exitCodes, type Terminal } from './terminal';
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
  const workshop = openWorkshop(await readSharedFiles(root));
  const files = await readCarFiles(asked.spec);
  if (!workshop.ok || !files.ok)
    return fail([...(workshop.ok ? [] : workshop.problems), ...(files.ok ? [] : files.problems)], terminal);
  const papers = choose(workshop.value.papers, asked.papers);
  if (!('chosen' in papers)) {
    terminal.complain(`kettlebook: ${papers.why}`);
    return exitCodes.wrongUse;
  }
  const ready = readCar(
    { ...files.value, ...(asked.sheet === undefined ? {} : { paper: asked.sheet }) },
    workshop.value,
  );
  if (!ready.ok) return fail(ready.problems, terminal);
  const folder = join(asked.out, basename(asked.spec, extname(asked.spec)));
  let aside: Aside;
  try {
    aside = await Aside.in(folder);
  } catch (error) {
    return fail([unwritable(folder, error)], terminal);
  }
  try {
    const rows: Row[] = [];
    const made = await makePapers(ready.value, papers.chosen, workshop.value, async (paper) => {
      rows.push(rowOf(paper, await aside.write(paper.fileName, paper.bytes)));
    });
    const problems = [...ready.remarks, ...(made.ok ? made.remarks : made.problems)];
    if (hasErrors(problems)) {
      await aside.discard();
      return fail(problems, terminal);
    }
    await aside.keep();
    tellProblems(problems, terminal);
    terminal.say(tableOf(rows));
    return exitCodes.done;
  } catch (error) {
    await aside.discard();
    return fail([unwritable(folder, error)], terminal);
  }
}

function fail(problems: readonly Diagnostic[], terminal: Terminal): ExitCode {
  tellProblems(problems, terminal);
  terminal.complain('Nothing was made; papers made earlier are as they were.');
  return exitCodes.atFault;
}

function choose(
  papers: readonly Paper[],
  names: readonly string[],
): { readonly chosen: readonly Paper[] } | { readonly why: string } {
  if (names.length === 0) return { chosen: papers };
  const known = papers.map((paper) => paper.name);
  const strange = names.find((name) => !known.includes(name));
  if (strange === undefined) return { chosen: papers.filter((paper) => names.includes(paper.name)) };
  const near = nearest(strange, known);
  return {
    why: `there is no paper \`${strange}\`; ${near === undefined ? `there are ${known.map((name) => `\`${name}\``).join(', ')}` : `did you mean \`${near}\`?`}`,
  };
}

function rowOf(paper: MadePaper, place: string): Row {
  const pages = paper.laidOut.pages.length;
  return {
    paper: paper.title,
    pages: String(pages),
    size: sheetWords(paper.laidOut),
    file: relative('.', place),
  };
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

function unwritable(folder: string, error: unknown): Diagnostic {
  return {
    code: 'file-unwritable',
    severity: 'error',
    message: `papers cannot be written into \`${folder}\`: ${error instanceof Error ? error.message : String(error)}`,
    mend: 'see that the folder may be written to and that the disk has room, or name another with `--out`',
  };
}
