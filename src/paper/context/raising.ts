/** How long steam takes, and what is due on the way; how the pumps and the engine run on the road. */
import { clockBefore } from '../../calc/time/start-up';
import { quantity } from '../../quantity/quantity';
import type { World } from '../paper';
import { workingOf } from './workings';

/** Checks on the way up, with the time to each from every start. */
export interface RaisingContext {
  readonly starts: readonly string[];
  readonly rows: readonly {
    readonly pressure: string;
    readonly times: readonly string[];
    readonly due: string;
  }[];
}

/** Steam raising, from cold and from warm; no starts and no rows if water, metal or fire are not known. */
export function raisingContext({ figures, phrases, words }: World): RaisingContext {
  const { curves } = figures.raising;
  const timeTo = (at: string, { checks }: (typeof curves)[number]): string => {
    const seconds = checks.find((check) => check.at === at)?.seconds;
    return seconds === undefined
      ? phrases.notKnown
      : phrases.workedOut(quantity('time', seconds, true), 'up');
  };
  return {
    starts: curves.map(({ start }) => words.start[start]),
    rows: (curves[0]?.checks ?? []).map(({ at, pressure }) => ({
      pressure: phrases.both(pressure),
      times: curves.map((curve) => timeTo(at, curve)),
      due: words['raising-to'][at],
    })),
  };
}

/** Figures that are read on the road, each with its doubt. */
export function onTheRoadContext({
  figures,
  phrases,
}: World): readonly { readonly name: string; readonly value: string; readonly doubt: string }[] {
  const wanted =
    /^(feed-|engine-speed-|oil-distance|blow-down-|charge-lasts-|steam-full-fire|boiler-horsepower|heat-found|fire-standing)/;
  return figures.all
    .filter(({ id }) => wanted.test(id))
    .map((figure) => {
      const { name, value, doubt } = workingOf(figure, phrases);
      return { name, value, doubt };
    });
}

/**
 * Engine and pumps against road speed: whether the engine drives any, the head, and a row for each speed. Columns that
 * say the same in every row are one, under all their heads; a unit that a whole column has stands in the head alone.
 */
export function roadSpeedsContext({ car, figures, phrases }: World): {
  readonly pumps: boolean;
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
} {
  const figure = figures.all.find(({ id }) => id === 'road-speeds');
  const [head = [], ...rows] = figure === undefined ? [] : workingOf(figure, phrases).rows;
  const pumps = Object.values(car.spec.pumps).some(({ drive }) => drive === 'engine');
  const columns = head.map((words, index) => ({ words, cells: rows.map((row) => row[index] ?? '') }));
  const joined = new Map<string, { heads: string[]; cells: readonly string[] }>();
  for (const { words, cells } of columns) {
    const same = joined.get(cells.join('\n'));
    if (same === undefined) joined.set(cells.join('\n'), { heads: [words], cells });
    else same.heads.push(words);
  }
  const shown = [...joined.values()].map(({ heads, cells }) => {
    const { units, numbers } = unitsApart(cells);
    return { head: [heads.join(', '), ...units].join(', '), numbers };
  });
  return {
    pumps,
    head: shown.map((column) => column.head),
    rows: rows.map((_, row) => shown.map(({ numbers }) => numbers[row] ?? '')),
  };
}

/** The units that all of these amounts are told in, and the amounts without them; no units where they are not all alike. */
export function unitsApart(amounts: readonly string[]): {
  readonly units: readonly string[];
  readonly numbers: readonly string[];
} {
  const told = amounts.map((amount) =>
    /^([\d.,]+)[\s\u00a0]?([^\d()]+?)(?: \(([\d.,]+)[\s\u00a0]?([^\d()]+)\))?$/.exec(amount),
  );
  const unitsOf = (match: RegExpExecArray | null): string =>
    match === null
      ? ''
      : [match[2], match[4]].filter((unit) => unit !== undefined).join(' (') +
        (match[4] === undefined ? '' : ')');
  const [first = ''] = told.map(unitsOf);
  if (first === '' || told.some((match) => unitsOf(match) !== first)) return { units: [], numbers: amounts };
  return {
    units: [first],
    numbers: told.map((match) =>
      match?.[3] === undefined ? (match?.[1] ?? '') : `${match[1]} (${match[3]})`,
    ),
  };
}

/** When each part of the start-up begins, backwards from moving off and by the clock. */
export interface StartUpContext {
  /** Whether it could be worked out. */
  readonly known: boolean;
  readonly clock: string;
  readonly whole: string;
  readonly wholeLeast: string;
  readonly attended: string;
  readonly parts: readonly {
    readonly name: string;
    readonly good: string;
    readonly least: string;
    readonly lasts: string;
    readonly clock: string;
    readonly flame: boolean;
  }[];
  /** What to time where it could not. */
  readonly measure: string;
}

/** The start-up. */
export function startUpContext({ figures, phrases }: World): StartUpContext {
  const { startUp } = figures;
  const [total] = startUp.figures;
  const time = (seconds: number): string => phrases.duration(quantity('time', seconds), 'up');
  return {
    known: startUp.parts.length > 0,
    clock: clockWords(startUp.clockS, 0),
    whole: time(startUp.goodS),
    wholeLeast: time(startUp.leastS),
    attended: time(startUp.attendedGoodS),
    parts: startUp.parts.map((part) => ({
      name: part.name,
      good: time(part.goodS),
      least: time(part.leastS),
      lasts: time(part.lastsGoodS),
      clock: clockWords(startUp.clockS, part.goodS),
      flame: part.flame,
    })),
    measure: total?.value.kind === 'unknown' ? total.value.measure : '',
  };
}

/** The time on the clock so long before, in whole minutes, early rather than late. */
export function clockWords(moveOffS: number, beforeS: number): string {
  const { secondOfDay } = clockBefore(moveOffS, Math.ceil(beforeS / 60 - 1e-9) * 60);
  const two = (value: number): string => String(Math.floor(value)).padStart(2, '0');
  return `${two(secondOfDay / 3600)}:${two((secondOfDay % 3600) / 60)}`;
}
