/** Valves that have to be shut in a hurry, without light perhaps, and that a hand cannot tell from what stands beside them. */
import type { Car } from '../car/car';
import type { Diagnostic } from '../diagnostic/diagnostic';
import type { Procedures } from './procedure';

/** What nobody takes for a valve, however dark it is. */
const plain: ReadonlySet<string> = new Set(['brake', 'steering', 'horn']);

/**
 * A remark for each valve that the way out, the procedure of this id, shuts from the driver’s seat, that shares its place with
 * something else to take hold of, and of which the spec does not say how it feels.
 */
export function alikeByHandRemarks(car: Car, procedures: Procedures, wayOut: string): readonly Diagnostic[] {
  const { valves, controls } = car.spec;
  const levers = Object.values(controls).filter(({ kind }) => !plain.has(kind));
  const held = [...Object.values(valves), ...levers];
  const steps = procedures.find(({ id }) => id === wayOut)?.steps ?? [];
  const shut = new Set(steps.flatMap(({ part, action }) => (action === 'shut' && part ? [part] : [])));
  return [...shut].flatMap((id): readonly Diagnostic[] => {
    const valve = valves[id];
    if (valve === undefined || valve.feel !== undefined) return [];
    if (car.places.get(valve.place)?.reach !== 'seated') return [];
    const beside = held.filter((other) => other.place === valve.place && other !== valve);
    const names = beside.map(({ name }) => name);
    if (names.length === 0) return [];
    return [
      {
        code: 'procedure-by-feel',
        severity: 'remark',
        at: car.spotOf(`valves.${id}`),
        message: `nothing says how a hand tells the ${valve.name} from what stands beside it`,
        found: `in the same place: ${names.join(', ')}`,
        expected: 'a `feel`, such as `upper of the two, a ball on its end`',
        mend: 'shut your eyes, find each of them, and write down as `feel` what told them apart',
        notes: ['It is shut in a hurry; the card for the dark and the list of places for trouble say it.'],
      },
    ];
  });
}
