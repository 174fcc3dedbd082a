/** Changes to procedures that say too little or too much. */
import type { CarSpec } from '../schema/carSpec';
import { finding, type SenseCheck } from './finding';

type Change = NonNullable<CarSpec['changes']>[number];

/** Each change says one thing: add, replace, move or leave out; and says all that it needs, no more. */
export const checkChanges: SenseCheck = (spec, source) =>
  (spec.changes ?? []).flatMap((change, index) =>
    faultsOf(change).map((fault) =>
      finding(source, { code: 'spec-change', path: ['changes', index], ...fault }),
    ),
  );

interface Fault {
  readonly message: string;
  readonly expected: string;
  readonly mend: string;
}

function faultsOf(change: Change): readonly Fault[] {
  const said = deeds.filter((each) => change[each] !== undefined);
  const [deed] = said;
  if (deed === undefined || said.length > 1) return [notOne(said)];
  const goes = deed === 'add' || deed === 'move';
  return [...placeFaults(change, deed, goes), ...withFaults(change, deed)];
}

const deeds = ['add', 'replace', 'move', 'leave-out'] as const;

function notOne(said: readonly string[]): Fault {
  return {
    message: `this change says ${said.length === 0 ? 'nothing' : said.map((each) => `\`${each}\``).join(' and ')}`,
    expected: 'one of `add`, `replace`, `move`, `leave-out`',
    mend: 'write one change to an entry',
  };
}

function placeFaults(change: Change, deed: string, goes: boolean): readonly Fault[] {
  const given = (['before', 'after'] as const).filter((each) => change[each] !== undefined);
  if (goes && given.length !== 1) {
    return [
      {
        message: `this change ${given.length === 0 ? 'does not say' : 'says twice'} where the step goes`,
        expected: 'either `before` or `after`, naming a step',
        mend: given.length === 0 ? 'add one of the two' : 'take one of the two out',
      },
    ];
  }
  if (goes || given.length === 0) return [];
  return [
    {
      message: `\`${deed}\` leaves steps where they are, but the change says \`${given.join('` and `')}\``,
      expected: `\`${deed}\` without \`before\` and \`after\``,
      mend: 'take it out, or write a `move` of its own',
    },
  ];
}

function withFaults(change: Change, deed: string): readonly Fault[] {
  if ((deed === 'replace') === (change.with !== undefined)) return [];
  return deed === 'replace'
    ? [
        {
          message: 'this change does not say what the step is replaced with',
          expected: '`with`, and the new step',
          mend: 'add it',
        },
      ]
    : [
        {
          message: `\`with\` belongs to \`replace\`, but the change says \`${deed}\``,
          expected: `\`${deed}\` without \`with\``,
          mend: 'take `with` out, or write `replace`',
        },
      ];
}
