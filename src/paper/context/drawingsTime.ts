/** What the pictures of the start-up and of the run sheet are drawn from: bars over time. */
import type { Moment, TimeBar, TimeBarsInput } from '../../drawing/timeBars';
import type { World } from '../paper';
import { clockWords } from './raising';
import { minuteWords, type TimedRow, timedRows } from './runSheet';

/** The start-up, counted back from moving off; none where a part of it is not known. */
export function startBarsInputs({ car, figures, language: { messages } }: World): readonly TimeBarsInput[] {
  const { say } = messages;
  const { parts, clockS } = figures.startUp;
  if (parts.length === 0) return [];
  const lanes = parts.map((part) => {
    const least = span(part.leastS, part.lastsLeastS);
    const bar: TimeBar = {
      ...span(part.goodS, part.lastsGoodS),
      kind: part.flame ? 'hatched' : 'plain',
      least,
    };
    return { name: part.name, bars: [bar], bar, least };
  });
  const list = lanes.map(({ name, bar, least }) =>
    say('start-part', {
      part: name,
      from: -bar.from,
      to: Math.abs(bar.to),
      least: -least.from,
    }),
  );
  const isShown = (kind: TimeBar['kind']) => lanes.some(({ bar }) => bar.kind === kind);
  return [
    {
      name: 'start-bars',
      alt: say('start-picture', { car: car.spec.car.name, list: list.join('; ') }),
      lanes: lanes.map(({ name, bars }) => ({ name, bars })),
      moments: [],
      counts: say('minutes-before-moving-off', {}),
      minute: (minute) => String(Math.abs(minute)),
      clock: (minute) => clockWords(clockS, -minute * 60),
      key: [
        ...(isShown('plain') ? [{ of: 'plain', says: say('in-good-time', {}) } as const] : []),
        ...(isShown('hatched') ? [{ of: 'hatched', says: say('flame-or-steam', {}) } as const] : []),
        { of: 'least', says: say('at-the-least', {}) },
      ],
    },
  ];
}

/** In whole minutes before moving off, begun early rather than late, as the tables have it. */
function span(startS: number, lastsS: number): { readonly from: number; readonly to: number } {
  const early = (seconds: number) => -Math.ceil(seconds / 60 - 1e-9) + 0;
  return { from: early(startS), to: early(startS - lastsS) };
}

/** Who is busy when at a demonstration; none where the minute of a row is not known. */
export function runBarsInputs(world: World): readonly TimeBarsInput[] {
  const { say } = world.language.messages;
  const rows = timedRows(world);
  const spans = spansOf(rows);
  if (spans === undefined || spans.length === 0) return [];
  const lanes = [...new Set(rows.map(({ who }) => who))].map((name) => ({
    name,
    bars: spans
      .filter(({ who }) => who === name)
      .map(({ from, to }): TimeBar => ({ from, to, kind: 'plain' })),
  }));
  const momentsOf = (kind: Moment['kind'], isOne: (row: TimedRow) => boolean): Moment[] =>
    spans.filter(isOne).map(({ from }) => ({ at: from, kind }));
  const gates = momentsOf('gate', ({ gate }) => gate);
  const fires = momentsOf('line', ({ fire }) => fire);
  const list = lanes.map(({ name, bars }) => {
    const times = bars.map(({ from, to }) =>
      say('from-to', { from: minuteWords(from), to: minuteWords(to) }),
    );
    return `${name}: ${times.join(', ')}`;
  });
  return [
    {
      name: 'run-bars',
      alt: say('run-picture', {
        car: world.car.spec.car.name,
        list: list.join('; '),
        gates: gates.map(({ at }) => minuteWords(at)).join(', '),
      }),
      lanes,
      moments: [...gates, ...fires],
      counts: say('minutes-from-lighting', {}),
      minute: minuteWords,
      key: [
        { of: 'plain', says: say('busy', {}) },
        ...(fires.length > 0 ? [{ of: 'line', says: say('main-burner-lit', {}) } as const] : []),
        ...(gates.length > 0 ? [{ of: 'gate', says: say('go-or-no-go', {}) } as const] : []),
      ],
    },
  ];
}

/** Rows with the minutes at which they begin and at which the next one does; nothing if one is not known. */
function spansOf(
  rows: readonly TimedRow[],
): readonly (TimedRow & { readonly from: number; readonly to: number })[] | undefined {
  const known = rows.flatMap((row, index) => {
    const { minute: from, lasts } = row;
    const to =
      index === rows.length - 1 && from !== undefined ? from + (lasts ?? 0) : rows[index + 1]?.minute;
    return from === undefined || to === undefined ? [] : [{ ...row, from, to }];
  });
  return known.length < rows.length ? undefined : known;
}
