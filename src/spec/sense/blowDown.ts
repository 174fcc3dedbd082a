/** What is let go at a blow-down, and where it stops: for every blow-down valve, or for none. */
import { finding, inOrder, type SenseCheck } from './finding';

/** No more is let go than is in the boiler; and where it stops is said of no valve or of each. */
export const checkBlowDown: SenseCheck = (spec, source) => [
  ...inOrder(source, {
    code: 'spec-order',
    low: spec.boiler['blow-down-amount'],
    high: spec.boiler['water-at-working-level'],
    lowPath: ['boiler', 'blow-down-amount'],
    highPath: ['boiler', 'water-at-working-level'],
    lowName: 'what is let go at one blow-down',
    highName: 'the water in the boiler',
    mayBeEqual: true,
    why: 'more cannot be let go than is in it; how often it is blown down is worked out from both',
  }),
  ...stopsSaid(spec, source),
];

const stopsSaid: SenseCheck = ({ boiler }, source) => {
  const until = boiler['blown-down-until'];
  const valves = boiler['blow-down'].length;
  if (until === undefined || until.length === valves) return [];
  return [
    finding(source, {
      code: 'spec-not-for-each',
      path: ['boiler', 'blown-down-until'],
      message: '`blown-down-until` does not say of every blow-down valve when it is shut again',
      found: String(until.length),
      expected: `${valves}, one for each valve of \`blow-down\`, in the same order`,
      mend: 'write for each valve what is seen when it is shut again',
    }),
  ];
};
