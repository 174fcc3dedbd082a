/** `kettlebook papers`: what can be made. */
import { good, type Outcome } from '../diagnostic/diagnostic';
import type { Workshop } from '../kettlebook';
import type { Asked } from './arguments';
import { openCar } from './openCar';
import { openShared } from './openShared';
import { readSharedFiles } from './sharedFiles';
import { tellProblems } from './tell';
import { type ExitCode, exitCodes, type Terminal } from './terminal';

/** List every paper with what it is for: those of a car, or those that come with the program. */
export async function listPapers(
  { spec }: Extract<Asked, { kind: 'papers' }>,
  root: string,
  terminal: Terminal,
): Promise<ExitCode> {
  const workshop = await workshopFor(spec, root);
  if (!workshop.ok) {
    tellProblems(workshop.problems, terminal);
    return exitCodes.atFault;
  }
  const { papers } = workshop.value;
  const width = Math.max(...papers.map((paper) => paper.name.length));
  terminal.say(
    papers.map((paper) => `${paper.name.padEnd(width)}  ${paper.title}: ${paper.what}`).join('\n'),
  );
  return exitCodes.done;
}

async function workshopFor(spec: string | undefined, root: string): Promise<Outcome<Workshop>> {
  if (spec === undefined) return openShared(readSharedFiles(root));
  const opened = await openCar(spec, root);
  return opened.ok ? good(opened.value.workshop) : opened;
}
