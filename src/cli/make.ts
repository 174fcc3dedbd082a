/** `kettlebook make`: the papers of a car, into a folder. */
import { basename, extname, join, relative } from 'node:path';
import { type Diagnostic, hasErrors } from '../diagnostic/diagnostic';
import { type ProvenCar, unsaidOf } from '../kettlebook';
import type { Paper } from '../paper/paper';
import { askedButNotWhole } from '../paper/whole';
import type { Asked } from './arguments';
import { choosePapers } from './choosePapers';
import { makeTogether } from './makeTogether';
import { openProven, workedOut } from './openCar';
import { type IssueOf, openIssue } from './openIssue';
import { tableOf } from './printed';
import { tellProblems } from './tell';
import { type ExitCode, exitCodes, type Terminal } from './terminal';
import { handTo } from './threads/hand';
import type { Mate } from './threads/mate';
import { unwritable } from './unwritable';
import { Aside } from './writeAside';

type MakeAsked = Extract<Asked, { kind: 'make' }>;

/** Make the papers that are asked for, some of them by the mate if there is one. All of them or none are put in place. */
export async function make(
  asked: MakeAsked,
  root: string,
  terminal: Terminal,
  mate?: Mate,
): Promise<ExitCode> {
  try {
    return await makeAll(asked, root, terminal, mate);
  } finally {
    void mate?.dismiss();
  }
}

async function makeAll(
  asked: MakeAsked,
  root: string,
  terminal: Terminal,
  mate: Mate | undefined,
): Promise<ExitCode> {
  let cars = 0;
  const opened = await openIssue(asked, (spec) => {
    const hand = mate === undefined ? undefined : handTo(mate, cars);
    cars += 1;
    return openProven(spec, root, { sheet: asked.sheet, hand });
  });
  if (!opened.ok) return fail(opened.problems, terminal);
  const { ready, told } = opened.value;
  const silent = ready.leftOut.filter(({ name }) => asked.papers.includes(name));
  if (silent.length > 0) {
    return fail(notWholeOf(silent, opened.value), terminal);
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
    const made = await makeTogether(papers.chosen, opened.value, aside, mate);
    const results = made.ok ? made.value : [];
    const problems = [
      ...opened.remarks,
      ...(made.ok ? made.remarks : made.problems),
      ...told(results.flatMap((each) => each.problems)),
    ];
    if (hasErrors(problems)) {
      await aside.discard();
      return fail(problems, terminal);
    }
    await aside.keep();
    tellProblems(problems, terminal);
    const rows = results.flatMap((each) => each.rows);
    const placed = rows.map((row) => ({ ...row, file: relative('.', join(folder, row.file)) }));
    terminal.say(
      `${tableOf(placed)}\n\nEach paper stands beside its PDF as a page for a screen too (.html).`,
    );
    return exitCodes.done;
  } catch (error) {
    await aside.discard();
    if (!(error instanceof Error && 'code' in error)) throw error;
    return fail([unwritable(folder, error)], terminal);
  }
}

/** What is not said of papers that were asked for by name in a language that has not all of their words. */
function notWholeOf(silent: readonly Paper[], opened: IssueOf<ProvenCar>): readonly Diagnostic[] {
  const worked = workedOut(opened);
  if (!worked.ok) return worked.problems;
  const { ready, workshop } = worked.value;
  const unsaid = unsaidOf(ready, silent, workshop);
  if (!unsaid.ok) return unsaid.problems;
  return unsaid.value.map(({ paper, texts }) => askedButNotWhole(paper, ready.language, texts));
}

function fail(problems: readonly Diagnostic[], terminal: Terminal): ExitCode {
  tellProblems(problems, terminal);
  terminal.complain('Nothing was made; papers made earlier are as they were.');
  return exitCodes.atFault;
}
