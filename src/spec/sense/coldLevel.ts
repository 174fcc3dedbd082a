/** How high the level of a cold boiler may stand: said of a boiler that has a level, with room below it, in words before figures. */
import type { CarSpec } from '../schema/carSpec';
import { type Finding, finding, type SenseCheck } from './finding';

const code = 'spec-cold-level';

/** The limit is for a boiler with a level; it differs from the least; a height of it has its words. */
export const checkColdLevel: SenseCheck = (spec, source) =>
  [...ofCoil(spec), ...noRoom(spec), ...heightAlone(spec)].map((each) => finding(source, each));

function ofCoil({ boiler }: CarSpec): readonly Finding[] {
  const most = boiler['highest-level-cold'];
  if (boiler.kind !== 'monotube' || most === undefined) return [];
  return [
    {
      code,
      path: ['boiler', 'highest-level-cold'],
      message: 'a coil has no level that could stand too high',
      found: `\`${most}\``,
      expected: 'nothing, for a boiler of `kind: monotube`, which is filled until water runs from it',
      mend: 'take `highest-level-cold` out',
    },
  ];
}

/** Words cannot be measured, but the same words twice leave no room between them. */
function noRoom({ boiler }: CarSpec): readonly Finding[] {
  const most = boiler['highest-level-cold'];
  if (most === undefined || boiler.kind === 'monotube') return [];
  const leastKey = boiler['working-level-cold'] === undefined ? 'working-level' : 'working-level-cold';
  const same = ([leastKey, 'lowest-level'] as const).find((key) => plain(boiler[key] ?? '') === plain(most));
  return same === undefined
    ? []
    : [
        {
          code,
          path: ['boiler', 'highest-level-cold'],
          message: 'there is no room between the least that may stand in the cold boiler and the most',
          found: `\`${most}\`, as in \`${same}\``,
          expected:
            same === 'working-level'
              ? 'a level above `working-level`, or `working-level-cold` below both'
              : `a level above \`${same}\``,
          mend: 'correct one of the two, or take `highest-level-cold` out',
        },
      ];
}

function plain(words: string): string {
  return words.trim().toLowerCase();
}

/** Heights are of levels that are told in words; one without would be in a drawing and in no step. */
function heightAlone({ boiler }: CarSpec): readonly Finding[] {
  return (['working-level-cold', 'highest-level-cold'] as const).flatMap((key): Finding[] => {
    const height = boiler.heights?.[key];
    return height === undefined || boiler[key] !== undefined
      ? []
      : [
          {
            code,
            path: ['boiler', 'heights', key],
            message: `no words tell of the level whose height is given as \`${key}\``,
            found: `\`${height.written}\``,
            expected: `\`${key}\` under \`boiler\`, as the level is read on the glass`,
            mend: 'say in words where it is read, or take the height out',
          },
        ];
  });
}
