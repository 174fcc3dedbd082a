/** Every oiling point says how often it is oiled. */
import { finding, type SenseCheck } from './finding';

/** At least one interval to each. */
export const checkOiling: SenseCheck = ({ oiling }, source) =>
  (oiling ?? []).flatMap(({ point, every }, index) =>
    Object.values(every).some((each) => each !== undefined)
      ? []
      : [
          finding(source, {
            code: 'spec-oiling',
            path: ['oiling', index, 'every'],
            message: `nothing says how often this is oiled: ${point}`,
            found: '`every` with nothing in it',
            expected: 'one of `days`, `distance`, `seasons`, or several, whichever comes first',
            mend: 'write how often, such as `every: { days: 1 }`',
          }),
        ],
  );
