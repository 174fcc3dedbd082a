/** Telling problems on the terminal. */
import type { Diagnostic } from '../diagnostic/diagnostic';
import { printForTerminal } from '../diagnostic/print/terminal';
import type { Terminal } from './terminal';

/** All problems, to standard error. Says nothing if there are none. */
export function tellProblems(problems: readonly Diagnostic[], terminal: Terminal): void {
  if (problems.length > 0) terminal.complain(printForTerminal(problems, terminal.columns));
}
