/** `kettlebook make`: the papers of a car, into a folder. */
import { basename, extname, join, relative } from 'node:path';
import { type Diagnostic, hasErrors } from '../diagnostic/diagnostic';
import { oneByOne, secondPart, unsaidOf, writeScreen } from '../kettlebook';
import type { Paper } from '../paper/paper';
import { askedButNotWhole } from '../paper/whole';
import type { Asked } from './arguments';
import { choosePapers } from './choosePapers';
import { openCar } from './openCar';
import { type OpenedIssue, openIssue } from './openIssue';
import { type Printed, printedOf, tableOf } from './printed';
import { tellProblems } from './tell';
import { type ExitCode, exitCodes, type Terminal } from './terminal';
import { handTo } from './threads/hand';
import { HelpForMate } from './threads/helpMate';
import type { Mate, MatesWork } from './threads/mate';
import { emptyTally, shareOf } from './threads/share';
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
    return openCar(spec, root, { sheet: asked.sheet, hand });
  });
  if (!opened.ok) return fail(opened.problems, terminal);
  const { workshop, ready, told } = opened.value;
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
    const results = await makeTogether(papers.chosen, opened.value, aside, mate);
    const problems = [...opened.remarks, ...told(results.flatMap((each) => each.problems))];
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

/** What came of one paper. */
interface Result {
  readonly problems: readonly Diagnostic[];
  readonly rows: Printed['rows'];
}

/** Make all papers and write them aside. Gives what came of each, in their order, whoever made it. */
async function makeTogether(
  papers: readonly Paper[],
  { ready, workshop, earlier }: OpenedIssue,
  aside: Aside,
  mate: Mate | undefined,
): Promise<readonly Result[]> {
  const results: Result[] = [];
  const helpFor = (other: Mate) => {
    const help = new HelpForMate(other, {
      part: (draft) => secondPart(draft, ready, workshop),
      screen: (draft) => {
        const { fileName, bytes } = writeScreen(draft, ready, workshop);
        aside.write(fileName, bytes);
      },
    });
    return (work: MatesWork) =>
      work.what === 'paper' ? put(work.place, work.problems, work.printed) : help.hear(work);
  };
  const put = (place: number, problems: readonly Diagnostic[], printed: Printed | undefined) => {
    for (const { name, bytes } of printed?.files ?? []) aside.write(name, bytes);
    results[place] = { problems, rows: printed?.rows ?? [] };
  };
  const others = mate === undefined ? undefined : mate.work(helpFor(mate));
  const own = shareOf(papers, 'front', mate?.tally ?? emptyTally());
  for await (const [paper, made] of oneByOne(ready, own, workshop, earlier)) {
    const place = papers.indexOf(paper);
    put(place, made.ok ? made.remarks : made.problems, made.ok ? printedOf(made.value) : undefined);
  }
  await others;
  const absent = papers.find((_, place) => results[place] === undefined);
  if (absent !== undefined) throw new Error(`nothing came of the paper \`${absent.name}\``);
  return results;
}

function fail(problems: readonly Diagnostic[], terminal: Terminal): ExitCode {
  tellProblems(problems, terminal);
  terminal.complain('Nothing was made; papers made earlier are as they were.');
  return exitCodes.atFault;
}
