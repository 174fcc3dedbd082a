/** The record of issues in the manual: what changed with each, and where in the book the parts stand that it concerns. */
import type { World } from '../paper';
import { type IssueContext, identityContext } from './identity';
import type { IndexEntry } from './partIndex';

/** One issue, with the entries of the index for the parts that it concerns, in the order of the spec. */
export interface RecordedIssue extends IssueContext {
  readonly concerns: readonly IndexEntry[];
}

/** The issue on hand and those before it, newest first. */
export function issueRecord(
  { car: { spec }, phrases }: World,
  index: readonly IndexEntry[],
): readonly RecordedIssue[] {
  const said = [spec.issue, ...(spec.issue.earlier ?? [])];
  return identityContext(spec, phrases).issues.map((issue, at) => ({
    ...issue,
    concerns: (said[at]?.concerns ?? []).flatMap((part) => index.filter(({ id }) => id === part)),
  }));
}
