/** The reprint slip: what changed with this issue, which cards to destroy, which to print again. */
import { identityContext } from '../paper/context/identity';
import type { Paper } from '../paper/paper';
import type { PaperTitle } from '../paper/plans';
import { pageSheet } from '../paper/sheets';
import { asFilledSheet } from '../paper/ways';
import { type ChangeGroup, type Comparison, changeGroups } from './comparison';

/** One page in most years; after a rebuild, a few. */
const mostFaces = 40;

/** What each group of changes is called. */
export const groupWords: Readonly<Record<ChangeGroup, string>> = {
  part: 'Parts',
  valve: 'Valves',
  line: 'Pipes',
  value: 'Values',
  step: 'Steps of procedures',
  figure: 'Figures that come out otherwise',
};

/** The slip for one comparison, as a paper of the newer issue. */
export function reprintSlip({ title, what }: PaperTitle, comparison: Comparison): Paper {
  return {
    name: 'reprint-slip',
    title,
    what,
    template: 'reprint-slip',
    context: (world) => ({ car: identityContext(world.car.spec, world.phrases), ...slipContext(comparison) }),
    drawings: () => [],
    ...asFilledSheet(title, mostFaces, pageSheet, (world) => world.theme.type.body.size),
  };
}

/** What the template is filled in with: papers by what is to be done with them, changes by what they are of. */
function slipContext({ before, after, papers, changes }: Comparison): Readonly<Record<string, unknown>> {
  const again = papers.filter(({ fate }) => fate === 'changed' || fate === 'new' || fate === 'gone');
  return {
    groupWords,
    before,
    after,
    print: [true, false]
      .map((laminated) => ({ laminated, papers: again.filter((paper) => paper.laminated === laminated) }))
      .filter((each) => each.papers.length > 0),
    changedNothing: again.length === 0,
    keep: papers.filter(({ fate }) => fate === 'issue').map(({ title: each }) => each),
    groups: changeGroups
      .map((group: ChangeGroup) => ({ group, changes: changes.filter((each) => each.group === group) }))
      .filter((each) => each.changes.length > 0),
  };
}
