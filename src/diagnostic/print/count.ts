/** How many problems there are, in words. */
import type { Diagnostic } from '../diagnostic';

/** How many are errors and how many remarks. */
export interface Count {
  readonly errors: number;
  readonly remarks: number;
}

/** Count problems by how grave they are. */
export function countOf(problems: readonly Diagnostic[]): Count {
  const errors = problems.filter((problem) => problem.severity === 'error').length;
  return { errors, remarks: problems.length - errors };
}

/** `2 errors, 1 remark`; `no errors` if there is nothing to tell. */
export function countWords({ errors, remarks }: Count): string {
  const errorWords = errors === 0 ? 'no errors' : many(errors, 'error');
  return remarks === 0 ? errorWords : `${errorWords}, ${many(remarks, 'remark')}`;
}

function many(count: number, word: string): string {
  return `${count} ${word}${count === 1 ? '' : 's'}`;
}
