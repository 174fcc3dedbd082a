/** `kettlebook compare`: what changed between two issues, what that does to the papers, and the reprint slip. */
import { basename, extname, join, relative } from 'node:path';
import { compareIssues } from '../compare/compare';
import { reprintSlip } from '../compare/reprintSlip';
import { tellComparison } from '../compare/told';
import { type Diagnostic, hasErrors } from '../diagnostic/diagnostic';
import { asJson } from '../diagnostic/print/json';
import { makePapers, worldOf } from '../kettlebook';
import type { Asked } from './arguments';
import { type OpenedCar, openCar } from './openCar';
import { openIssue } from './openIssue';
import { tellProblems } from './tell';
import { type ExitCode, exitCodes, type Terminal } from './terminal';
import { unwritable } from './unwritable';
import { Aside } from './writeAside';

type CompareAsked = Extract<Asked, { kind: 'compare' }>;

/** Compare two issues of a spec; print the slip if the letters tell them apart. */
export async function compare(asked: CompareAsked, root: string, terminal: Terminal): Promise<ExitCode> {
  const open = (spec: string) => openCar(spec, root);
  const before = await openIssue({ spec: asked.before }, open);
  const after = await openIssue({ spec: asked.after }, open);
  if (!before.ok || !after.ok) {
    const problems = [before, after].flatMap((each) => (each.ok ? [] : each.problems));
    return fail(problems, asked, terminal);
  }
  const [old, now] = [before.value, after.value];
  const compared = compareIssues(
    worldOf(old.ready, old.workshop, old.earlier),
    worldOf(now.ready, now.workshop, now.earlier),
    {
      before: old.ready.papers,
      after: now.ready.papers,
    },
  );
  if (!compared.ok) return fail(compared.problems, asked, terminal);
  const { value: comparison, remarks } = compared;
  const slip = hasErrors(remarks)
    ? { problems: remarks }
    : await printSlip(now, asked, reprintSlip(now.ready.plans.papers['reprint-slip'], comparison));
  const problems = hasErrors(remarks) ? remarks : [...remarks, ...slip.problems];
  if (asked.json) {
    const told = { ...comparison, slip: slip.file ?? null, problems: problems.map(asJson) };
    terminal.say(JSON.stringify(told, null, 2));
  } else {
    tellProblems(problems, terminal);
    terminal.say(tellComparison(comparison));
    terminal.say(`\n${slip.file === undefined ? 'No slip was printed.' : `Slip: ${slip.file}`}`);
  }
  return hasErrors(problems) ? exitCodes.atFault : exitCodes.done;
}

interface Printed {
  readonly problems: readonly Diagnostic[];
  readonly file?: string;
}

/** Put the slip beside the papers of the newer issue. */
async function printSlip(
  { ready, workshop }: OpenedCar,
  asked: CompareAsked,
  slip: ReturnType<typeof reprintSlip>,
): Promise<Printed> {
  const folder = join(asked.out, basename(asked.after, extname(asked.after)));
  try {
    const aside = await Aside.in(folder);
    let file: string | undefined;
    const made = await makePapers(ready, [slip], workshop, async (paper) => {
      file = relative('.', aside.write(paper.fileName, paper.bytes));
    });
    if (!made.ok || file === undefined) {
      await aside.discard();
      return { problems: made.ok ? made.remarks : made.problems };
    }
    await aside.keep();
    return { problems: made.remarks, file };
  } catch (error) {
    if (!(error instanceof Error && 'code' in error)) throw error;
    return { problems: [unwritable(folder, error)] };
  }
}

function fail(problems: readonly Diagnostic[], asked: CompareAsked, terminal: Terminal): ExitCode {
  if (asked.json) terminal.say(JSON.stringify({ problems: problems.map(asJson) }, null, 2));
  else tellProblems(problems, terminal);
  return exitCodes.atFault;
}
