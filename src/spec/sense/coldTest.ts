/** A test without fire, said of a device whose test needs the fire, or of one that says no test. */
import type { CarSpec } from '../schema/carSpec';
import { type Finding, finding, type SenseCheck } from './finding';

/** `test-without-fire` belongs to a low-water cut-off that says its test; nothing else is asked for cold. */
export const checkColdTest: SenseCheck = ({ devices }, source) =>
  Object.entries(devices).flatMap(([id, device]) => {
    const wrong = device['test-without-fire'] === 'yes' ? whyNot(device) : undefined;
    return wrong === undefined
      ? []
      : [
          finding(source, {
            code: 'spec-test-without-fire',
            path: ['devices', id, 'test-without-fire'],
            ...wrong,
          }),
        ];
  });

function whyNot({
  name,
  kind,
  test,
}: CarSpec['devices'][string]): Pick<Finding, 'message' | 'expected' | 'mend'> | undefined {
  if (kind !== 'low-water-cut-off')
    return {
      message: `the ${name} is tested with the fire lit`,
      expected: '`test-without-fire` at a device of `kind: low-water-cut-off`',
      mend: 'take the line out; the papers ask for its test while steam is raised',
    };
  if (test === undefined)
    return {
      message: `nothing says how the ${name} is tested without a fire`,
      expected: '`test` beside `test-without-fire`',
      mend: 'say in `test` what is seen when it works',
    };
  return undefined;
}
