/** How long steam takes, and what is due on the way; how the pumps and the engine run on the road. */
import { quantity } from '../../quantity/quantity';
import type { World } from '../paper';
import { notKnown } from '../phrase';
import { workingOf } from './workings';

/** One start. */
export interface RaisingContext {
  readonly start: string;
  readonly rows: readonly { readonly pressure: string; readonly time: string; readonly due: string }[];
}

/** Steam raising, from cold and from warm; empty if water, metal or fire are not known. */
export function raisingContext({ figures, phrases, words }: World): readonly RaisingContext[] {
  return figures.raising.curves.map(({ start, checks }) => ({
    start: words.start[start],
    rows: checks.map(({ at, pressure, seconds }) => ({
      pressure: phrases.both(pressure),
      time:
        seconds === undefined
          ? notKnown
          : phrases.first(quantity('time', seconds, true), { rounding: 'up', decimals: 0 }),
      due: words['raising-to'][at],
    })),
  }));
}

/** Figures that are read on the road, each with its doubt. */
export function onTheRoadContext({
  figures,
  phrases,
}: World): readonly { readonly name: string; readonly value: string; readonly doubt: string }[] {
  const wanted = /^(feed-|engine-speed-|oil-distance|blow-down-loss|charge-lasts-)/;
  return figures.all
    .filter(({ id }) => wanted.test(id))
    .map((figure) => {
      const { name, value, doubt } = workingOf(figure, phrases);
      return { name, value, doubt };
    });
}
