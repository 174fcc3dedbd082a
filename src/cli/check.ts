/** `kettlebook check`: everything that is wrong with a spec, and nothing made. */
import { printAsJson } from '../diagnostic/print/json';
import type { Asked } from './arguments';
import { openCar } from './openCar';
import { openIssue } from './openIssue';
import { tellProblems } from './tell';
import { type ExitCode, exitCodes, type Terminal } from './terminal';

/** Check a spec; with `json`, for machines, on standard output. */
export async function check(
  asked: Extract<Asked, { kind: 'check' }>,
  root: string,
  terminal: Terminal,
): Promise<ExitCode> {
  const opened = await openIssue(asked, (spec) => openCar(spec, root));
  const problems = opened.ok ? opened.remarks : opened.problems;
  if (asked.json) terminal.say(printAsJson(problems));
  else tellProblems(problems, terminal);
  if (!opened.ok) return exitCodes.atFault;
  if (!asked.json) {
    const { car, proof, figures } = opened.value.ready;
    const { procedures } = proof;
    const steps = procedures.reduce((sum, procedure) => sum + procedure.steps.length, 0);
    terminal.say(
      `${asked.spec} is good: ${Object.keys(car.spec.valves).length} valves, ${procedures.length} procedures of ${steps} steps, ${figures.all.length} figures.`,
    );
  }
  return exitCodes.done;
}
