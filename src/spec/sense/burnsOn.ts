/** A burner that burns on after its fuel is shut, where that is known to be impossible or is said for nothing. */
import { burnsOnOf } from '../burnsOn';
import type { CarSpec } from '../schema/carSpec';
import { type Finding, finding, type SenseCheck } from './finding';

/** No such burner under a coil; no damper that no step speaks of. */
export const checkBurnsOn: SenseCheck = (spec, source) =>
  [...underCoil(spec), ...damperForNothing(spec)].map((each) => finding(source, each));

/** The papers take fuel and feed away from a coil together, and a coil is red within seconds of fire without feed. */
function underCoil({ boiler, burners }: CarSpec): readonly Finding[] {
  if (boiler.kind !== 'monotube') return [];
  return Object.entries(burners).flatMap(([id, burner]): Finding[] => {
    const time = burnsOnOf(burner);
    return time === undefined || burner.job !== 'main'
      ? []
      : [
          {
            code: 'spec-burns-on',
            path: ['burners', id, 'burns-on'],
            message: `the ${burner.name} burns on under a coil whose feed stops with its fire`,
            found: `\`${time.written}\``,
            expected: 'a burner that goes out at once, for a boiler of `kind: monotube`',
            mend: 'have the burner looked at; there are no papers for a coil with a fire that nothing puts out',
          },
        ];
  });
}

function damperForNothing({ burners, controls }: CarSpec): readonly Finding[] {
  return Object.entries(burners).flatMap(([id, burner]): Finding[] =>
    burner.damper === undefined || burnsOnOf(burner) !== undefined
      ? []
      : [
          {
            code: 'spec-burns-on',
            severity: 'remark',
            path: ['burners', id, 'damper'],
            message: `no step speaks of the ${controls[burner.damper]?.name ?? burner.damper}: its burner goes out at once`,
            expected: '`burns-on` beside `damper`',
            mend: 'give `burns-on` if the burner burns on after its valve is shut, or take `damper` out',
          },
        ],
  );
}
