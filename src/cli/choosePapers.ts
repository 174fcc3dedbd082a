/** Papers by their names on the command line. */
import { nearest } from '../diagnostic/nearest';
import type { Paper } from '../paper/paper';

/** The papers that are asked for by name, or all; or why not, if there is none of that name. */
export function choosePapers(
  papers: readonly Paper[],
  names: readonly string[],
): { readonly chosen: readonly Paper[] } | { readonly why: string } {
  if (names.length === 0) return { chosen: papers };
  const known = papers.map((paper) => paper.name);
  const strange = names.find((name) => !known.includes(name));
  if (strange === undefined) return { chosen: papers.filter((paper) => names.includes(paper.name)) };
  const near = nearest(strange, known);
  return {
    why: `there is no paper \`${strange}\`; ${near === undefined ? `there are ${known.map((name) => `\`${name}\``).join(', ')}` : `did you mean \`${near}\`?`}`,
  };
}
