/** `kettlebook steps`: the procedures of a car and their steps, with the names by which `changes` calls them. */
import { nearest } from '../diagnostic/nearest';
import type { Procedure, Procedures } from '../procedure/procedure';
import type { Asked } from './arguments';
import { openCarOrTell } from './openCar';
import { type ExitCode, exitCodes, type Terminal } from './terminal';

/** List the procedures, or the steps of one. */
export async function listSteps(
  { spec, procedure: wanted }: Extract<Asked, { kind: 'steps' }>,
  root: string,
  terminal: Terminal,
): Promise<ExitCode> {
  const opened = await openCarOrTell(spec, root, terminal);
  if (opened === undefined) return exitCodes.atFault;
  const { procedures } = opened.ready.proof;
  if (wanted === undefined) {
    terminal.say(procedureLines(procedures));
    return exitCodes.done;
  }
  const found = procedures.find(({ id }) => id === wanted);
  if (found !== undefined) {
    terminal.say(stepLines(found));
    return exitCodes.done;
  }
  const ids = procedures.map(({ id }) => id);
  const near = nearest(wanted, ids);
  terminal.complain(
    `kettlebook: this car has no procedure \`${wanted}\`; ${near === undefined ? `it has ${ids.join(', ')}` : `did you mean \`${near}\`?`}`,
  );
  return exitCodes.wrongUse;
}

function procedureLines(procedures: Procedures): string {
  return inColumns(procedures.map(({ id, title, steps }) => [id, `${title}, ${stepCount(steps.length)}`]));
}

function stepCount(count: number): string {
  return count === 1 ? '1 step' : `${count} steps`;
}

/** Each step as the papers number it; one that the car’s own changes put there says so. */
function stepLines({ id, title, steps, changes }: Procedure): string {
  const rows = steps.map((step, index) => {
    const own = step.origin.kind === 'car' ? '  (changed)' : '';
    return [step.id, `${String(index + 1).padStart(2)}  ${step.say}${own}`];
  });
  const changed = changes.map(({ words, because }) => `  ${words}: ${because}`);
  return [
    `${id}: ${title}`,
    inColumns(rows),
    ...(changed.length > 0 ? ['Changed for this car:', ...changed] : []),
  ].join('\n');
}

function inColumns(rows: readonly (readonly string[])[]): string {
  const width = Math.max(...rows.map(([name = '']) => name.length));
  return rows.map(([name = '', words = '']) => `${name.padEnd(width)}  ${words}`).join('\n');
}
