/**
 * The `kettlebook` command. Only this folder prints, reads files or looks at the machine.
 */
import { join } from 'node:path';
import { withoutMarks } from '../language/lacking';
import { readArguments } from './arguments';
import { helpText } from './help';
import { endWhenNobodyReads } from './pipe';
import { type ExitCode, exitCodes, type Terminal } from './terminal';
import { versionOf } from './version';
import type { Work } from './work';

/** Do what the arguments ask. `root` is the folder the program stands in. Gives the exit code; never throws for a keeper's mistake. */
export async function main(args: readonly string[], root: string): Promise<ExitCode> {
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
      terminal.say(helpText);
      return exitCodes.done;
    case 'version':
      terminal.say(await versionOf(root));
      return exitCodes.done;
    default:
      return work(asked, root, terminal);
  }
}

/** Commands that need the whole program, which is loaded only now. */
async function work(asked: Work, root: string, terminal: Terminal): Promise<ExitCode> {
  const { commands, recallTexts } = await import('./work');
  recallTexts(join(root, 'dist', 'shared.json'));
  return commands(asked, root, terminal);
}

/** For the build: do once what a run does, so that what the engine has compiled for it can be kept. */
export async function rehearse(root: string): Promise<void> {
  return (await import('./work')).rehearse(root);
}

/** For the build: load the whole program, and give what it has read of the shared texts, to be kept. */
export async function textsToKeep(root: string): Promise<string> {
  return (await import('./work')).textsToKeep(root);
}
