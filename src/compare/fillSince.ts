/** A paper filled in with bars beside what reads otherwise than in the issue before, and a list of it. */
import { bad, good, hasErrors, type Outcome } from '../diagnostic/diagnostic';
import { type Fill, type FilledPaper, fillPaper, type Paper, type World } from '../paper/paper';
import type { Since } from '../paper/since';
import { changesOf, issueOf } from './changes';
import { type Change, changeGroups } from './comparison';
import { changeMarks, partnersOf } from './marks';
import { issueProblems, otherCar, sameCar } from './problems';
import { groupWords } from './reprintSlip';
import { type Unit, unitsOf, withChanges } from './units';
import { withoutIssue } from './withoutIssue';

/**
 * Fill in a paper. If it marks changes and the world knows the issue before, bars and list are made by laying that issue
 * and this one side by side, both without their letters and dates: those change with every issue and get no bar.
 */
export const fillSince: Fill = (paper, world) =>
  paper.marksChanges === true && world.earlier !== undefined
    ? filledSince(paper, world.earlier, world)
    : fillPaper(paper, world);

function filledSince(paper: Paper, before: World, world: World): Outcome<FilledPaper> {
  if (!sameCar(before.car, world.car)) return bad([otherCar(before.car, world.car)]);
  const changes = changesOf(before, world);
  const remarks = issueProblems(before.car, world.car, changes);
  if (hasErrors(remarks)) return bad(remarks);
  const old = fillPaper(paper, withoutIssue(before), '');
  if (!old.ok) return old;
  const bare = fillPaper(paper, withoutIssue(world), '');
  if (!bare.ok) return bare;
  const [was, is] = [unitsOf(old.value.blocks), unitsOf(bare.value.blocks)];
  const marks = changeMarks(was, is);
  const marked = is.filter((_, index) => marks[index] !== undefined);
  const since: Since = {
    before: issueOf(before, world),
    groups: groupsOf(changes),
    places: placesOf(marked),
  };
  const filled = fillPaper(paper, { ...world, since });
  if (!filled.ok) return filled;
  const { blocks } = filled.value;
  const printed = unitsOf(blocks);
  const own = partnersOf(is, printed).map((index) => (index === undefined ? undefined : marks[index]));
  return good({ ...filled.value, blocks: withChanges(blocks, own) }, [...remarks, ...filled.remarks]);
}

function groupsOf(changes: readonly Change[]): Since['groups'] {
  return changeGroups
    .map((group) => ({
      name: groupWords[group],
      changes: changes
        .filter((change) => change.group === group)
        .map(({ what, was, is, kind }) => ({ what, was, is, reordered: kind === 'reordered' })),
    }))
    .filter((group) => group.changes.length > 0);
}

/** Each heading once, in the order of the paper. */
function placesOf(units: readonly Unit[]): Since['places'] {
  return [...new Map(units.flatMap(({ anchor }) => (anchor ? [[anchor.id, anchor] as const] : []))).values()];
}
