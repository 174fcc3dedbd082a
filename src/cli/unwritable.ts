/** What is told when papers cannot be put where they should go. */
import type { Diagnostic } from '../diagnostic/diagnostic';

/** The problem, with what the machine said. */
export function unwritable(folder: string, error: unknown): Diagnostic {
  return {
    code: 'file-unwritable',
    severity: 'error',
    message: `papers cannot be written into \`${folder}\`: ${error instanceof Error ? error.message : String(error)}`,
    mend: 'see that the folder may be written to and that the disk has room, or name another with `--out`',
  };
}
