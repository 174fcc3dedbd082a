import { describe, expect, test } from 'vitest';
import type { Procedure } from '../../src/procedure/procedure';
import { demo, demoNames } from '../whole/made';

/** Acts that leave a valve where the next act of the same kind would find it. */
const leavesIt: ReadonlySet<string> = new Set(['open', 'shut']);
const moves: ReadonlySet<string> = new Set(['open', 'shut', 'crack', 'blow', 'drain']);

/** Words of steps that only make sure, such as the last round of a parked car. */
const feltAgain = /^(Feel|See|Look|If it is not)\b/;

/** Steps that set a part as an earlier step of the same procedure has set it, with nothing in between that moves it. */
function saidTwice({ id, steps }: Procedure): readonly string[] {
  const last = new Map<string, string>();
  return steps.flatMap(({ part, action, id: step, say }) => {
    if (part === undefined || !moves.has(action)) return [];
    const again = leavesIt.has(action) && last.get(part) === action && !feltAgain.test(say);
    last.set(part, action);
    return again ? [`${id} ${step}: ${say}`] : [];
  });
}

describe.each(demoNames)('the procedures of %s', (name) => {
  test('set no part as it has just been set', async () => {
    const { procedures } = (await demo(name)).proof;
    expect(procedures.flatMap(saidTwice)).toEqual([]);
  });
});
