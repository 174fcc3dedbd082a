/** `kettlebook check`: everything that is wrong with a spec, and nothing made. */
import { hasErrors } from '../diagnostic/diagnostic';
import { printAsJson } from '../diagnostic/print/json';
import { openWorkshop, readCar } from '../kettlebook';
import type { Asked } from './arguments';
import { readCarFiles } from './carFiles';
import { readSharedFiles } from './sharedFiles';
import { tellProblems } from './tell';
import { type ExitCode, exitCodes, type Terminal } from './terminal';

/** Check a spec; with `json`, for machines, on standard output. */
export async function check(
  asked: Extract<Asked, { kind: 'check' }>,
  root: string,
  terminal: Terminal,
): Promise<ExitCode> {
  const workshop = openWorkshop(await readSharedFiles(root));
  const files = await readCarFiles(asked.spec);
  const ready = workshop.ok && files.ok ? readCar(files.value, workshop.value) : undefined;
  const problems = [
    ...(workshop.ok ? workshop.remarks : workshop.problems),
    ...(files.ok ? files.remarks : files.problems),
    ...(ready === undefined ? [] : ready.ok ? ready.remarks : ready.problems),
  ];
  if (asked.json) terminal.say(printAsJson(problems));
  else {
    tellProblems(problems, terminal);
    if (ready?.ok === true) {
      const { car, procedures, figures } = ready.value;
      const steps = procedures.reduce((sum, procedure) => sum + procedure.steps.length, 0);
      terminal.say(
        `${asked.spec} is good: ${Object.keys(car.spec.valves).length} valves, ${procedures.length} procedures of ${steps} steps, ${figures.all.length} figures.`,
      );
    }
  }
  return hasErrors(problems) ? exitCodes.atFault : exitCodes.done;
}
