/** Which papers say something else now, and which laminated ones must go. */
import { bad, type Diagnostic, good, type Outcome } from '../diagnostic/diagnostic';
import type { Paper, World } from '../paper/paper';
import type { PaperChange } from './comparison';
import { type Content, contentOf, headingsOfChange } from './content';
import { fillSince } from './fillSince';

/** A paper as one issue makes it. */
interface Made {
  readonly paper: Paper;
  readonly fingerprint: string;
  readonly content: Content;
}

/** Every paper of either issue, in the order of the newer. */
export function changedPapers(
  before: World,
  after: World,
  papers: PapersOf,
): Outcome<readonly PaperChange[]> {
  const [old, now] = [madeOf(before, papers.before), madeOf(after, papers.after)];
  if (!old.ok || !now.ok) return bad([old, now].flatMap((each) => (each.ok ? each.remarks : each.problems)));
  const names = [...new Set([...now.value.keys(), ...old.value.keys()])];
  const changes = names.flatMap((name) =>
    changeOf(old.value.get(name), now.value.get(name), after.plans['not-laminated']),
  );
  return good(changes);
}

/** The papers each issue has; a museum's own folder may have changed them. */
export interface PapersOf {
  readonly before: readonly Paper[];
  readonly after: readonly Paper[];
}

function madeOf(world: World, papers: readonly Paper[]): Outcome<ReadonlyMap<string, Made>> {
  const made = new Map<string, Made>();
  const problems: Diagnostic[] = [];
  for (const paper of papers) {
    const filled = fillSince(paper, world);
    const content = contentOf(paper, world);
    if (filled.ok && content.ok)
      made.set(paper.name, { paper, fingerprint: filled.value.fingerprint, content: content.value });
    else problems.push(...(filled.ok ? [] : filled.problems));
  }
  return problems.length > 0 ? bad(problems) : good(made);
}

function changeOf(
  old: Made | undefined,
  now: Made | undefined,
  notLaminated: readonly string[],
): readonly PaperChange[] {
  const made = now ?? old;
  if (made === undefined) return [];
  const { name, title } = made.paper;
  return [
    {
      name,
      title,
      laminated: !notLaminated.includes(name),
      was: old?.fingerprint ?? '',
      is: now?.fingerprint ?? '',
      ...fateOf(old, now),
    },
  ];
}

function fateOf(old: Made | undefined, now: Made | undefined): Pick<PaperChange, 'fate' | 'under'> {
  if (old === undefined || now === undefined) return { fate: old === undefined ? 'new' : 'gone', under: [] };
  if (old.fingerprint === now.fingerprint) return { fate: 'same', under: [] };
  if (old.content.mark === now.content.mark) return { fate: 'issue', under: [] };
  return { fate: 'changed', under: headingsOfChange(old.content.blocks, now.content.blocks) };
}
