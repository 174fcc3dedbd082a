/** What a text is told, in a form that reads well in a test: each problem with the words that stand at its place. */
import { loadTiny } from '../helpers/tinySpec';

/** Every problem and remark, or the word `fine`. */
export function told(text: string): string {
  const outcome = loadTiny(text);
  const problems = outcome.ok ? outcome.remarks : outcome.problems;
  if (problems.length === 0) return 'fine';
  const lines = text.replace(/^\uFEFF/, '').split('\n');
  return problems
    .map(({ code, severity, message, at, found, expected, mend, notes }) => {
      const words = lines[(at?.line ?? 0) - 1]
        ?.slice((at?.column ?? 0) - 1, (at?.column ?? 0) + 23)
        .trimEnd();
      return [
        `${at?.line}:${at?.column} ${severity} ${code} at “${words}”`,
        `  ${message}`,
        ...(found === undefined ? [] : [`  found: ${found}`]),
        ...(expected === undefined ? [] : [`  expected: ${expected}`]),
        `  mend: ${mend}`,
        ...(notes ?? []).map((note) => `  note: ${note}`),
      ].join('\n');
    })
    .join('\n');
}

/** The codes alone, with their lines. */
export function codesOf(text: string): readonly string[] {
  const outcome = loadTiny(text);
  const problems = outcome.ok ? outcome.remarks : outcome.problems;
  return problems.map(({ code, at }) => `${at?.line} ${code}`);
}
