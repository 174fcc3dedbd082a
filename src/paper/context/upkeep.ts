/** Maintenance, inspection, what is carried, what is thrown away: as printed text. */
import { boilerStates } from '../guide/forms';
import type { World } from '../paper';
import { partsOfKind } from './controls';
import { intervalWords } from './interval';
import { oilingContext } from './oiling';

/** How the boiler’s papers say the inspection, and everything of `upkeep.yaml`. */
export function upkeepContext(world: World): Readonly<Record<string, unknown>> {
  const { car, guide, phrases, words } = world;
  const { upkeep } = guide;
  const { inspection } = car.spec.boiler;
  const told = new Set(upkeep.jobs.map(({ id }) => id));
  return {
    tasks: upkeep.tasks.map(({ what, seen = '', job = '', chart = '', every, who }) => ({
      what,
      seen,
      job: told.has(job) ? job : '',
      chart,
      ...intervalWords(every, phrases),
      who: words['done-by'][who],
    })),
    oiling: oilingContext(world),
    notOiled: upkeep['not-oiled'],
    // a row keeps its number, by which its fields are named, wherever it stands
    inspected: upkeep.inspection
      .map(({ part, look, who, boiler }, index) => ({
        number: index + 1,
        part,
        look,
        who: words['done-by'][who],
        state: boiler,
        boiler: words['boiler-for'][boiler],
      }))
      .sort((a, b) => boilerStates.indexOf(a.state) - boilerStates.indexOf(b.state)),
    inspection: {
      by: inspection.by,
      last: phrases.date(inspection.last),
      due: phrases.date(inspection.due),
      certificate: inspection.certificate ?? phrases.notKnown,
      note: inspection.note ?? '',
      allowed: phrases.both(car.spec.boiler['allowed-pressure'], { rounding: 'down' }),
    },
    everyValve: partsOfKind(world, 'valve'),
    everyGauge: partsOfKind(world, 'gauge'),
    everyLock: partsOfKind(world, 'lock'),
    everyTank: partsOfKind(world, 'tank'),
    everyDevice: partsOfKind(world, 'device'),
    carried: (['spare', 'tool', 'consumable'] as const).map((kind) => ({
      title: words.carried[kind],
      things: upkeep.carried.filter((each) => each.kind === kind),
    })),
    jobs: upkeep.jobs,
    disposal: upkeep.disposal,
  };
}
