/** What is told when papers cannot be put where they should go. */
import type { Diagnostic } from '../diagnostic/diagnostic';
import { saidOf } from './saidOf';

/** The problem, with what the machine said. */
export function unwritable(folder: string, error: unknown): Diagnostic {
  return {
    code: 'file-unwritable',
    severity: 'error',
    message: `nothing can be written into \`${folder}\`: ${saidOf(error)}`,
    mend: 'see that it may be written to and that the disk has room, or name another (`--out` says where papers go)',
  };
}
