/** Where blowing down stops is said for every blow-down valve, or for none. */
import { finding, type SenseCheck } from './finding';

/** Nothing is said, or something of each valve. */
export const checkBlowDown: SenseCheck = ({ boiler }, source) => {
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
