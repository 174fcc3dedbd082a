/** `kettlebook tour`: a way planned for a car, as a card and as a table on the terminal. */
import { readFile } from 'node:fs/promises';
import { basename, extname, join, relative } from 'node:path';
import { type CarTour, carTour } from '../calc/figures/tour';
import { readLegs } from '../calc/stops/legs';
import type { Way } from '../calc/stops/way';
import { readGpxWay } from '../calc/track/gpxWay';
import { bad, type Diagnostic, hasErrors, type Outcome } from '../diagnostic/diagnostic';
import { makePapers, type ReadyCar, type Workshop, worldOf } from '../kettlebook';
import { type TourContext, tourContext } from '../paper/context/tour';
import { tourCard } from '../paper/papers/tourCard';
import type { Asked } from './arguments';
import { kindOfFile } from './kindOfFile';
import { openCar } from './openCar';
import { tellProblems } from './tell';
import { type ExitCode, exitCodes, type Terminal } from './terminal';
import { unwritable } from './unwritable';
import { Aside } from './writeAside';

type TourAsked = Extract<Asked, { kind: 'tour' }>;

/** Plan the way; nothing is written unless all of it can be. */
export async function tour(asked: TourAsked, root: string, terminal: Terminal): Promise<ExitCode> {
  const opened = await openCar(asked.spec, root);
  const way = await readWay(asked.way);
  if (!opened.ok || !way.ok)
    return fail([...(opened.ok ? [] : opened.problems), ...(way.ok ? [] : way.problems)], terminal);
  const { workshop, ready } = opened.value;
  const planned = carTour(ready.car, ready.figures, way.value);
  if (!planned.ok) return fail([...way.remarks, ...planned.problems], terminal);
  const name = basename(asked.way, extname(asked.way));
  const folder = join(asked.out, basename(asked.spec, extname(asked.spec)));
  const written = await writeCard({ name, folder, plan: planned.value }, ready, workshop);
  const remarks = [...opened.remarks, ...way.remarks];
  if (!written.ok) return fail([...remarks, ...written.problems], terminal);
  tellProblems([...remarks, ...written.remarks], terminal);
  const { first } = ready.car.spec.print.units;
  terminal.say(tableOf(tourContext(name, planned.value, worldOf(ready, workshop), first)));
  terminal.say(`\nCard: ${relative('.', written.value)}`);
  return exitCodes.done;
}

/** A way from its file: GPX by its first letter, else a list of legs. */
async function readWay(path: string): Promise<Outcome<Way>> {
  try {
    const bytes = await readFile(path);
    const other = kindOfFile(bytes);
    if (other !== undefined)
      return bad([wayUnreadable(path, other.why, 'name the list of legs or the track')]);
    const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    return /^\uFEFF?\s*</.test(text) ? readGpxWay(text, path) : readLegs(text, path);
  } catch (error) {
    return error instanceof TypeError
      ? bad([wayUnreadable(path, 'some of its letters are not written in UTF-8', 'save it as UTF-8')])
      : bad([
          wayUnreadable(
            path,
            'there is no such file, or it may not be read',
            'look at the name and the folder',
          ),
        ]);
  }
}

function wayUnreadable(path: string, why: string, mend: string): Diagnostic {
  return {
    code: 'file-unreadable',
    severity: 'error',
    message: `\`${path}\` cannot be read: ${why}`,
    mend,
  };
}

async function writeCard(
  card: { readonly name: string; readonly folder: string; readonly plan: CarTour },
  ready: ReadyCar,
  workshop: Workshop,
): Promise<Outcome<string>> {
  let aside: Aside;
  try {
    aside = await Aside.in(card.folder);
  } catch (error) {
    return bad([unwritable(card.folder, error)]);
  }
  try {
    let place = '';
    const made = await makePapers(
      ready,
      [tourCard(ready.plans.papers['tour-card'], card.name, card.plan)],
      workshop,
      async (paper) => {
        place = aside.write(paper.fileName, paper.bytes);
      },
    );
    if (!made.ok || hasErrors(made.remarks)) {
      await aside.discard();
      return made.ok ? bad(made.remarks) : made;
    }
    await aside.keep();
    return { ok: true, value: place, remarks: made.remarks };
  } catch (error) {
    await aside.discard();
    if (!(error instanceof Error && 'code' in error)) throw error;
    return bad([unwritable(card.folder, error)]);
  }
}

function fail(problems: readonly Diagnostic[], terminal: Terminal): ExitCode {
  tellProblems(problems, terminal);
  terminal.complain('Nothing was made.');
  return exitCodes.atFault;
}

/** The plan as a table; numbers stand right. */
function tableOf({ name, length, stopping, country, legs, water, fuel, oil }: TourContext): string {
  const rows = [
    ['Place', 'From start', 'Leg', 'Road', 'Water', 'Fuel', 'Water left', 'Fuel left', 'Take on'],
    ...legs.map((leg) => [
      leg.place,
      leg.at,
      leg.leg,
      leg.country,
      leg.water,
      leg.fuel,
      leg.waterLeft,
      leg.fuelLeft,
      leg.take,
    ]),
  ];
  const right = new Set([1, 2, 4, 5, 6, 7]);
  const widths = (rows[0] ?? []).map((_, column) => Math.max(...rows.map((row) => row[column]?.length ?? 0)));
  const lines = rows.map((row) =>
    row
      .map((cell, column) => {
        const width = widths[column] ?? 0;
        return right.has(column) ? cell.padStart(width) : cell.padEnd(width);
      })
      .join('  ')
      .trimEnd(),
  );
  return [
    `${name}: ${length}. Start with water and fuel full; ${stopping}.`,
    ...lines,
    `On the whole way: water ${water}, fuel ${fuel}${oil === '' ? '' : `, cylinder oil ${oil}`}.`,
    country,
    'Used: the middle (low end to high end). Left: over the reserve, if everything goes to the high end.',
  ].join('\n');
}
