/** A comparison told on the terminal. */
import { type Change, type Comparison, changeGroups, type PaperChange } from './comparison';
import { groupWords } from './reprintSlip';

/** Everything that changed, and what to do with the papers, as lines of text. */
export function tellComparison({ before, after, changes, papers }: Comparison): string {
  const groups = changeGroups.flatMap((group) => {
    const own = changes.filter((change) => change.group === group);
    return own.length === 0 ? [] : ['', `${groupWords[group]}:`, ...own.map((change) => `  ${tell(change)}`)];
  });
  const lines = [
    `Issue ${before.letter} of ${before.date} to issue ${after.letter} of ${after.date}:`,
    ...(changes.length === 0 ? ['', 'Nothing in the spec but its issue.'] : groups),
    '',
    'Papers:',
    ...papers.map((paper) => `  ${tellPaper(paper)}`),
    '',
    ...inShort(papers),
  ];
  return lines.join('\n').replaceAll('\u00a0', ' ');
}

/** What is to be done, in two lines: what is burnt, and what is printed. */
function inShort(papers: readonly PaperChange[]): readonly string[] {
  const titles = (wanted: (paper: PaperChange) => boolean) => papers.filter(wanted).map(({ title }) => title);
  const list = (names: readonly string[]) => (names.length === 0 ? 'nothing' : names.join(', '));
  const old = titles(({ fate, laminated }) => fate === 'gone' || (fate === 'changed' && laminated));
  const fresh = titles(({ fate }) => fate === 'changed' || fate === 'new');
  return [`To destroy: ${list(old)}.`, `To print: ${list(fresh)}.`];
}

function tell({ kind, what, was, is }: Change): string {
  switch (kind) {
    case 'added':
      return `added: ${what}: ${is}`;
    case 'removed':
      return `gone: ${what}: ${was}`;
    case 'reordered':
      return `${what} Now ${is}; it was ${was}.`;
    case 'renamed':
    case 'moved':
      return `${kind}: ${what}: ${was} → ${is}`;
    case 'changed':
      return `${what}: ${was} → ${is}`;
  }
}

function tellPaper({ title, fate, laminated, was, is, under }: PaperChange): string {
  const where = under.length === 0 ? '' : ` (under ${under.join('; ')})`;
  switch (fate) {
    case 'changed':
      return laminated
        ? `${title}: destroy ${was}, print ${is}${where}`
        : `${title}: print again; ${was} becomes ${is}${where}`;
    case 'gone':
      return `${title}: destroy ${was}; it is no longer made`;
    case 'new':
      return `${title}: print ${is}; it is new`;
    case 'issue':
      return `${title}: reads the same but for its issue; ${was} becomes ${is}`;
    case 'same':
      return `${title}: the same, ${is}`;
  }
}
