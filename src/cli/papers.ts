/** `kettlebook papers`: what can be made. */
import { openShared } from './openShared';
import { readSharedFiles } from './sharedFiles';
import { tellProblems } from './tell';
import { type ExitCode, exitCodes, type Terminal } from './terminal';

/** List every paper with what it is for. */
export async function listPapers(root: string, terminal: Terminal): Promise<ExitCode> {
  const workshop = openShared(readSharedFiles(root));
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
