/** Two issues of one car's spec, laid side by side. */
import { bad, good, type Outcome } from '../diagnostic/diagnostic';
import type { World } from '../paper/paper';
import { changesOf, issueOf } from './changes';
import type { Comparison } from './comparison';
import { changedPapers, type PapersOf } from './papers';
import { issueProblems, otherCar, sameCar } from './problems';

/**
 * Everything that changed from one issue to the next, and what that does to the papers. Refused for two different
 * cars. A letter that was kept although something changed comes as an error among the remarks: what changed is still
 * told, but no slip may be printed of it.
 */
export function compareIssues(before: World, after: World, papers: PapersOf): Outcome<Comparison> {
  if (!sameCar(before.car, after.car)) return bad([otherCar(before.car, after.car)]);
  const changedOnes = changedPapers(before, after, papers);
  if (!changedOnes.ok) return changedOnes;
  const changes = changesOf(before, after);
  return good(
    {
      before: issueOf(before, after),
      after: issueOf(after, after),
      changes,
      papers: changedOnes.value,
    },
    issueProblems(before.car, after.car, changes),
  );
}
