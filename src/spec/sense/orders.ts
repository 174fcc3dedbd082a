/** Rates, times, dates and speeds that stand in the wrong order. */
import type { Diagnostic } from '../../diagnostic/diagnostic';
import type { CarSpec } from '../schema/carSpec';
import { finding, inOrder, type SenseCheck } from './finding';

/** Rates, times, dates and speeds in their right order. */
export const checkOrders: SenseCheck = (spec, source) => [
  ...Object.entries(spec.burners).flatMap(([id, burner]) => [
    ...inOrder(source, {
      code: 'spec-order',
      low: burner['low-rate'],
      high: burner['full-rate'],
      mayBeEqual: false,
      lowPath: ['burners', id, 'low-rate'],
      highPath: ['burners', id, 'full-rate'],
      lowName: `the low rate of ${burner.name}`,
      highName: 'its full rate',
      why: 'The two may be changed about.',
    }),
    ...inOrder(source, {
      code: 'spec-order',
      low: burner.soak?.least,
      high: burner.soak?.good,
      mayBeEqual: true,
      lowPath: ['burners', id, 'soak', 'least'],
      highPath: ['burners', id, 'soak', 'good'],
      lowName: 'the least soak',
      highName: 'the good soak',
      why: 'A hurried soak floods the burner with liquid fuel.',
    }),
  ]),
  ...inOrder(source, {
    code: 'spec-order',
    low: spec.running['usual-speed'],
    high: spec.running['most-speed'],
    mayBeEqual: true,
    lowPath: ['running', 'usual-speed'],
    highPath: ['running', 'most-speed'],
    lowName: 'the usual speed',
    highName: 'the most',
    why: 'The two may be changed about.',
  }),
  ...checkDates(spec, source),
];

const checkDates: SenseCheck = (spec, source) => {
  const { inspection } = spec.boiler;
  const problems: Diagnostic[] = checkIssues(spec, source);
  if (inspection.due <= inspection.last) {
    problems.push(
      finding(source, {
        code: 'spec-order',
        path: ['boiler', 'inspection', 'due'],
        message: 'the next inspection is not due after the last one',
        found: `\`${inspection.due}\``,
        expected: `later than \`${inspection.last}\``,
        mend: 'look at the certificate',
      }),
    );
  } else if (inspection.due < spec.issue.date) {
    problems.push(
      finding(source, {
        code: 'spec-inspection-due',
        severity: 'remark',
        path: ['boiler', 'inspection', 'due'],
        message: `the boiler’s inspection was due on ${inspection.due}`,
        mend: 'do not raise steam before the inspector has seen it; then bring this up to date',
      }),
    );
  }
  return problems;
};

type Issue = CarSpec['issue'];

/** Issues stand newest first: no date later and no letter higher than in the issue before. */
const checkIssues: SenseCheck = (spec, source) => {
  const issues: readonly Pick<Issue, 'letter' | 'date'>[] = [spec.issue, ...(spec.issue.earlier ?? [])];
  return issues.flatMap((issue, index) => {
    const later = issues[index - 1];
    if (later === undefined) return [];
    const path = ['issue', 'earlier', index - 1];
    const mend = 'put the newest issue first, and give each its own letter';
    const problems: Diagnostic[] = [];
    if (issue.date > later.date) {
      problems.push(
        finding(source, {
          code: 'spec-order',
          path: [...path, 'date'],
          message: `issue ${issue.letter} is dated after issue ${later.letter}`,
          found: `\`${issue.date}\``,
          expected: `not later than \`${later.date}\``,
          mend,
        }),
      );
    }
    if (!isBefore(issue.letter, later.letter)) {
      problems.push(
        finding(source, {
          code: 'spec-order',
          path: [...path, 'letter'],
          message: `issue ${issue.letter} cannot come before issue ${later.letter}`,
          found: `\`${issue.letter}\``,
          expected: `a letter before \`${later.letter}\``,
          mend,
        }),
      );
    }
    return problems;
  });
};

/** Letters are counted A to Z, then AA, AB… */
function isBefore(earlier: string, later: string): boolean {
  return earlier.length === later.length ? earlier < later : earlier.length < later.length;
}
