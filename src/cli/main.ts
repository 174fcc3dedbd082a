/**
 * The `kettlebook` command. Only this folder prints, reads files or looks at the machine.
 */
import { readArguments } from './arguments';
import { check } from './check';
import { explainFigures } from './explain';
import { helpText } from './help';
import { make } from './make';
import { listPapers } from './papers';
import { type ExitCode, exitCodes, type Terminal } from './terminal';
import { versionOf } from './version';

/** Do what the arguments ask. `root` is the folder the program stands in. Gives the exit code; never throws for a keeper's mistake. */
export async function main(args: readonly string[], root: string): Promise<ExitCode> {
  const terminal: Terminal = {
    say: (text) => void process.stdout.write(`${text}\n`),
    complain: (text) => void process.stderr.write(`${text}\n`),
    columns: process.stdout.columns ?? 100,
  };
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
    case 'papers':
      return listPapers(root, terminal);
    case 'check':
      return check(asked, root, terminal);
    case 'explain':
      return explainFigures(asked, root, terminal);
    case 'make':
      return make(asked, root, terminal);
  }
}
