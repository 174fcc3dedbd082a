/** Handing a car to the mate while it is opened. */
import { leaksOf, shownLeaks } from '../../proof/leaks';
import { inOrder, judge, walkThrough } from '../../proof/prove';
import { findingsOf, orderOf } from '../../proof/shown';
import type { CarHand } from '../openCar';
import type { Mate } from './mate';

/** Hands one car to the mate, as the one of this number. */
export function handTo(mate: Mate, car: number): CarHand {
  return {
    files: (files, shared) => mate.hand({ what: 'files', of: car, files, shared }),
    ownFiles: (shared) => mate.hand({ what: 'own files', of: car, shared }),
    prover: (it, given, options) => {
      const ordered = inOrder(it, given, options);
      mate.hand({ what: 'order', of: car, order: orderOf(given, ordered.procedures) });
      const walked = walkThrough(ordered);
      // what papers show is known before it is known whether they may be printed
      mate.hand({ what: 'findings', of: car, findings: findingsOf(walked) });
      const leaks = leaksOf(walked.model);
      mate.hand({ what: 'leaks', of: car, leaks: shownLeaks(leaks) });
      return judge(walked, leaks);
    },
  };
}
