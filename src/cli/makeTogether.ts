/** All papers of a car, made by this thread and by the mate if there is one. */
import { bad, type Diagnostic, good, type Outcome } from '../diagnostic/diagnostic';
import { oneByOne, type ProvenCar, secondPart, writeScreen } from '../kettlebook';
import type { Paper } from '../paper/paper';
import { once } from './once';
import { workedOut } from './openCar';
import type { IssueOf, OpenedIssue } from './openIssue';
import { type Printed, printedOf } from './printed';
import { HelpForMate } from './threads/helpMate';
import type { Mate, MatesWork } from './threads/mate';
import { emptyTally, shareOf } from './threads/share';
import type { Aside } from './writeAside';

/** What came of one paper. */
export interface Result {
  readonly problems: readonly Diagnostic[];
  readonly rows: Printed['rows'];
}

/**
 * Make all papers and write them aside. Gives what came of each, in their order, whoever made it. Figures are worked out when a paper
 * falls to this thread; if none does, the mate, who works them out too, says what is to be told of them.
 */
export async function makeTogether(
  papers: readonly Paper[],
  opened: IssueOf<ProvenCar>,
  aside: Aside,
  mate: Mate | undefined,
): Promise<Outcome<readonly Result[]>> {
  const { ready: proven, workshop } = opened;
  const results: Result[] = [];
  let toldByMate: readonly Diagnostic[] | undefined;
  const put = (place: number, problems: readonly Diagnostic[], printed: Printed | undefined) => {
    for (const { name, bytes } of printed?.files ?? []) aside.write(name, bytes);
    results[place] = { problems, rows: printed?.rows ?? [] };
  };
  const helpFor = (other: Mate) => {
    const help = new HelpForMate(other, {
      part: (draft) => secondPart(draft, proven, workshop),
      screen: (draft) => {
        const { fileName, bytes } = writeScreen(draft, proven, workshop);
        aside.write(fileName, bytes);
      },
    });
    return (work: MatesWork) => {
      if (work.what === 'paper') put(work.place, work.problems, work.printed);
      else if (work.what === 'figures') toldByMate = work.remarks;
      else help.hear(work);
    };
  };
  const others = mate === undefined ? undefined : mate.work(helpFor(mate));
  const worked = once(() => issueWorkedOut(opened));
  const own = shareOf(papers, 'front', mate?.tally ?? emptyTally());
  const first = own.next();
  if (first.done !== true) {
    const issue = worked();
    if (!issue.ok) return issue;
    const { ready, earlier } = issue.value;
    for await (const [paper, made] of oneByOne(ready, from(first.value, own), workshop, earlier)) {
      const place = papers.indexOf(paper);
      put(place, made.ok ? made.remarks : made.problems, made.ok ? printedOf(made.value) : undefined);
    }
  }
  await others;
  const remarks = toldByMate === undefined ? worked() : good(undefined, opened.told(toldByMate));
  if (!remarks.ok) return remarks;
  const absent = papers.find((_, place) => results[place] === undefined);
  if (absent !== undefined) throw new Error(`nothing came of the paper \`${absent.name}\``);
  return good(results, remarks.remarks);
}

/** A car and the issue before it, with their figures. What is to be told of the issue before has been told with it. */
function issueWorkedOut(opened: IssueOf<ProvenCar>): Outcome<OpenedIssue> {
  const { earlier: before, ...newer } = opened;
  const worked = workedOut(newer);
  if (before === undefined || !worked.ok) return worked;
  const earlier = workedOut(before);
  return earlier.ok
    ? good({ ...worked.value, earlier: earlier.value }, worked.remarks)
    : bad(earlier.problems);
}

/** One thing, and then the others as they are asked for. */
function* from<T>(first: T, others: Iterable<T>): Generator<T, void> {
  yield first;
  yield* others;
}
