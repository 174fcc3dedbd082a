/**
 * The `kettlebook` command. Only this folder prints, reads files or looks at the machine.
 */
import { join } from 'node:path';
import { withoutMarks } from '../language/lacking';
import { readArguments } from './arguments';
import { helpOf, helpText } from './help';
import { endWhenNobodyReads } from './pipe';
import { type ExitCode, exitCodes, type Terminal } from './terminal';
import { mateFor } from './threads/mateFor';
import { versionOf } from './version';
import type { Work } from './work';

/**
 * Do what the arguments ask. `root` is the folder the program stands in; `mateScript` the file that a second thread begins with,
 * without which there is none. Gives the exit code; never throws for a keeper's mistake.
 */
export async function main(args: readonly string[], root: string, mateScript?: string): Promise<ExitCode> {
  const terminal: Terminal = {
    // where a language does not say a text, English is good enough for a terminal
    say: (text) => void process.stdout.write(`${withoutMarks(text)}\n`),
    complain: (text) => void process.stderr.write(`${withoutMarks(text)}\n`),
    columns: process.stdout.columns ?? 100,
  };
  for (const stream of [process.stdout, process.stderr]) endWhenNobodyReads(stream);
  const asked = readArguments(args);
  switch (asked.kind) {
    case 'wrong-use':
      terminal.complain(`kettlebook: ${asked.why}\n\nSee \`kettlebook --help\`.`);
      return exitCodes.wrongUse;
    case 'help':
      terminal.say((asked.of === undefined ? undefined : helpOf(asked.of)) ?? helpText);
      return exitCodes.done;
    case 'version':
      terminal.say(await versionOf(root));
      return exitCodes.done;
    default:
      return work(asked, root, terminal, mateScript);
  }
}

/** Commands that need the whole program, which is loaded only now. */
async function work(
  asked: Work,
  root: string,
  terminal: Terminal,
  mateScript: string | undefined,
): Promise<ExitCode> {
  // before anything else, so that it sets up while this thread does
  const mate = asked.kind === 'make' ? mateFor(asked, mateScript) : undefined;
  const { commands, recallTexts } = await import('./work');
  recallTexts(join(root, 'dist', 'shared.json'));
  return commands(asked, root, terminal, mate);
}
