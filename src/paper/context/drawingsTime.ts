/** What the picture of the start-up is drawn from: bars over time. */
import type { TimeBar, TimeBarsInput } from '../../drawing/timeBars';
import type { World } from '../paper';
import { clockWords } from './raising';

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
